using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>A unit found in a text.</summary>
/// <param name="Length">How many characters it takes: all that is joined without spaces, as far as it can be a unit.</param>
/// <param name="Unit">The unit, or <see langword="null"/> when it is not known.</param>
internal readonly record struct UnitScan(int Length, Unit? Unit);

/// <summary>Reads units - <c>V</c>, <c>mL/min</c>, <c>N.m</c> - and finds those that may have been meant.</summary>
internal static class UnitScanner
{
    // No unit needs more; a longer one could have powers that no dimension holds.
    private const int Longest = 32;

    // What people write for the symbols of the table; the near-misses in letters are found by spelling.
    private static readonly (string Written, string Symbol)[] Usual =
    [
        ("volt", "V"), ("volts", "V"), ("amp", "A"), ("amps", "A"), ("ampere", "A"), ("amperes", "A"), ("\u03A9", "ohm"), ("\u2126", "ohm"),
        ("ohms", "ohm"), ("m\u03A9", "mohm"), ("k\u03A9", "kohm"), ("M\u03A9", "Mohm"), ("\u00B0C", "degC"), ("celsius", "degC"), ("degrees", "deg"),
        ("\u00B0", "deg"), ("kelvin", "K"), ("Nm", "N.m"), ("liter", "L"), ("litre", "L"), ("liters", "L"), ("litres", "L"), ("l", "L"),
        ("ml", "mL"), ("cc", "mL"), ("sec", "s"), ("secs", "s"), ("seconds", "s"), ("minute", "min"), ("minutes", "min"), ("hr", "h"),
        ("hour", "h"), ("hours", "h"), ("watt", "W"), ("watts", "W"), ("percent", "%"), ("pc", "%"), ("inch", "in"), ("inches", "in"),
        ("\u00B5A", "uA"), ("\u03BCA", "uA"), ("bars", "bar"), ("tonne", "t"), ("tonnes", "t"), ("sqmm", "mm2"), ("mm\u00B2", "mm2"),
        ("cm\u00B3", "cm3"), ("hertz", "Hz"),
    ];

    private static readonly FrozenDictionary<string, string> SymbolOf =
        Usual.ToFrozenDictionary(usual => usual.Written, usual => usual.Symbol, StringComparer.Ordinal);

    /// <summary>Whether a unit may begin here.</summary>
    public static bool Begins(ReadOnlySpan<char> text) => text.Length > 0 && BeginsPart(text[0]);

    /// <summary>Reads the unit at the beginning of a text.</summary>
    /// <param name="text">Begins with the unit.</param>
    /// <param name="isId">Whether a word that is joined to a known unit is an id to divide by, rather than a misspelt unit.</param>
    public static UnitScan Scan(ReadOnlySpan<char> text, Func<string, bool> isId)
    {
        var end = PartEnd(text, 0);
        while (end + 1 < text.Length && text[end] is '/' or '.' && BeginsPart(text[end + 1]))
        {
            var next = PartEnd(text, end + 1);
            var part = text[(end + 1)..next].ToString();
            var isUnit = UnitTable.TryGet(part, out _) && !ContinuesWithLetter(text, next);
            if (!isUnit && (ContinuesAsId(text, next) || isId(part)))
            {
                break;
            }

            end = next;
        }

        return TryGet(text[..end].ToString(), out var unit) ? new(end, unit) : new(end, null);
    }

    /// <summary>Looks a symbol up; one that is longer than any unit needs to be is not known.</summary>
    public static bool TryGet(string symbol, [NotNullWhen(true)] out Unit? unit)
    {
        unit = null;
        return symbol.Length <= Longest && UnitTable.TryGet(symbol, out unit);
    }

    /// <summary>One sentence on an unknown unit, with near ones.</summary>
    public static string Fault(string symbol)
    {
        var near = Near(symbol);
        return near.Count == 0
            ? $"No unit '{Excerpt.Of(symbol)}'; a unit is one of V, A, ohm, bar, mL/min and the like, small and capital letters as they are."
            : $"No unit '{Excerpt.Of(symbol)}'. Did you mean {Wording.Or(near)}? Small and capital letters matter.";
    }

    private static IReadOnlyList<string> Near(string symbol)
    {
        if (symbol.Length > Longest)
        {
            return [];
        }

        if (symbol.IndexOfAny(['/', '.']) < 0)
        {
            return NearPart(symbol);
        }

        // Only what is not known is put right, so that 'mL/mn' comes out as 'mL/min'.
        IReadOnlyList<string> corrected = [""];
        var start = 0;
        for (var i = 0; i <= symbol.Length; i++)
        {
            if (i < symbol.Length && symbol[i] is not ('/' or '.'))
            {
                continue;
            }

            var part = symbol[start..i];
            var sign = i < symbol.Length ? symbol[i].ToString() : "";
            var near = UnitTable.TryGet(part, out _) ? [part] : NearPart(part);
            corrected = [.. corrected.SelectMany(before => near.Select(word => before + word + sign)).Take(3)];
            start = i + 1;
        }

        return corrected;
    }

    // Written-out words are known in any letters, signs only as they are: a capital M is a thousand million times a small one.
    private static IReadOnlyList<string> NearPart(string part) =>
        SymbolOf.TryGetValue(part, out var usual) || (part.Length > 3 && SymbolOf.TryGetValue(part.ToLowerInvariant(), out usual))
            ? [usual]
            : Spelling.Near(part, UnitTable.Symbols);

    private static int PartEnd(ReadOnlySpan<char> text, int from)
    {
        while (from < text.Length && (char.IsLetterOrDigit(text[from]) || text[from] is '%' or '\u00B0' or '\u00B2' or '\u00B3'))
        {
            from++;
        }

        return from;
    }

    private static bool BeginsPart(char first) => char.IsLetter(first) || first is '%' or '\u00B0';

    /// <summary>In <c>12 V/m-drop</c> what follows the line is an id though its first part is a unit; in <c>12 V/m-3 V/m</c> it is not.</summary>
    private static bool ContinuesWithLetter(ReadOnlySpan<char> text, int end) => ContinuesAsId(text, end) && char.IsLetter(text[end + 1]);

    private static bool ContinuesAsId(ReadOnlySpan<char> text, int end) =>
        end + 1 < text.Length && text[end] is '-' or '_' && char.IsLetterOrDigit(text[end + 1]);
}
