using System.CommandLine;

namespace DiagRules.Cli.Verbs;

/// <summary>One verb of the tool.</summary>
internal abstract class Verb(string name, string description) : Command(name, description)
{
    /// <summary>Command lines to copy, shown by <c>--help</c>.</summary>
    public abstract IReadOnlyList<string> Examples { get; }

    /// <summary>Carries the verb out.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    /// <exception cref="WrongUseException">It cannot be carried out as it was given.</exception>
    public abstract int Run(ParseResult parsed, Terminal terminal);
}
