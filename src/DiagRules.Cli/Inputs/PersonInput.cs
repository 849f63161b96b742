using System.CommandLine;
using DiagRules.Cli.Rendering;
using DiagRules.Model;

namespace DiagRules.Cli.Inputs;

/// <summary>Who works on the machine, and with which tools.</summary>
internal sealed class PersonInput
{
    private readonly Option<string?> _skill = new("--skill")
    {
        HelpName = "WHO",
        Description = "Offer only what this person can do: owner, owner-with-meter, workshop or specialist; else everything, with the skill it needs",
    };

    private readonly Option<string[]> _have = new("--have")
    {
        HelpName = "TOOL",
        Description = "A tool at hand, as the pack calls it (repeat it for more); else all are",
    };

    /// <summary>Adds the options to a verb.</summary>
    public void AddTo(Command command)
    {
        command.Add(_skill);
        command.Add(_have);
    }

    /// <summary>The person, or <see langword="null"/> for nobody in particular.</summary>
    /// <exception cref="WrongUseException">The word is none of the skills.</exception>
    public Skill? Skill(ParseResult parsed)
    {
        if (parsed.GetValue(_skill) is not { } word)
        {
            return null;
        }

        var skills = Enum.GetValues<Skill>();
        var found = skills.Where(skill => Words.Code(skill) == word).ToList();
        var codes = skills.Select(Words.Code).ToList();
        return found.Count == 1
            ? found[0]
            : throw new WrongUseException($"'{word}' is no skill.{Spelling.Hint(word, codes)} Skills are {string.Join(", ", codes)}.");
    }

    /// <summary>The tools at hand, or <see langword="null"/> for all.</summary>
    /// <exception cref="WrongUseException">No step of the pack asks for such a tool.</exception>
    public IReadOnlyCollection<string>? Tools(ParseResult parsed, Pack pack)
    {
        if (parsed.GetValue(_have) is not { Length: > 0 } tools)
        {
            return null;
        }

        var known = pack.Checks.Cast<WorkStep>().Concat(pack.Access).Concat(pack.Repairs).SelectMany(step => step.Tools).ToHashSet(StringComparer.Ordinal);
        foreach (var tool in tools.Where(tool => !known.Contains(tool)))
        {
            throw new WrongUseException(
                $"No step of '{pack.Id}' asks for a tool '{tool}'.{Spelling.Hint(tool, known)} Tools are {string.Join(", ", known.Order(StringComparer.Ordinal))}.");
        }

        return tools;
    }
}
