using DiagRules.Model.Calculations;

namespace DiagRules.Electrohydraulics.Hydraulics;

internal sealed class CleanlinessCode() : Calculation(
    name: "cleanliness-code",
    title: "ISO 4406 number for a particle count; a code such as 19/16/13 is three of them.",
    takes:
    [
        Input.NotNegative("count", "number", "particles in 1 mL larger than the size the number is for"),
    ],
    gives: "number",
    formula: "the first n whose upper limit is not below count: 1.3, 2.5, 5, 10, 20, 40, 80, 160, 320, 640 for n = 7 to 16 and so on",
    source: "ISO 4406, table of scale numbers",
    range: "0 to 28, up to 2.5 million particles per mL. Two samples of one tank often differ by one number")
{
    protected override CalculationResult Solve(ReadOnlySpan<double> given) => ParticleScale.Number(given[0]);
}
