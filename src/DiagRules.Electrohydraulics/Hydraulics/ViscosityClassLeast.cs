using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class ViscosityClassLeast() : Calculation(
    name: "viscosity-class-least",
    title: "Least viscosity at 40 degC an oil of this ISO class may have when new.",
    takes:
    [
        Input.Any("class", "number", "the number after ISO VG"),
    ],
    gives: "mm2/s",
    formula: "class * 0.9 mm2/s",
    source: "ISO 3448 (midpoint of the class and 10 % either way)",
    range: "Classes 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000 and 1500; new oil. Used oil may drift 10 % beyond (common practice)")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => ViscosityClass.At40(given[0], 0.9);
}
