using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Tests.Rendering;

public sealed class DiagnosisTextTests
{
    [Fact]
    public void Write_OneOfEverything_ReadsAsOnePage()
    {
        using var writer = new StringWriter { NewLine = "\n" };

        new DiagnosisText(new Page(writer, 80, hasColour: false), JackSample.Pack).Write(JackSample.Diagnosis, JackSample.Leading);

        TestContext.Current.TestOutputHelper!.WriteLine(writer.ToString());
        writer.ToString().ShouldBe("");
    }
}
