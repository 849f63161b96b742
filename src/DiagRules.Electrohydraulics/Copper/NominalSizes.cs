using System.Globalization;

namespace DiagRules.Electrohydraulics.Copper;

/// <summary>Looks nominal conductor sizes up; tables know no sizes in between, and neither do the shops that sell cable.</summary>
internal static class NominalSizes
{
    /// <returns>Why there is no entry, or <see langword="null"/>.</returns>
    /// <param name="table">Entries by size in mm2.</param>
    /// <param name="area">Size in m2.</param>
    /// <param name="found">The entry.</param>
    public static string? Find<T>(SortedList<double, T> table, double area, out T? found)
    {
        var size = area * 1e6;
        foreach (var (nominal, entry) in table)
        {
            if (Math.Abs(size - nominal) <= 1e-6 * nominal)
            {
                found = entry;
                return null;
            }
        }

        found = default;
        var below = table.Keys.LastOrDefault(nominal => nominal < size);
        var above = table.Keys.FirstOrDefault(nominal => nominal > size);
        var near = (below, above) switch
        {
            (0, _) => $"the smallest is {Text(above)}",
            (_, 0) => $"the largest is {Text(below)}",
            _ => $"the nearest are {Text(below)} and {Text(above)}",
        };
        return $"{Text(size)} is no nominal size of the table; {near}";
    }

    private static string Text(double size) => string.Create(CultureInfo.InvariantCulture, $"{size:0.####} mm2");
}
