using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>The finding every pack has: whether the fault is there every time, or comes and goes.</summary>
internal static class BuiltInPattern
{
    public const string Intermittent = "intermittent";

    /// <summary>Adds it, with the texts of the pack where it has its own.</summary>
    public static void Put(Dictionary<string, Declaration.Candidate> candidates, ProblemSink problems)
    {
        var builtIn = new Declaration.Candidate(Section.Findings, Text(Finding.Pattern), Body());
        if (!candidates.TryGetValue(Finding.Pattern, out var own) || own.Section != Section.Findings)
        {
            if (own is null)
            {
                candidates.Add(Finding.Pattern, builtIn);
            }

            return;
        }

        foreach (var (key, _) in own.Body.Pairs)
        {
            if (key.Value is not ("title" or "question" or "accepts") && !key.Value.StartsWith(Shape.HostPrefix, StringComparison.Ordinal))
            {
                problems.Add(
                    ProblemCatalogue.ReservedWord,
                    key.Place,
                    $"'{key.Value}' of 'pattern' cannot be changed: the finding is built in, and only its 'title' and 'question' are the pack's.");
            }
        }

        candidates[Finding.Pattern] = own.Over(builtIn, problems);
    }

    private static MapNode Body() => new(
        default,
        [
            new(Text("title"), Text("Every time, or now and then")),
            new(Text("question"), Text("Does the fault show every time, or does it come and go?")),
            new(Text("grades"), new ListNode(default, [Text("every-time"), Text(Intermittent)])),
            new(Text("lasting"), Text("yes")),
        ]);

    private static ScalarNode Text(string text) => new(new PlacedText(text, default));
}
