using System.CommandLine;
using System.Reflection;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Cli.Verbs;

namespace DiagRules.Cli;

/// <summary>The <c>diagrules</c> command: finds the verb, runs it, and turns whatever goes wrong into one line and an exit code.</summary>
internal static class Tool
{
    private static readonly ParserConfiguration Parsing = new() { ResponseFileTokenReplacer = null, EnablePosixBundling = false };

    /// <summary>Runs one command line.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        try
        {
            return Invoke(args, terminal);
        }
        catch (WrongUseException exception)
        {
            terminal.Error.WriteLine(exception.Message);
            return ExitCode.WrongUse;
        }
        catch (Exception exception) when (exception is EngineException or IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine(exception.Message);
            return ExitCode.WrongUse;
        }
#pragma warning disable CA1031 // The last resort: nobody but its programmers can read a stack trace.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            terminal.Error.WriteLine(Environment.GetEnvironmentVariable("DIAGRULES_DEBUG") == "1"
                ? exception.ToString()
                : $"Something went wrong inside diagrules ({exception.GetType().Name}: {FirstLine(exception.Message)}). Please report it, with the output of the same command under DIAGRULES_DEBUG=1.");
            return ExitCode.WrongUse;
        }
    }

    private static int Invoke(IReadOnlyList<string> args, Terminal terminal)
    {
        Verb[] verbs = [new ValidateVerb(), new DiagnoseVerb(), new AskVerb(), new ExplainVerb(), new ReplayVerb(), new ChartVerb(), new TestabilityVerb(), new CalculateVerb()];
        var help = new Option<bool>("--help", "-h") { Description = "Show help", Recursive = true };
        var version = new Option<bool>("--version") { Description = "Show the version" };
        var root = new Command("diagrules", "Diagnoses electro-hydraulic mechanisms on vehicles with rule packs.") { help, version };
        foreach (var verb in verbs)
        {
            root.Add(verb);
        }

        var parsed = root.Parse(args, Parsing);
        var chosen = parsed.CommandResult.Command as Verb;
        if (parsed.GetValue(help) || args.Count == 0)
        {
            WriteHelp(new Page(terminal), root, verbs, chosen);
            return args.Count == 0 ? ExitCode.WrongUse : ExitCode.Good;
        }

        if (chosen is null && parsed.GetValue(version))
        {
            terminal.Out.WriteLine(Version);
            return ExitCode.Good;
        }

        CommandLineFaults.ThrowIfAny(parsed, root, verbs);
        return chosen!.Run(parsed, terminal);
    }

    private static void WriteHelp(Page page, Command root, Verb[] verbs, Verb? chosen)
    {
        if (chosen is null)
        {
            HelpPage.Write(page, root, verbs);
        }
        else
        {
            HelpPage.Write(page, chosen, root);
        }
    }

    // The part after '+' is the commit, which helps nobody at a keyboard.
    private static string Version =>
        typeof(Tool).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    private static string FirstLine(string text) => text.Split('\n')[0].TrimEnd('\r', '.');
}
