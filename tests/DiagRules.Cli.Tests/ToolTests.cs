using DiagRules.TestSupport;

namespace DiagRules.Cli.Tests;

public sealed class ToolTests
{
    [Fact]
    public void AFaultOfItsOwn_IsOneLineThatAsksForAReport()
    {
        var (code, _, error) = Ask(new Typist(() => throw new InvalidOperationException("The reader broke.")));

        code.ShouldBe(ExitCode.WrongUse);
        error.ShouldBe(
            "Something went wrong inside diagrules (InvalidOperationException: The reader broke). " +
            "Please report it, with the output of the same command under DIAGRULES_DEBUG=1.\n");
    }

    [Fact]
    public void CtrlC_SaysWhereTheSessionIsSaved()
    {
        var folder = Directory.CreateTempSubdirectory("diagrules-tool-");
        var file = Path.Combine(folder.FullName, "job.json");
        var typist = new Typist(() => "will-not-extend", () => "pump-sound=silent");

        var (_, output, _) = Ask(typist, "--save", file);

        output.ShouldContain($"\nEnded, saved in '{file}'.\n");
        File.ReadAllText(file).ShouldContain("\"pump-sound\"");
        folder.Delete(recursive: true);
    }

    // Types line after line, and after the last one presses Ctrl-C.
    private sealed class Typist(params Func<string>[] lines) : TextReader
    {
        private int _next;

        public Action? Interrupt { get; set; }

        public override string? ReadLine()
        {
            if (_next < lines.Length)
            {
                return lines[_next++]();
            }

            Interrupt?.Invoke();
            return null;
        }
    }

    private static (int Code, string Output, string Error) Ask(Typist typist, params string[] more)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal(typist, output, error);
        typist.Interrupt = () => terminal.OnInterrupt?.Invoke();
        var code = Tool.Run(["ask", Pack(), .. more], terminal);
        return (code, output.ToString(), error.ToString());
    }

    private static string Pack() => RepositoryFolder.At("tests", "DiagRules.Cli.Tests", "Packs", "tarn-p3-jack");
}
