using System.Collections.Frozen;

namespace DiagRules.Model.Quantities;

/// <summary>Guesses which unit an unknown symbol stands for. Used for messages only, so it may take its time.</summary>
internal static class NearUnits
{
    private const int MostGuessesPerPart = 3;

    /// <summary>Guesses multiply from part to part, and a stranger's pack may hold a symbol of thirty parts.</summary>
    private const int MostGuesses = 32;

    /// <summary>Usual spellings that no measure of likeness would find, in lower case.</summary>
    private static readonly (string Symbol, string Spellings)[] Meant =
    [
        ("V", "volt volts"), ("A", "amp amps ampere amperes"), ("ohm", "ohms"), ("W", "watt watts"), ("N", "newton"), ("Pa", "pascal"),
        ("J", "joule"), ("Hz", "hertz"), ("K", "kelvin"), ("L", "l ltr liter litre liters litres"), ("L/min", "lpm"), ("gal/min", "gpm"),
        ("gal", "gallon"), ("qt", "quart"), ("cm3", "cc ccm"), ("m3", "cbm"), ("mm2", "qmm sqmm"), ("s", "sec second seconds"),
        ("min", "minute minutes mins"), ("h", "hr hrs hour hours"), ("d", "day days"), ("N.m", "nm"), ("N.cm", "ncm"), ("N.mm", "nmm"),
        ("kN.m", "knm"), ("daN.m", "dan.m"), ("kgf.m", "kgm kg.m"), ("lbf.ft", "ft.lb ft.lbf lb.ft lbft ftlb ft-lb lb-ft"),
        ("lbf.in", "in.lb in.lbf lb.in inlb in-lb lb-in"), ("psi", "psig"), ("bar", "barg"), ("kgf/cm2", "kg/cm2"), ("degC", "celsius oc"),
        ("degF", "fahrenheit"), ("%", "percent pct"), ("rev", "turn turns"), ("rpm", "1/min u/min"), ("deg", "degree degrees"),
        ("in", "inch inches"), ("ft", "foot feet"), ("lb", "lbs pound pounds"), ("m", "meter metre"), ("um", "micron"), ("g", "gram"),
        ("kg", "kilo"), ("t", "tonne"), ("hp", "bhp"), ("km/h", "kmh kph"),
    ];

    private static readonly FrozenDictionary<string, string> SymbolBySpelling = Meant
        .SelectMany(meant => meant.Spellings.Split(' ').Select(spelling => (Spelling: spelling, meant.Symbol)))
        .ToFrozenDictionary(pair => pair.Spelling, pair => pair.Symbol, StringComparer.Ordinal);

    public static IEnumerable<string> Of(string symbol)
    {
        var plain = Normalized(symbol);
        return Spelled(plain).Concat(plain.AsSpan().ContainsAny('.', '/') ? Parts(plain) : MeantBy(plain))
            .Where(guess => guess != symbol && UnitTable.TryGet(guess, out _))
            .Distinct(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Spelled(string symbol) =>
        SymbolBySpelling.TryGetValue(symbol.ToLowerInvariant(), out var meant) ? [meant] : [];

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
            guesses = [.. (from guess in guesses from word in meant select guess + sign + word).Take(MostGuesses)];
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
