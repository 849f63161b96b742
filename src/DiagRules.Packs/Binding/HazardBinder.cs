using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Checks;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Makes hazards.</summary>
internal sealed class HazardBinder(Draft draft) : IEntryBinder
{
    private static readonly (string Word, SignalWord SignalWord)[] Words =
    [
        ("danger", SignalWord.Danger), ("warning", SignalWord.Warning), ("caution", SignalWord.Caution), ("notice", SignalWord.Notice),
    ];

    public Entry? Bind(Declared declared, Fields fields)
    {
        var word = fields.Text("signal-word") is { } text ? Word(text) : null;
        var says = fields.Sentence("says");
        return word is null || says is null ? null : new Hazard
        {
            Id = declared.Id,
            Index = declared.Index,
            Title = says,
            SignalWord = word.Value,
            Symbol = fields.Text("symbol") is { } symbol ? Sign(symbol) : null,
            Says = says,
            Avoid = fields.Sentence("avoid"),
            Clears = fields.Sentence("clears"),
        };
    }

    private SignalWord? Word(ScalarNode text)
    {
        foreach (var (word, signalWord) in Words)
        {
            if (word == text.Value)
            {
                return signalWord;
            }
        }

        draft.Problems.Add(
            ProblemCatalogue.UnknownSignalOrSign,
            text.Place,
            $"No signal word '{Excerpt.Of(text.Value)}'; it is one of {Wording.Or(Words.Select(known => known.Word))} (ANSI Z535.6, ISO 3864-2).");
        return null;
    }

    private string? Sign(ScalarNode text)
    {
        if (SafetySigns.Has(text.Value))
        {
            return text.Value;
        }

        draft.Problems.Add(
            ProblemCatalogue.UnknownSignalOrSign,
            text.Place,
            $"No sign '{Excerpt.Of(text.Value)}' in ISO 7010.{Spelling.DidYouMean(text.Value, SafetySigns.Numbers)} Signs known: {SafetySigns.Ranges}.");
        return null;
    }
}
