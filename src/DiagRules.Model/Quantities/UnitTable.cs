using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace DiagRules.Model.Quantities;

/// <summary>The units packs may use: SI-coherent and workshop units, and products of them. Thread-safe.</summary>
/// <remarks>
/// <para>Symbols are case-sensitive. Compound symbols join known ones with <c>.</c> and <c>/</c>: <c>mL/min</c>, <c>ohm.m</c>,
/// <c>N.m/A</c>. They are read from the left, the longest known symbol first, so <c>N.m</c> is always torque. A product behind a
/// division sign (<c>W/m.K</c>) is not known: people read it in two ways. Nor is a product with a temperature point (<c>degC/min</c>); write <c>K/min</c>.</para>
/// <para>Pressures are gauge pressures: no unit here says otherwise, and a calculation that wants absolute ones says so.</para>
/// </remarks>
public static class UnitTable
{
    private const int LongestSymbol = 64;
    private const int MostCompounds = 4096;

    private static readonly Dictionary<string, Unit> Units = KnownUnits.All.ToDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    private static readonly ConcurrentDictionary<string, Unit> Compounds = new(StringComparer.Ordinal);

    /// <summary>All simple symbols, in alphabetical order.</summary>
    public static IReadOnlyList<string> Symbols { get; } = [.. Units.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Looks a symbol up; compound symbols too.</summary>
    /// <returns><see langword="false"/> when some part of the symbol is not known; <see cref="NearestSymbols"/> then says what may have been meant.</returns>
    public static bool TryGet(string symbol, [NotNullWhen(true)] out Unit? unit)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        if (Units.TryGetValue(symbol, out unit) || Compounds.TryGetValue(symbol, out unit))
        {
            return true;
        }

        unit = symbol.Length > LongestSymbol ? null : Compound(symbol);
        if (unit is null)
        {
            return false;
        }

        // Packs from strangers may write any number of compounds; what is kept of them stays bounded.
        if (Compounds.Count < MostCompounds)
        {
            unit = Compounds.GetOrAdd(symbol, unit);
        }

        return true;
    }

    /// <summary>Looks up a symbol that code knows to exist.</summary>
    /// <exception cref="ArgumentException">There is no such unit; the message names the nearest ones.</exception>
    public static Unit Get(string symbol)
    {
        if (TryGet(symbol, out var unit))
        {
            return unit;
        }

        var near = NearestSymbols(symbol);
        throw new ArgumentException(
            near.Count == 0 ? $"No unit '{symbol}'." : $"No unit '{symbol}'. Did you mean '{string.Join("' or '", near)}'?", nameof(symbol));
    }

    /// <summary>What may have been meant by a symbol that is not known, best first; every answer is a known symbol.</summary>
    /// <param name="symbol">The symbol as written, e.g. <c>mOhm</c>, <c>l/min</c>, <c>Nm</c>.</param>
    /// <param name="count">The most answers wanted.</param>
    /// <returns>None when nothing comes near.</returns>
    public static IReadOnlyList<string> NearestSymbols(string symbol, int count = 3)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        return symbol.Length > LongestSymbol ? [] : [.. NearUnits.Of(symbol).Take(count)];
    }

    /// <summary>The longest known symbol at the start of a text, compound ones not counted; or an empty text.</summary>
    internal static ReadOnlySpan<char> LongestAt(ReadOnlySpan<char> text)
    {
        var lookup = Units.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var end = text.Length; end > 0; end--)
        {
            if ((end == text.Length || text[end] is '.' or '/') && lookup.ContainsKey(text[..end]))
            {
                return text[..end];
            }
        }

        return [];
    }

    private static Unit? Compound(string symbol)
    {
        var dimension = Dimension.None;
        double multiplier = 1, divisor = 1;
        var divides = false;
        for (var start = 0; ;)
        {
            var text = LongestAt(symbol.AsSpan(start));
            if (text.IsEmpty || Units[text.ToString()] is not { IsPoint: false } part)
            {
                return null;
            }

            dimension = divides ? dimension / part.Dimension : dimension * part.Dimension;
            multiplier *= divides ? part.Divisor : part.Multiplier;
            divisor *= divides ? part.Multiplier : part.Divisor;
            start += text.Length;
            if (start == symbol.Length)
            {
                return Reduced(symbol, dimension, multiplier, divisor);
            }

            if (divides && symbol[start] == '.')
            {
                return null;
            }

            divides = symbol[start] == '/';
            start++;
        }
    }

    /// <summary>Common factors go, so that <c>mm/ms</c> converts without rounding and <c>mL/L</c> with one.</summary>
    private static Unit Reduced(string symbol, Dimension dimension, double multiplier, double divisor)
    {
        const double LargestExactInteger = 1L << 53;
        if (multiplier < LargestExactInteger && divisor < LargestExactInteger
            && multiplier == Math.Truncate(multiplier) && divisor == Math.Truncate(divisor))
        {
            var (a, b) = ((long)multiplier, (long)divisor);
            while (b != 0)
            {
                (a, b) = (b, a % b);
            }

            multiplier /= a;
            divisor /= a;
        }

        return new Unit(symbol, dimension, multiplier, divisor);
    }
}
