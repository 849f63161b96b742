using System.Globalization;

namespace DiagRules.Electrohydraulics.Bolts;

/// <summary>A coarse-thread bolt: dimensions by ISO 724 in m, stresses by ISO 898-1 in Pa (both from memory).</summary>
/// <param name="Diameter">Nominal diameter.</param>
/// <param name="Pitch">Pitch.</param>
/// <param name="Proof">Proof stress.</param>
/// <param name="Yield">Stress at 0.2 % of lasting strain, or lower yield stress.</param>
internal readonly record struct MetricBolt(double Diameter, double Pitch, double Proof, double Yield)
{
    private static readonly SortedList<double, double> PitchByDiameter = new()
    {
        [3] = 0.5,
        [4] = 0.7,
        [5] = 0.8,
        [6] = 1,
        [8] = 1.25,
        [10] = 1.5,
        [12] = 1.75,
        [14] = 2,
        [16] = 2,
        [18] = 2.5,
        [20] = 2.5,
        [22] = 2.5,
        [24] = 3,
    };

    /// <summary>Proof and yield stress in MPa; 8.8 has two rows, since thick bolts harden deeper by another steel.</summary>
    private static readonly (double Class, double UpTo, double Proof, double Yield)[] Stresses =
    [
        (4.6, 24, 225, 240), (4.8, 24, 310, 340), (5.6, 24, 280, 300), (5.8, 24, 380, 420), (6.8, 24, 440, 480),
        (8.8, 16, 580, 640), (8.8, 24, 600, 660), (9.8, 16, 650, 720), (10.9, 24, 830, 940), (12.9, 24, 970, 1100),
    ];

    /// <summary>Mean diameter of the flanks.</summary>
    public double PitchDiameter => Diameter - (0.649519 * Pitch);

    /// <summary>Diameter of a round bar as strong as the thread.</summary>
    public double StressDiameter => Diameter - (0.938194 * Pitch);

    /// <summary>Its area.</summary>
    public double StressArea => Math.PI / 4 * StressDiameter * StressDiameter;

    /// <returns>Why there is no such bolt, or <see langword="null"/>.</returns>
    public static string? Find(double diameter, double propertyClass, out MetricBolt bolt)
    {
        bolt = default;
        var millimetres = Math.Round(diameter * 1e3, 6);
        if (!PitchByDiameter.TryGetValue(millimetres, out var pitch))
        {
            return string.Create(CultureInfo.InvariantCulture, $"M{millimetres:0.###} is not one of the coarse threads M3 to M24");
        }

        foreach (var row in Stresses)
        {
            if (Math.Abs(row.Class - propertyClass) < 1e-6 && millimetres <= row.UpTo)
            {
                bolt = new(diameter, pitch / 1e3, row.Proof * 1e6, row.Yield * 1e6);
                return null;
            }
        }

        return string.Create(CultureInfo.InvariantCulture, $"there is no property class {propertyClass:0.##} for M{millimetres:0.###}");
    }

    /// <summary>Force in newtons the bolt bears without lasting strain.</summary>
    /// <returns>Why there is no such bolt, or <see langword="null"/>.</returns>
    public static string? ProofLoad(double diameter, double propertyClass, out double load)
    {
        var reason = Find(diameter, propertyClass, out var bolt);
        load = bolt.Proof * bolt.StressArea;
        return reason;
    }
}
