using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Copper;

internal sealed class CableDrop() : Calculation(
    name: "cable-drop",
    title: "Volts lost along a sound copper conductor of this metal area.",
    takes:
    [
        Input.Any("current", "A", "current in the cable"),
        Input.NotNegative("length", "m", "length of copper the current runs through, out and back"),
        Input.Positive("area", "mm2", "cross-section of the copper"),
        Input.Between(-60, 200, "temperature", "degC", "temperature of the conductor"),
    ],
    gives: "V",
    formula: "current * conductor-resistance(length, area, temperature)",
    source: "Ohm's law; IEC 60028:1925 (annealed copper)",
    range:
        "-60 to 200 degC, direct current. The copper alone: joints, fuses and switches come on top. Stranded cable lies up to 15 % above: see " +
        "vehicle-cable-drop")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) =>
        given[0] * AnnealedCopper.Resistivity * given[1] / given[2] * AnnealedCopper.Factor(given[3]);
}
