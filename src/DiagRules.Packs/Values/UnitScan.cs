using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>A unit found in a text.</summary>
/// <param name="Length">How many characters it takes: the longest run of known symbols, or all that looks like a unit when none is known.</param>
/// <param name="Unit">The unit, or <see langword="null"/> when it is not known.</param>
internal readonly record struct UnitScan(int Length, Unit? Unit);

/// <summary>Reads units - <c>V</c>, <c>mL/min</c>, <c>N.m</c> - and finds those that may have been meant.</summary>
internal static class UnitScanner
{
    // What people write for the symbols of the table; the near-misses in letters are found by spelling.
    private static readonly Dictionary<string, string> Usual = new(StringComparer.OrdinalIgnoreCase)
    {
        ["volt"] = "V", ["volts"] = "V", ["amp"] = "A", ["amps"] = "A", ["ampere"] = "A", ["amperes"] = "A",
        ["\u03A9"] = "ohm", ["\u2126"] = "ohm", ["ohms"] = "ohm", ["m\u03A9"] = "mohm", ["k\u03A9"] = "kohm",
        ["\u00B0C"] = "degC", ["celsius"] = "degC", ["degrees"] = "deg", ["\u00B0"] = "deg", ["kelvin"] = "K",
        ["Nm"] = "N.m", ["liter"] = "L", ["litre"] = "L", ["liters"] = "L", ["litres"] = "L", ["l"] = "L", ["ml"] = "mL", ["cc"] = "mL",
        ["sec"] = "s", ["secs"] = "s", ["seconds"] = "s", ["minute"] = "min", ["minutes"] = "min", ["hr"] = "h", ["hour"] = "h", ["hours"] = "h",
        ["watt"] = "W", ["watts"] = "W", ["percent"] = "%", ["pc"] = "%", ["inch"] = "in", ["inches"] = "in", ["\u00B5A"] = "uA", ["\u03BCA"] = "uA",
        ["bars"] = "bar", ["tonne"] = "t", ["tonnes"] = "t", ["sqmm"] = "mm2", ["mm\u00B2"] = "mm2", ["cm\u00B3"] = "cm3", ["hertz"] = "Hz",
    };

    /// <summary>Whether a unit may begin here.</summary>
    public static bool Begins(ReadOnlySpan<char> text) => text.Length > 0 && BeginsPart(text[0]);

    /// <summary>Reads the unit at the beginning of a text.</summary>
    public static UnitScan Scan(ReadOnlySpan<char> text)
    {
        Unit? known = null;
        var knownLength = 0;
        var end = 0;
        while (true)
        {
            end = PartEnd(text, end);
            if (UnitTable.TryGet(text[..end].ToString(), out var unit))
            {
                known = unit;
                knownLength = end;
            }

            if (end + 1 >= text.Length || text[end] is not ('/' or '.') || !BeginsPart(text[end + 1]) || IsId(text, end + 1))
            {
                return known is null ? new(end, null) : new(knownLength, known);
            }

            end++;
        }
    }

    /// <summary>One sentence on an unknown unit, with near ones.</summary>
    public static string Fault(string symbol)
    {
        var near = Near(symbol);
        return near.Count == 0
            ? $"There is no unit '{symbol}'; a unit is one of V, A, ohm, bar, mL/min and the like, small and capital letters as they are."
            : $"There is no unit '{symbol}'. Did you mean {Wording.Or(near)}? Small and capital letters matter.";
    }

    private static IReadOnlyList<string> Near(string symbol)
    {
        if (symbol.IndexOfAny(['/', '.']) < 0)
        {
            return NearPart(symbol);
        }

        // Only the parts that are not known are put right, so that 'mL/mn' comes out as 'mL/min'.
        var corrected = new System.Text.StringBuilder();
        var start = 0;
        for (var i = 0; i <= symbol.Length; i++)
        {
            if (i < symbol.Length && symbol[i] is not ('/' or '.'))
            {
                continue;
            }

            var part = symbol[start..i];
            var near = UnitTable.TryGet(part, out _) ? [part] : NearPart(part);
            if (near.Count == 0)
            {
                return [];
            }

            corrected.Append(near[0]).Append(i < symbol.Length ? symbol[i] : "");
            start = i + 1;
        }

        return [corrected.ToString()];
    }

    private static IReadOnlyList<string> NearPart(string part) =>
        Usual.TryGetValue(part, out var usual) ? [usual] : Spelling.Near(part, UnitTable.Symbols);

    private static int PartEnd(ReadOnlySpan<char> text, int from)
    {
        while (from < text.Length && (char.IsLetterOrDigit(text[from]) || text[from] is '%' or '\u00B0' or '\u00B2' or '\u00B3'))
        {
            from++;
        }

        return from;
    }

    private static bool BeginsPart(char first) => char.IsLetter(first) || first is '%' or '\u00B0';

    /// <summary>In <c>12 V/fuse-load</c> what follows the line is an id, whatever its first part is called.</summary>
    private static bool IsId(ReadOnlySpan<char> text, int from)
    {
        var end = PartEnd(text, from);
        return end + 1 < text.Length && text[end] is '-' or '_' && char.IsLetterOrDigit(text[end + 1]);
    }
}
