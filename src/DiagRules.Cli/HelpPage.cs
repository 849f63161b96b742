using System.CommandLine;
using DiagRules.Cli.Rendering;
using DiagRules.Cli.Verbs;

namespace DiagRules.Cli;

/// <summary>What <c>--help</c> shows: what a verb does, how it is written, its options, and an example to copy.</summary>
internal static class HelpPage
{
    /// <summary>Help for the tool as a whole.</summary>
    public static void Write(Page page, Command root, IEnumerable<Verb> verbs)
    {
        page.Text(0, root.Description ?? "");
        page.Heading("Usage");
        page.Text(2, "diagrules VERB ...");
        page.Heading("Verbs");
        foreach (var verb in verbs)
        {
            page.Item(2, verb.Name, 12, verb.Description ?? "");
        }

        WriteOptions(page, root);
        page.Blank();
        page.Text(0, "'diagrules VERB --help' shows a verb's options and an example. Exit codes: 0 good, 1 not good, 2 wrong use.");
    }

    /// <summary>Help for one verb.</summary>
    public static void Write(Page page, Verb verb, Command root)
    {
        page.Text(0, verb.Description ?? "");
        page.Heading("Usage");
        var arguments = verb.Arguments.Select(argument => argument.Name + (argument.Arity.MaximumNumberOfValues > 1 ? "..." : ""));
        page.Text(2, string.Join(' ', ["diagrules", verb.Name, .. arguments, "[options]"]));
        page.Heading("Arguments");
        foreach (var argument in verb.Arguments)
        {
            page.Item(2, argument.Name, 22, argument.Description ?? "");
        }

        WriteOptions(page, verb, root);
        page.Heading(verb.Examples.Count == 1 ? "Example" : "Examples");
        foreach (var example in verb.Examples)
        {
            page.Verbatim(2, example);
        }
    }

    private static void WriteOptions(Page page, params Command[] commands)
    {
        page.Heading("Options");
        foreach (var option in commands.SelectMany((command, place) => command.Options.Where(option => place == 0 || option.Recursive)))
        {
            var names = string.Join(", ", option.Aliases.Prepend(option.Name));
            page.Item(2, option.HelpName is { } value ? $"{names} {value}" : names, 22, option.Description ?? "");
        }
    }
}
