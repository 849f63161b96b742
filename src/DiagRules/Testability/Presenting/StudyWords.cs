using System.Collections.Immutable;
using System.Globalization;

namespace DiagRules.Testability.Presenting;

/// <summary>What a study says in words, the same as text and on paper.</summary>
internal sealed class StudyWords(TestabilityStudy study)
{
    /// <summary>Longest list that people are shown in full.</summary>
    public const int MostShown = 20;

    private const int MostSets = 5;

    public const string Title = "What the checks can find and tell apart";

    public const string Caution =
        "One cause at a time, each check by itself, nothing known before. A check that shows a cause here can still miss it or come out abnormal without it.";

    public string Subject =>
        $"{study.Pack} {study.Version}{(study.Chassis is null ? "" : $", chassis {study.Chassis}")}: "
        + $"{study.Causes.Length} causes, {study.Checks.Length} checks; a check counts from {Percent(study.Detection)} on";

    /// <summary>Figures of merit, each with its label.</summary>
    public IEnumerable<(string Label, string Text)> Figures()
    {
        var report = study.Report;
        yield return ("Detection rate", $"{Percent(report.DetectionRate)} of the causes, {Percent(report.DetectionRateByRate)} by how often they happen");
        foreach (var size in new[] { 1, 2, 3 })
        {
            var to = size == 1 ? "to one cause" : $"to at most {size}";
            yield return (size == 1 ? "Isolation rate" : "", $"{to}: {Percent(report.IsolationRate(size))} of the causes detected, {Percent(report.IsolationRateByRate(size))} by how often they happen");
        }

        yield return ("Ambiguity groups", $"{report.AmbiguityGroups.Count}, {Number(report.MeanGroupSize)} causes on average");
        yield return ("Expected size", $"{Number(report.ExpectedGroupSize)} over the causes detected, {Number(report.ExpectedGroupSizeByRate)} by how often they happen");
    }

    /// <summary>Lists under their headings; none is empty.</summary>
    public IEnumerable<(string Heading, IReadOnlyList<string> Items)> Lists()
    {
        var report = study.Report;
        (string, IReadOnlyList<string>)[] all =
        [
            ("No check can prove", [.. report.Undetected.Select(Cause)]),
            ("Detected, but not told apart", [.. Groups()]),
            ("Checks that detect no cause by themselves", [.. study.Checks.Select((check, index) => (check, index)).Where(pair => DetectsNothing(pair.index)).Select(pair => Check(pair.index) + (pair.check.DecidesNothing ? " (decides no finding by itself)" : ""))]),
            ("Checks each of which could be left out", [.. report.RedundantChecks.Where(check => !DetectsNothing(check)).Select(Check)]),
            ("Checks that cannot be left out", [.. Enumerable.Range(0, study.Checks.Length).Except(report.RedundantChecks).Select(Check)]),
            (SetsHeading(), [.. Sets()]),
            ("Two causes that together look like another", [.. report.Imitations.Select(pair => $"{Cause(pair.First)} and {Cause(pair.Second)}: like {Join(pair.LooksLike.Select(Cause), "or")}")]),
            ("Goes unnoticed beside another cause", [.. report.HiddenCauses.GroupBy(hidden => hidden.Cause).Select(group => $"{Cause(group.Key)}: beside {Join(group.Select(hidden => Cause(hidden.BehindCause)), "or")}")]),
        ];
        return all.Where(list => list.Item2.Count > 0);
    }

    /// <summary>Number of the ambiguity group of a cause, or 0 where it is alone or undetected.</summary>
    public int GroupOf(int cause)
    {
        var numbered = study.Report.AmbiguityGroups.Where(group => group.Count > 1).ToList();
        return numbered.FindIndex(group => group.Contains(cause)) + 1;
    }

    public static string Percent(double share) => Words.Percent(share);

    private IEnumerable<string> Groups() => study.Report.AmbiguityGroups
        .Zip(study.ToldApartByGrade, (group, parts) => (group, parts))
        .Where(pair => pair.group.Count > 1)
        .Select(pair => Join(pair.group.Select(Cause), "or") + Parted(pair.group, pair.parts));

    private string Parted(IReadOnlyList<int> group, ImmutableArray<ImmutableArray<int>> parts) =>
        parts.Length == group.Count ? "; what the checks show still tells them apart"
        : parts.Length > 1 ? "; what the checks show still tells " + string.Join(" from ", parts.Select(part => Join(part.Select(Cause), "or")))
        : "";

    /// <summary>What each set has besides the checks that none can do without.</summary>
    private IEnumerable<string> Sets() => study.Report.MinimalCheckSets
        .Select(set => string.Join("; ", set.Intersect(study.Report.RedundantChecks).Select(Check)))
        .Where(set => set.Length > 0)
        .Take(MostSets);

    private string SetsHeading() => study.Report.HasAllMinimalCheckSets
        ? $"With these besides, as much is found and told apart as with all checks ({Math.Min(MostSets, study.Report.MinimalCheckSets.Count)} of {study.Report.MinimalCheckSets.Count} minimal sets)"
        : $"With these besides, as much is found and told apart as with all checks ({MostSets} of very many minimal sets)";

    private bool DetectsNothing(int check) => Enumerable.Range(0, study.Causes.Length).All(cause => !study.Detects(cause, check));

    private string Cause(int cause) => study.Causes[cause].Title;

    private string Check(int check) => study.Checks[check].Title.TrimEnd('.');

    private static string Join(IEnumerable<string> parts, string last) => Words.Join([.. parts], last);

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
