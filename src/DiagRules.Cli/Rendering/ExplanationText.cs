using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>Why a cause stands where it stands: each observation with the odds it brings.</summary>
internal static class ExplanationText
{
    // Below half a deciban the odds move by less than an eighth; nobody acts on that.
    private const double WorthSaying = 0.5;
    private const int LabelWidth = 24;

    /// <summary>The weights, strongest first.</summary>
    /// <param name="page">Where to write.</param>
    /// <param name="explanation">The explanation.</param>
    /// <param name="most">How many observations to name at most.</param>
    public static void Write(Page page, CauseExplanation explanation, int most = int.MaxValue)
    {
        var before = Page.Together(Words.Percent(explanation.Prior));
        var now = Page.Together(Words.Percent(explanation.Confidence));
        page.Text(2, $"{before} before anything was known, {now} now.");
        foreach (var by in explanation.RuledOutBy)
        {
            page.Item(2, "Ruled out by", LabelWidth, Words.Plain(by));
        }

        var telling = explanation.Weights.Where(weight => Math.Abs(weight.Decibans) >= WorthSaying).ToList();
        foreach (var weight in telling.Take(most))
        {
            page.Item(2, Words.Odds(weight.Decibans).Replace('\u00a0', ' '), LabelWidth, Titles.WithAnswer(weight.Title, Words.Plain(weight.Grade)));
        }

        WriteRest(page, explanation, telling, most);
    }

    private static void WriteRest(Page page, CauseExplanation explanation, List<EvidenceWeight> telling, int most)
    {
        if (telling.Count > most)
        {
            page.Text(2, $"And {Words.Count(telling.Count - most, "weaker one", "weaker ones")}.", Ink.Faint);
        }
        else if (explanation.Weights.Length > telling.Count)
        {
            page.Text(2, $"{Words.Count(explanation.Weights.Length - telling.Count, "other observation tells", "other observations tell")} next to nothing about it.", Ink.Faint);
        }
        else if (explanation.Weights.IsEmpty)
        {
            page.Text(2, "Nothing observed so far tells for or against it.", Ink.Faint);
        }
    }
}
