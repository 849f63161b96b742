using System.Globalization;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Calculations;

namespace DiagRules.Packs.Tests.Calculations;

public sealed class CalculationCallReaderTests
{
    private static readonly CalculationCallReader Reader = new([Library("springs", 1), Library("springs", 2)]);

    [Fact]
    public void Read_ArgumentsInAnyOrderAndUnit_AreUnderstood()
    {
        var call = Reader.Read("spring-force", ["temperature=14 degF", "force = 0.4 kN"]).Call.ShouldNotBeNull();

        call.Library.Version.ShouldBe(new Version(2, 0, 0));
        call.Arguments.Select(argument => (argument.Parameter.Name, argument.Value.ToString(CultureInfo.InvariantCulture), argument.IsLeftOut))
            .ShouldBe([("force", "0.4 kN", false), ("temperature", "14 degF", false), ("stated-at", "20 degC", true)]);
        call.Compute().Value.ShouldBe(400 * 263.15 / 293.15, 1e-9);
    }

    [Theory]
    [InlineData("spring-forse", "", "No calculation 'spring-forse' in 'springs 2.0.0' and 'springs 1.0.0'. Did you mean 'spring-force'?")]
    [InlineData("spring-force", "", "'spring-force' is not given its 'force' (printed force): spring-force(force: N, temperature: degC, stated-at: degC = 20 degC).\n'spring-force' is not given its 'temperature' (its temperature): spring-force(force: N, temperature: degC, stated-at: degC = 20 degC).")]
    [InlineData("spring-force", "400 N", "'400 N' names no parameter; write name=value: spring-force(force: N, temperature: degC, stated-at: degC = 20 degC).")]
    [InlineData("spring-force", "force=400 N;forse=3 N", "'spring-force' takes no 'forse': spring-force(force: N, temperature: degC, stated-at: degC = 20 degC). Did you mean 'force'?")]
    [InlineData("spring-force", "force=400 N;force=500 N", "'force' is given twice: spring-force(force: N, temperature: degC, stated-at: degC = 20 degC).")]
    [InlineData("spring-force", "force=400", "force: '400' has no unit; a force (N) is expected, such as '5 N'.")]
    [InlineData("spring-force", "force=400 V", "force: '400 V' is a voltage (V), and a force (N) is expected, such as '5 N'.")]
    [InlineData("spring-force", "force=0,4 kN", "force: '0,4' is not a number as packs write it: write '0.4'.")]
    [InlineData("spring-force", "force=400 n", "force: No unit 'n'. Did you mean 'N'? Small and capital letters matter.")]
    [InlineData("spring-force", "temperature=5 K", "temperature: '5 K' is a temperature difference (K), and a temperature (degC) is expected here.")]
    [InlineData("spring-force", "force=1e308 kN", "force: '1e308 kN' is too large to compute with.")]
    [InlineData("spring-force", "force=1 V;temperature=3 A", "force: '1 V' is a voltage (V), and a force (N) is expected, such as '5 N'.\ntemperature: '3 A' is a current (A), and a temperature (degC) is expected, such as '5 degC'.")]
    public void Read_SomethingWrong_SaysWhatAndTheWayOut(string name, string arguments, string messages)
    {
        var result = Reader.Read(name, arguments.Split(';', StringSplitOptions.RemoveEmptyEntries));

        result.Call.ShouldBeNull();
        string.Join("\n", result.Problems.Select(problem => problem.Message)).ShouldBe(messages);
    }

    private static CalculationLibrary Library(string name, int major) => new(name, new Version(major, 0, 0), [new SpringForce()]);

    private sealed class SpringForce : ICalculation
    {
        public CalculationDescription Description { get; } = new(
            "spring-force",
            "Force of a spring.",
            [
                new("force", UnitTable.Get("N"), "printed force"),
                new("temperature", UnitTable.Get("degC"), "its temperature"),
                new("stated-at", UnitTable.Get("degC"), "temperature of the print", 293.15),
            ],
            UnitTable.Get("N"),
            "force * temperature / stated-at",
            "made up for a test",
            "everywhere");

        public CalculationResult Compute(ReadOnlySpan<double> arguments) => arguments[0] * arguments[1] / arguments[2];
    }
}
