using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Fuses;

internal sealed class FuseCurrent() : Calculation(
    name: "fuse-current",
    title: "Current through a fuse from the drop across it, without opening the circuit.",
    takes:
    [
        Input.Any("drop", "V", "volts across the fuse, blade to blade, on a millivolt range"),
        Input.Positive("resistance", "mohm", "cold resistance of the fuse from its data sheet; a 10 A standard blade has about 7.7 mohm"),
    ],
    gives: "A",
    formula: "drop / resistance",
    source: "Ohm's law; published fuse-drop table of a training page (1 mV across a 10 A standard blade is 130 mA)",
    range: "Up to about half the rating, where the fuse is still cool; within 15 % of the data sheet. Good for idle currents and for which circuit is on")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => given[0] / given[1];
}
