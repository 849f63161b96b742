using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Reasoning.Inference;
using DiagRules.Rules;

namespace DiagRules.Confidence;

/// <summary>Turns what is known into what is weighed.</summary>
internal sealed class EvidenceReader(PackIndex index, CauseNetwork network, Complaint? complaint, ObservedState observed, KnownState known, Views views)
{
    private readonly Pack _pack = index.Pack;

    /// <summary>Evidence for the model of the complaint.</summary>
    public CauseEvidence Read()
    {
        var evidence = network.Model.NewEvidence();
        foreach (var graded in _pack.Nodes.Where(node => network.NodeOf(node.Node) >= 0 && node is not Effect))
        {
            if (LikelihoodsOf(graded) is { } likelihoods)
            {
                Enter(evidence, network.NodeOf(graded.Node), likelihoods);
            }
        }

        foreach (var repair in observed.TriedInVain)
        {
            foreach (var cause in network.Causes)
            {
                foreach (var cure in cause.Repairs.Where(cure => cure.Repair == repair))
                {
                    evidence.RepairFailed(network.NodeOf(cause.Node), cure.Probability);
                }
            }
        }

        return evidence;
    }

    private static void Enter(CauseEvidence evidence, int node, double[] likelihoods)
    {
        var possible = likelihoods.Count(likelihood => likelihood > 0);
        if (possible == 1)
        {
            evidence.Observe(node, Array.FindIndex(likelihoods, likelihood => likelihood > 0));
        }
        else if (possible > 1 && likelihoods.Distinct().Count() > 1)
        {
            evidence.Observe(node, likelihoods);
        }
    }

    /// <summary>Likelihood per grade of what is known about a node, or <see langword="null"/> when nothing is weighed.</summary>
    private double[]? LikelihoodsOf(Graded graded)
    {
        if (observed.Altered.Contains(graded.Id))
        {
            return BeforeAlteration(graded);
        }

        if (known[graded.Node] is { } state)
        {
            return state.IsContradictory || ChoseTheShares(state) ? null : Soften(state.Grades, state.Trust, graded.Grades.Length);
        }

        return graded is Finding finding && !AnyReadingAltered(finding) ? Close(finding, views.Lenient) : null;
    }

    /// <summary>Of a finding that a check altered only what was seen before tells what was wrong.</summary>
    private double[]? BeforeAlteration(Graded graded)
    {
        if (observed.WeighedNodes[graded.Node] is { } seen)
        {
            return Soften(seen.Grades, seen.Trust, graded.Grades.Length);
        }

        return graded is Finding finding ? Close(finding, views.Weighed) : null;
    }

    private bool AnyReadingAltered(Finding finding) =>
        BandConditions.ReadsOf(finding)
            .SelectMany(read => Dependence.MeasuredIn(read.When, _pack))
            .Any(reading => observed.Altered.Contains(_pack.Readings[reading].Id));

    /// <summary>What a complaint with shares means is known to the rules but not weighed, since it chose the shares.</summary>
    private bool ChoseTheShares(NodeState state) =>
        complaint?.Shares is not null && complaint.Means.Any(meant => meant.Node == state.Node && state.Grades.IsSubsetOf(meant.Grades));

    /// <summary>Grades by readings that may be too close to a limit to call: the likelihood of a grade is the probability that its condition holds.</summary>
    private double[]? Close(Finding finding, FactsView view)
    {
        var likelihoods = new double[finding.Grades.Length];
        var trust = 1.0;
        foreach (var read in BandConditions.ReadsOf(finding))
        {
            if (ConditionProbability.Of(read.When, view) is not { } probability)
            {
                return null;
            }

            likelihoods[read.Grade] = Math.Max(likelihoods[read.Grade], probability);
            foreach (var reading in Dependence.MeasuredIn(read.When, _pack).Where(reading => observed.Readings[reading] is not null))
            {
                trust = Math.Min(trust, views.TrustOf(reading));
            }
        }

        var sum = likelihoods.Sum();
        return sum == 0 ? null : Array.ConvertAll(likelihoods, likelihood => (trust * likelihood) + ((1 - trust) * sum / likelihoods.Length));
    }

    /// <summary>
    /// An observation of k of n grades with trust t (Pearl 1988, virtual evidence): t + (1 - t) k / n for those, (1 - t) k / n for the others.
    /// </summary>
    private static double[] Soften(GradeSet grades, double trust, int count)
    {
        var likelihoods = new double[count];
        var rest = (1 - trust) * grades.Count / count;
        for (var grade = 0; grade < count; grade++)
        {
            likelihoods[grade] = grades.Contains(grade) ? trust + rest : rest;
        }

        return likelihoods;
    }
}
