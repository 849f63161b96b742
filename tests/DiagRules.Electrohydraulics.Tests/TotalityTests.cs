using CsCheck;

namespace DiagRules.Electrohydraulics.Tests;

/// <summary>Whatever the arguments: a finite number or a reason, never an exception.</summary>
public sealed class TotalityTests
{
    /// <summary>Anything a double can be, the usual orders of magnitude, and the edges.</summary>
    private static readonly Gen<double> Argument = Gen.OneOf(
        Gen.Double,
        Gen.Select(Gen.Double[-1, 1], Gen.Int[-9, 9], (mantissa, exponent) => mantissa * Math.Pow(10, exponent)),
        Gen.Double[233, 373],
        Gen.OneOf(0, -0.0, 1, -1, double.Epsilon, double.MaxValue, double.MinValue, double.NaN, double.PositiveInfinity, double.NegativeInfinity));

    public static IEnumerable<TheoryDataRow<string>> Names => DescriptionTests.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Compute_AnyArguments_GivesAFiniteNumberOrAReason(string name)
    {
        var calculation = Calling.Find(name);

        Argument.Array[calculation.Description.Parameters.Length].Sample(arguments =>
        {
            var result = calculation.Compute(arguments);
            return result.IsComputed
                ? double.IsFinite(result.Value)
                : double.IsNaN(result.Value) && result.Reason!.Length > 10;
        }, iter: 2000);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Compute_WrongNumberOfArguments_GivesAReason(string name)
    {
        var calculation = Calling.Find(name);
        var count = calculation.Description.Parameters.Length;

        calculation.Compute(new double[count + 1]).Reason.ShouldBe($"it takes {count} values and was given {count + 1}");
        calculation.Compute([]).Reason.ShouldBe($"it takes {count} values and was given 0");
    }
}
