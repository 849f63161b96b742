using System.Text;

namespace DiagRules.Cli.Tests.Scenarios;

/// <summary>
/// Commands and what they print, as one readable text. <c># </c> at the beginning says what it shows. <c>$ </c> is a command. Below it
/// stands what it writes: standard output as it is, standard error after <c>! </c>, the exit code after <c>= </c>. A line that begins
/// with <c>&gt; </c> was typed at a question; <c>&gt;</c> alone is the end of the input.
/// </summary>
internal sealed class Scenario
{
    private const string Command = "$ ";
    private const string Typed = "> ";

    private Scenario(string heading, IReadOnlyList<Step> steps) => (Heading, Steps) = (heading, steps);

    /// <summary>What the scenario shows.</summary>
    public string Heading { get; }

    /// <summary>Its commands, in order.</summary>
    public IReadOnlyList<Step> Steps { get; }

    /// <summary>Reads the text of a scenario file.</summary>
    public static Scenario Parse(string text)
    {
        var heading = new StringBuilder();
        var steps = new List<Step>();
        var typed = new List<string>();
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            if (steps is [.., { IsOpen: true } open])
            {
                steps[^1] = open with { CommandLine = open.CommandLine + "\n" + line };
            }
            else if (line.StartsWith(Command, StringComparison.Ordinal))
            {
                typed = [];
                steps.Add(new Step(line[Command.Length..], typed));
            }
            else if (steps.Count == 0)
            {
                heading.Append(line).Append('\n');
            }
            else if (line.StartsWith(Typed, StringComparison.Ordinal))
            {
                typed.Add(line[Typed.Length..]);
            }
        }

        return new Scenario(heading.ToString(), steps);
    }

    /// <summary>Runs all commands in the current folder.</summary>
    /// <returns>The scenario as it should read, given what the commands print now.</returns>
    public string Play()
    {
        var transcript = new StringBuilder(Heading);
        foreach (var step in Steps)
        {
            using var input = new StringReader(string.Concat(step.Typed.Select(line => line + "\n")));
            using var output = new StringWriter { NewLine = "\n" };
            using var error = new StringWriter { NewLine = "\n" };

            var code = Tool.Run(SplitWords(step.CommandLine.Replace("\\\n", " ", StringComparison.Ordinal)), new Terminal(input, output, error) { EchoesInput = true });

            transcript.Append(Command).Append(step.CommandLine).Append('\n');
            Append(transcript, "", output.ToString());
            Append(transcript, "! ", error.ToString());
            transcript.Append("= ").Append(code).Append("\n\n");
        }

        return transcript.ToString().TrimEnd() + "\n";
    }

    /// <summary>Words as a shell parts them: at spaces outside double quotes; the first, the tool's name, is left out.</summary>
    public static IReadOnlyList<string> SplitWords(string commandLine)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var isQuoted = false;
        foreach (var letter in commandLine + " ")
        {
            if (letter == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (letter == ' ' && !isQuoted)
            {
                words.Add(word.ToString());
                word.Clear();
            }
            else
            {
                word.Append(letter);
            }
        }

        return [.. words.Where(one => one.Length > 0).Skip(1)];
    }

    private static void Append(StringBuilder transcript, string mark, string text)
    {
        if (text.Length == 0)
        {
            return;
        }

        foreach (var line in text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
        {
            transcript.Append((mark + line).TrimEnd()).Append('\n');
        }
    }

    /// <summary>One command.</summary>
    /// <param name="CommandLine">As somebody would type it, the tool's name first.</param>
    /// <param name="Typed">What is typed while it runs.</param>
    internal sealed record Step(string CommandLine, IReadOnlyList<string> Typed)
    {
        /// <summary>Whether it goes on in the next line, as a backslash at the end says.</summary>
        public bool IsOpen => CommandLine.EndsWith('\\');
    }
}
