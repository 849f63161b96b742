using System.Collections.Frozen;

namespace DiagRules.Model.Quantities;

/// <summary>Guesses which unit an unknown symbol stands for. Used for messages only, so it may take its time.</summary>
internal static class NearUnits
{
    private const int MostGuessesPerPart = 3;

    /// <summary>Usual spellings that no measure of likeness would find, in lower case.</summary>
    private static readonly FrozenDictionary<string, string> Spellings = new Dictionary<string, string>
    {
        ["volt"] = "V", ["volts"] = "V", ["amp"] = "A", ["amps"] = "A", ["ampere"] = "A", ["amperes"] = "A", ["ohms"] = "ohm",
        ["watt"] = "W", ["watts"] = "W", ["newton"] = "N", ["pascal"] = "Pa", ["joule"] = "J", ["hertz"] = "Hz", ["kelvin"] = "K",
        ["l"] = "L", ["ltr"] = "L", ["liter"] = "L", ["litre"] = "L", ["liters"] = "L", ["litres"] = "L", ["lpm"] = "L/min",
        ["gpm"] = "gal/min", ["gallon"] = "gal", ["quart"] = "qt", ["cc"] = "cm3", ["ccm"] = "cm3", ["cbm"] = "m3", ["qmm"] = "mm2", ["sqmm"] = "mm2",
        ["sec"] = "s", ["second"] = "s", ["seconds"] = "s", ["minute"] = "min", ["minutes"] = "min", ["mins"] = "min",
        ["hr"] = "h", ["hrs"] = "h", ["hour"] = "h", ["hours"] = "h", ["day"] = "d", ["days"] = "d",
        ["nm"] = "N.m", ["ncm"] = "N.cm", ["nmm"] = "N.mm", ["knm"] = "kN.m", ["dan.m"] = "daN.m", ["kgm"] = "kgf.m", ["kg.m"] = "kgf.m",
        ["ft.lb"] = "lbf.ft", ["ft.lbf"] = "lbf.ft", ["lb.ft"] = "lbf.ft", ["lbft"] = "lbf.ft", ["ftlb"] = "lbf.ft", ["ft-lb"] = "lbf.ft", ["lb-ft"] = "lbf.ft",
        ["in.lb"] = "lbf.in", ["in.lbf"] = "lbf.in", ["lb.in"] = "lbf.in", ["inlb"] = "lbf.in", ["in-lb"] = "lbf.in", ["lb-in"] = "lbf.in",
        ["psig"] = "psi", ["barg"] = "bar", ["kg/cm2"] = "kgf/cm2", ["celsius"] = "degC", ["oc"] = "degC", ["fahrenheit"] = "degF",
        ["percent"] = "%", ["pct"] = "%", ["turn"] = "rev", ["turns"] = "rev", ["1/min"] = "rpm", ["u/min"] = "rpm", ["degree"] = "deg", ["degrees"] = "deg",
        ["inch"] = "in", ["inches"] = "in", ["foot"] = "ft", ["feet"] = "ft", ["lbs"] = "lb", ["pound"] = "lb", ["pounds"] = "lb",
        ["meter"] = "m", ["metre"] = "m", ["micron"] = "um", ["gram"] = "g", ["kilo"] = "kg", ["tonne"] = "t", ["bhp"] = "hp", ["kmh"] = "km/h", ["kph"] = "km/h",
    }.ToFrozenDictionary();

    public static IEnumerable<string> Of(string symbol)
    {
        var plain = Normalized(symbol);
        return Spelled(plain).Concat(plain.AsSpan().ContainsAny('.', '/') ? Parts(plain) : MeantBy(plain))
            .Where(guess => guess != symbol && UnitTable.TryGet(guess, out _))
            .Distinct(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Spelled(string symbol) =>
        Spellings.TryGetValue(symbol.ToLowerInvariant(), out var meant) ? [meant] : [];

    /// <summary>Signs that are not on every keyboard become the letters packs use.</summary>
    private static string Normalized(string symbol) => symbol
        .Replace("\u00b5", "u").Replace("\u03bc", "u")          // micro sign, Greek mu
        .Replace("\u03a9", "ohm").Replace("\u2126", "ohm")      // Greek omega, ohm sign
        .Replace("\u00b0", "deg").Replace("\u00ba", "deg")      // degree sign, and the ordinal sign mistaken for it
        .Replace("\u00b2", "2").Replace("\u00b3", "3").Replace("^", "")
        .Replace('\u00b7', '.').Replace('*', '.').Trim('.', '/');

    /// <summary>Simple symbols like this one: usual spellings, then other case, and only without those one or two letters off.</summary>
    private static IEnumerable<string> Like(string symbol)
    {
        var allowed = symbol.Length switch { < 2 => 0, < 4 => 1, _ => 2 };
        var near = (
            from known in UnitTable.Symbols
            let distance = Distance(symbol.ToLowerInvariant(), known.ToLowerInvariant())
            where distance <= allowed && distance < known.Length
            orderby distance, symbol.Zip(known).Count(pair => pair.First != pair.Second), known.Length
            select (Symbol: known, Distance: distance)).ToList();
        return Spelled(symbol).Concat(
            from known in near
            where known.Distance == 0 || near[0].Distance > 0
            select known.Symbol);
    }

    /// <summary>For compounds: what each unknown part may be, and both readings of a product behind a division sign.</summary>
    private static IEnumerable<string> Parts(string symbol)
    {
        IEnumerable<string> guesses = [""];
        for (var start = 0; start < symbol.Length;)
        {
            var part = PartAt(symbol, start);
            var sign = start == 0 ? "" : symbol[(start - 1)..start];
            string[] meant = [.. MeantBy(part).Select(Scale).Take(MostGuessesPerPart)];
            guesses = [.. from guess in guesses from word in meant select guess + sign + word];
            start += part.Length + 1;
        }

        return guesses.SelectMany(Unambiguous);
    }

    private static string PartAt(string symbol, int start)
    {
        var known = UnitTable.LongestAt(symbol.AsSpan(start));
        var end = known.IsEmpty ? symbol.IndexOfAny(['.', '/'], start) : start + known.Length;
        return symbol[start..(end < 0 ? symbol.Length : end)];
    }

    private static IEnumerable<string> MeantBy(string part) => UnitTable.TryGet(part, out _) ? [part] : Like(part);

    /// <summary>In products only differences of temperature make sense.</summary>
    private static string Scale(string part) => UnitTable.TryGet(part, out var unit) && unit.IsPoint ? "K" : part;

    private static IEnumerable<string> Unambiguous(string guess)
    {
        yield return guess;
        var slash = guess.IndexOf('/');
        var dot = slash < 0 ? -1 : guess.IndexOf('.', slash);
        if (dot > 0)
        {
            yield return $"{guess[..dot]}/{guess[(dot + 1)..]}";
            yield return $"{guess[..slash]}.{guess[(dot + 1)..]}{guess[slash..dot]}";
        }
    }

    /// <summary>Letters to change, add, drop or swap with their neighbour (optimal string alignment).</summary>
    private static int Distance(string a, string b)
    {
        var cost = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0
                    ? i + j
                    : Math.Min(Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1, cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
                }
            }
        }

        return cost[a.Length, b.Length];
    }
}
