using System.Globalization;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Charts.Picture;

/// <summary>What a chart says in words, the same on paper and as plain text.</summary>
internal static class ChartWords
{
    public const string Deference =
        "The maker's instructions, local codes and licensed practice come first; a caution that is not shown here may still apply.";

    public const string Specialist = "Give the job to a specialist.";

    public const string Beyond = "Off the chart.";

    public const string HowToRead =
        "Begin at box 1 and go on where the answer leads. Percentages say how likely an answer is once one is at its box. "
        + "Off the chart, and where an answer cannot be told or is not here: ask again with all that was found, or give the job to a specialist.";

    /// <summary>What the chart is about.</summary>
    public static string Title(TroubleshootingChart chart) =>
        "Troubleshooting chart: " + (chart.ComplaintTitle ?? "whatever the complaint");

    /// <summary>Pack, version, chassis and person.</summary>
    public static string Subject(TroubleshootingChart chart) =>
        $"{chart.Pack} {chart.Version}"
        + (chart.Chassis is null ? "" : $", chassis {chart.Chassis}")
        + (chart.Skill is { } skill ? $", for {Words.Of(skill)}" : "");

    /// <summary>Minutes and who can do it; of a check already done that it costs nothing more.</summary>
    public static string Price(ChartBox box) => box switch
    {
        { IsSameCheck: true } => "from the same check",
        { Kind: StepKind.Specialist } => "",
        _ => $"{Minutes(box.Minutes)}, {Words.Of(box.Skill)}",
    };

    /// <summary>Whole minutes.</summary>
    public static string Minutes(double minutes) =>
        minutes is > 0 and < 0.5 ? "under 1 min" : Math.Round(minutes, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture) + " min";

    /// <summary>The signal word in capitals (ANSI Z535.6, ISO 3864-2) with the number of the sign (ISO 7010).</summary>
    public static string Label(HazardNotice hazard) =>
        hazard.SignalWord.ToString().ToUpperInvariant() + (hazard.Symbol is null ? "" : " " + hazard.Symbol);

    /// <summary>An id or grade as words.</summary>
    public static string Plain(string id) => id.Replace('-', ' ');

    /// <summary>The answers of a branch: <c>silent or clicks once</c>.</summary>
    public static string Answers(ChartBox box, ChartBranch branch) => (box.Kind, branch) switch
    {
        (StepKind.Repair, { End: ChartEnd.Cured }) => "Complaint gone",
        (StepKind.Repair, _) => "Complaint stays",
        (_, { Answers.IsEmpty: true }) => "Done",
        (_, { End: ChartEnd.Beyond, Answers.Length: > 2 }) when !AsksSeveral(box) && box.Branches.Length > 1 => "Anything else",
        (_, { IsOtherwise: true }) => branch.Answers.All(answer => answer.IsHealthy) ? "All in order" : "None of these",
        _ => string.Join(", or ", branch.Answers.GroupBy(answer => answer.Title).Select(answers => Answers(box, answers))),
    };

    private static string Answers(ChartBox box, IGrouping<string, ChartAnswer> answers) =>
        (AsksSeveral(box) ? answers.Key.TrimEnd('.', '?') + ": " : "") + string.Join(" or ", answers.Select(answer => Plain(answer.Grade)));

    /// <summary>Whether the answers are about several findings, so that each has to name its own.</summary>
    public static bool AsksSeveral(ChartBox box) => box.Branches.Any(branch => branch.IsOtherwise);

    /// <summary>The limits behind the answers of a branch, or nothing. Several answers each say which one they mean.</summary>
    public static string Limits(ChartBranch branch)
    {
        var limits = branch.IsOtherwise || (branch.End == ChartEnd.Beyond && branch.Answers.Length > 2) ? [] : branch.Answers.Where(answer => answer.Limits is not null).ToList();
        return branch.Answers.Length == 1
            ? limits.FirstOrDefault()?.Limits ?? ""
            : string.Join("; ", limits.Select(answer => $"{Plain(answer.Grade)}: {answer.Limits}"));
    }

    /// <summary>What a repair puts right.</summary>
    public static string Suspects(ChartBox box) =>
        string.Join(", ", box.Suspects.Select(suspect => $"{suspect.Title} ({Words.Percent(suspect.Confidence)})"));

    /// <summary>A check that proves a repair, with what must come out.</summary>
    public static string Proof(ChartProof proof) =>
        proof.Check
        + (proof.Times > 1 ? $", {proof.Times} times where the fault came and went" : "")
        + (proof.Expected.IsEmpty ? "" : $" ({string.Join("; ", proof.Expected)})");

    /// <summary>A sentence with a full stop, unless it has an ending of its own.</summary>
    public static string Stopped(string text) => text.Length > 0 && text[^1] is '.' or '?' or '!' ? text : text + ".";

    /// <summary>How a branch ends.</summary>
    public static string End(ChartEnd end) => end switch
    {
        ChartEnd.Specialist => Specialist,
        ChartEnd.Beyond => Beyond,
        _ => "Done: prove the repair.",
    };

    /// <summary>The heading of a box: its step, or what more to look at of the check just done.</summary>
    public static string Heading(ChartBox box) => box.IsSameCheck ? box.Question ?? box.Title : box.Title;
}
