using System.Globalization;
using DiagRules.Replay;

namespace DiagRules.Cli.Rendering;

/// <summary>What packs make of their recorded cases, for people: one line a case, the scores, and what is not met as problem lines.</summary>
internal static class ReplayText
{
    public static void Write(Page page, IReadOnlyList<PackReplay> replays)
    {
        foreach (var replay in replays)
        {
            page.Blank();
            PackLine.Write(page, replay.Pack, chassis: null);
            Cases(page, replay);
            page.Blank();
            Scores(page, replay);
        }

        // Problem lines are never wrapped: editors and build tools link them.
        page.Blank();
        foreach (var problem in replays.SelectMany(replay => replay.Problems))
        {
            page.Verbatim(0, problem.ToString());
        }
    }

    private static void Cases(Page page, PackReplay replay)
    {
        var width = replay.Cases.Select(played => played.Case.Id.Length).DefaultIfEmpty(0).Max() + 2;
        foreach (var played in replay.Cases)
        {
            var rank = played.Rank == 1 ? "first" : $"number {played.Rank}";
            var verdict = played.IsMet ? "" : "; NOT MET";
            var weight = played.Case.IsProbable ? ", probable only" : "";
            page.Item(2, played.Case.Id, width, $"{Words.Percent(played.Confidence)} {played.Best}, {rank}{weight}{verdict}");
        }
    }

    private static void Scores(Page page, PackReplay replay)
    {
        var scores = replay.Scores;
        if (scores.Count == 0)
        {
            page.Text(2, "No confirmed case to score.");
            return;
        }

        page.Text(2, $"{Words.Count(scores.Count, "confirmed case", "confirmed cases")}; in brackets the 95 % interval");
        Score("first", scores.Top1, asPercent: true);
        Score("among three", scores.Top3, asPercent: true);
        Score("one over rank", scores.MeanReciprocalRank, asPercent: false);
        Score("Brier score", scores.Brier, asPercent: false);
        Score("log loss", scores.LogLoss, asPercent: false);
        page.Text(2, replay.IsAccepted ? "Accepted." : "Not accepted.");

        void Score(string name, Measure measure, bool asPercent) =>
            page.Item(2, name, 16, $"{Number(measure.Value, asPercent)} ({Number(measure.Low, asPercent)} .. {Number(measure.High, asPercent)})");
    }

    private static string Number(double value, bool asPercent) => asPercent
        ? string.Create(CultureInfo.InvariantCulture, $"{100 * value:0} %")
        : value.ToString("0.000", CultureInfo.InvariantCulture);
}
