using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Cli.Rendering;

/// <summary>What ids of a pack are called when people read them.</summary>
internal sealed class Titles(Pack pack)
{
    private const string Unlisted = "something this pack does not list";

    /// <summary>The title of any entry, of an implied check or repair, or of what is built in.</summary>
    public string Of(string id) => id == RecordedCase.Unlisted
        ? Unlisted
        : pack.Find(id)?.Title ?? pack.FindCheck(id)?.Title ?? pack.FindRepair(id)?.Title ?? Words.Plain(id);

    /// <summary>A finding and what came out: <c>Main fuse: blown</c>, or the answer after a question.</summary>
    public static string WithAnswer(string title, string answer) =>
        title.EndsWith('?') ? $"{title} {Words.Sentence(answer)}." : $"{title}: {answer}";

    /// <summary>
    /// An answer of a check, <c>fuse is blown and sound is clicks-once</c>, as words; the finding's name is left out where the check
    /// has only one thing to say.
    /// </summary>
    public static string Answer(string answer)
    {
        var parts = answer.Split(" and ", StringSplitOptions.RemoveEmptyEntries)
            .Select(part => part.Split(" is ", 2))
            .ToList();
        return parts.Count == 1 && parts[0].Length == 2
            ? Words.Plain(parts[0][1])
            : string.Join(", ", parts.Select(part => string.Join(" ", part.Select(Words.Plain))));
    }
}
