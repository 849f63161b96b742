using System.Globalization;
using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

/// <summary>
/// When a fuse must still hold and when it must have opened, by multiples of its rating. Standards test at a few currents;
/// since more current never opens a fuse later, the bounds in between follow from the neighbours.
/// </summary>
internal sealed class FuseWindow
{
    /// <summary>Currents are measured and ratings printed: a multiple this close to a test current counts as that current.</summary>
    private const double Slack = 1e-9;

    private const double HundredHours = 360_000;

    private readonly Row[] _rows;

    private FuseWindow(params Row[] rows) => _rows = rows;

    /// <summary>ISO 8820-3, types C and F.</summary>
    public static FuseWindow Blade { get; } = new(
        new(1.1, HundredHours, null), new(1.35, 0.75, 1800), new(2, 0.15, 5), new(3.5, 0.08, 0.5), new(6, 0.03, 0.1));

    /// <summary>DIN 72581-3, form E.</summary>
    public static FuseWindow Maxi { get; } = new(
        new(1, HundredHours, null), new(1.35, 60, 1800), new(2, 2, 60), new(3.5, 0.2, 7));

    public CalculationResult Holds(double multiple)
    {
        foreach (var row in _rows)
        {
            if (multiple <= row.Multiple + Slack)
            {
                return row.Least;
            }
        }

        return CalculationResult.Because($"the current is beyond the standard's largest test current of {_rows[^1].Multiple.ToString(CultureInfo.InvariantCulture)} times the rating");
    }

    public CalculationResult Opens(double multiple)
    {
        double? latest = null;
        foreach (var row in _rows)
        {
            if (multiple >= row.Multiple - Slack)
            {
                latest = row.Most;
            }
        }

        return latest is { } seconds
            ? seconds
            : CalculationResult.Because("below 1.35 times its rating the fuse need not open");
    }

    /// <param name="Multiple">Test current over rating.</param>
    /// <param name="Least">Seconds it must hold.</param>
    /// <param name="Most">Seconds within which it must open; none where it need not.</param>
    private sealed record Row(double Multiple, double Least, double? Most);
}
