using System.Globalization;

namespace DiagRules.Model.Quantities;

/// <summary>Writes numbers as people do: no trailing zeros, no grouping, an exponent only where zeros would have to be counted.</summary>
internal static class PlainNumber
{
    /// <summary>More digits than any workshop meter shows, few enough to hide the rounding of conversions.</summary>
    private const int Digits = 7;

    public static string Write(double value, IFormatProvider provider)
    {
        if (Math.Round(value) == value && Math.Abs(value) < 1e9)
        {
            // Adding zero turns minus zero into zero.
            return (value + 0.0).ToString("0", provider);
        }

        var rounded = Round(value, Digits);
        return Math.Abs(rounded) is >= 1e-4 and < 1e7
            ? rounded.ToString("0.##########", provider)
            : rounded.ToString("0.######e0", provider);
    }

    /// <summary>Rounds to significant digits by way of the decimal text, so that no error of scaling creeps in.</summary>
    public static double Round(double value, int digits)
    {
        if (!double.IsFinite(value) || Math.Abs(value) >= Math.Pow(10, digits - 1))
        {
            return double.IsFinite(value) && Math.Abs(value) < 1e15 ? Math.Round(value, MidpointRounding.AwayFromZero) : value;
        }

        return double.Parse(value.ToString($"E{digits - 1}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
