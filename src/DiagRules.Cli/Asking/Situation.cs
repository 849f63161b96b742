using DiagRules.Cli.Rendering;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>What is shown between two questions: the standing, and whatever was not said before.</summary>
internal sealed class Situation(Page page, Pack pack, HazardSheet sheet)
{
    private readonly HashSet<string> _said = new(StringComparer.Ordinal);

    /// <summary>Writes it.</summary>
    /// <param name="diagnosis">What is believed now.</param>
    /// <param name="next">The step that is proposed below, which names its own cautions.</param>
    public void Write(Diagnosis diagnosis, NextStep? next)
    {
        page.Blank();
        page.Rule();
        sheet.KeepOnly(diagnosis);
        var ofTheStep = next is null ? [] : HazardSheet.OfStep(diagnosis, next);
        sheet.Write(page, 0, [.. sheet.OfTheMachine(diagnosis).Where(hazard => !sheet.IsRead(hazard) || !ofTheStep.Contains(hazard))]);
        page.Blank();
        StandingText.WriteCompact(page, pack, diagnosis);
        var titles = new Titles(pack);
        Say(diagnosis.Contradictions.Select(KnownText.Disagreement), "These do not agree");
        Say(diagnosis.Advice.Select(advice => advice.Text), "Advice");
        Say(diagnosis.Deferred.Select(deferral => titles.Of(deferral.Id)), "Not yet");
        Say(diagnosis.Notes, "Note");
    }

    private void Say(IEnumerable<string> texts, string label)
    {
        // A text counts as said only while it holds: one that falls and comes back is news again. Numbers in it are no news.
        var now = texts.Select(text => (Text: text, Key: label + string.Concat(text.Where(letter => !char.IsAsciiDigit(letter))))).ToList();
        var fresh = now.Where(one => !_said.Contains(one.Key)).ToList();
        _said.RemoveWhere(key => key.StartsWith(label, StringComparison.Ordinal));
        _said.UnionWith(now.Select(one => one.Key));
        if (fresh.Count > 0)
        {
            page.Text(0, label, Ink.Strong);
        }

        foreach (var (text, _) in fresh)
        {
            page.Item(2, "-", 2, text);
        }
    }
}
