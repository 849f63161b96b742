using System.CommandLine;
using DiagRules.Cli.Verbs;

namespace DiagRules.Cli.Inputs;

/// <summary>What is wrong with a command line as such, in one line with the nearest way out.</summary>
internal static class CommandLineFaults
{
    /// <summary>Refuses a command line that names no verb, has a word too many, or leaves something out.</summary>
    /// <exception cref="WrongUseException">There is such a fault.</exception>
    public static void ThrowIfAny(ParseResult parsed, Command root, IReadOnlyList<Verb> verbs)
    {
        if (parsed.CommandResult.Command is not Verb verb)
        {
            var names = verbs.Select(one => one.Name).ToList();
            throw new WrongUseException(parsed.UnmatchedTokens is [var word, ..]
                ? $"There is no {(word.StartsWith('-') ? "option" : "verb")} '{word}'.{Spelling.Hint(word, names)} Verbs are {string.Join(", ", names)}."
                : $"A verb is missing: {string.Join(", ", names)}.");
        }

        var more = $" See 'diagrules {verb.Name} --help'.";
        if (parsed.UnmatchedTokens.Concat(Swallowed(parsed, verb)).FirstOrDefault() is { } extra)
        {
            throw new WrongUseException(Extra(extra, verb, root) + more);
        }

        if (parsed.Errors.Count > 0)
        {
            throw new WrongUseException(Missing(parsed, verb) + more);
        }
    }

    // Where any number of packs may stand, the parser takes an unknown option for one of them.
    private static IEnumerable<string> Swallowed(ParseResult parsed, Verb verb) => verb.Arguments
        .SelectMany(argument => parsed.GetResult(argument)?.Tokens ?? [])
        .Select(token => token.Value)
        .Where(word => word.StartsWith('-') && !Path.Exists(word));

    private static string Extra(string word, Verb verb, Command root) => word.StartsWith('-')
        ? $"'{verb.Name}' has no option '{word}'.{Spelling.Hint(word, verb.Options.Concat(root.Options).Select(option => option.Name))}"
        : $"'{word}' is one word too many; a value with a space goes in quotes.";

    private static string Missing(ParseResult parsed, Verb verb)
    {
        if (verb.Arguments.FirstOrDefault(argument => Lacks(parsed.GetResult(argument)?.Tokens.Count, argument.Arity)) is { } missing)
        {
            return $"'{verb.Name}' needs {missing.Name}: {missing.Description}.";
        }

        var option = verb.Options.FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false } result && Lacks(result.Tokens.Count, option.Arity));
        return option is null
            ? parsed.Errors[0].Message
            : $"'{option.Name}' needs {option.HelpName}: {option.Description}.";
    }

    private static bool Lacks(int? given, ArgumentArity arity) => (given ?? 0) < arity.MinimumNumberOfValues;
}
