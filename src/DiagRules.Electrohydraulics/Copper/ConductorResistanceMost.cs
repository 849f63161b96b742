using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class ConductorResistanceMost() : Calculation(
    name: "conductor-resistance-most",
    title: "The most resistance a new stranded cable of this nominal size may have.",
    takes:
    [
        Input.NotNegative("length", "m", "length of copper the current runs through, out and back"),
        Input.Positive("area", "mm2", "nominal size, from 0.5 to 50 mm2"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor"),
        Input.Any("class", "number", "2 stranded, 5 flexible", ifLeftOut: 5),
    ],
    gives: "ohm",
    formula: "length * table(area, class) * (230 + temperature / degC) / 250",
    source: "IEC 60228:2004, tables 2 and 3 (plain copper, at 20 degC) and its temperature correction",
    range:
        "Nominal sizes 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35 and 50 mm2; -60 to 200 degC. A limit: sound cable lies up to 10 % below. " +
        "Tinned strands may have 2 to 3 % more")
{
    private static readonly SortedList<double, (double Class2, double Class5)> MohmPerMetre = new()
    {
        [0.5] = (36.0, 39.0),
        [0.75] = (24.5, 26.0),
        [1] = (18.1, 19.5),
        [1.5] = (12.1, 13.3),
        [2.5] = (7.41, 7.98),
        [4] = (4.61, 4.95),
        [6] = (3.08, 3.30),
        [10] = (1.83, 1.91),
        [16] = (1.15, 1.21),
        [25] = (0.727, 0.780),
        [35] = (0.524, 0.554),
        [50] = (0.387, 0.386),
    };

    protected override CalculationResult Solve(ReadOnlySpan<double> given)
    {
        if (NominalSizes.Find(MohmPerMetre, given[1], out var ofSize) is { } reason)
        {
            return Because(reason);
        }

        double? perMetre = given[3] switch { 2 => ofSize.Class2, 5 => ofSize.Class5, _ => null };
        return perMetre is { } mohm
            ? given[0] * mohm / 1000 * (230 + given[2] - 273.15) / 250
            : Because("'class' must be 2 (stranded) or 5 (flexible)");
    }
}
