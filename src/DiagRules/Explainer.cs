using System.Collections.Immutable;
using DiagRules.Confidence;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Reasoning.Inference;
using DiagRules.Results;

namespace DiagRules;

/// <summary>Says why a cause stands where it stands.</summary>
internal sealed class Explainer(Moment moment)
{
    /// <summary>Below this an observation says nothing worth naming: a tenth of a deciban moves even odds by one percent.</summary>
    private const double LeastDecibans = 0.1;

    public CauseExplanation Explain(Cause cause)
    {
        var node = moment.Network.NodeOf(cause.Node);
        return new CauseExplanation(
            cause.Id,
            cause.Title,
            moment.Model.PriorOf(node),
            moment.Weighing.Of(node),
            Weights(node),
            RuledOutBy(cause));
    }

    private ImmutableArray<EvidenceWeight> Weights(int cause)
    {
        var byNetworkNode = moment.Pack.Nodes
            .Where(graded => moment.Network.NodeOf(graded.Node) >= 0)
            .ToDictionary(graded => moment.Network.NodeOf(graded.Node));
        return [.. moment.Model.Explain(moment.Evidence, cause)
            .Where(weight => Math.Abs(weight.Decibans) >= LeastDecibans)
            .OrderByDescending(weight => Math.Abs(weight.Decibans))
            .Select(weight => weight.Node is { } node ? Describe(byNetworkNode[node], weight.Decibans) : Repairs(weight.Decibans))];
    }

    private EvidenceWeight Describe(Graded graded, double decibans)
    {
        var grades = moment.Observed.Altered.Contains(graded.Id)
            ? moment.Observed.WeighedNodes[graded.Node]?.Grades
            : moment.Known[graded.Node]?.Grades;
        var seen = grades is { IsEmpty: false } known ? Words.Grades(graded, known) : "too close to a limit to call";
        return new EvidenceWeight(graded.Id, graded.Title, seen, decibans);
    }

    private EvidenceWeight Repairs(double decibans)
    {
        var tried = moment.Observed.TriedInVain.Order(StringComparer.Ordinal).ToList();
        return new EvidenceWeight(string.Join(", ", tried), "Repairs tried", "no change", decibans);
    }

    private ImmutableArray<string> RuledOutBy(Cause cause) =>
        moment.Known[cause.Node] is { IsContradictory: false } state && state.Grades == GradeSet.Of(0)
            ? [.. state.Sides.Select(side => side.From).Distinct()]
            : [];
}
