using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Reasoning.Inference;
using DiagRules.Reasoning.Planning;

namespace DiagRules.Steps;

/// <summary>What each check would show, cause by cause.</summary>
/// <remarks>
/// A check that decides one finding is forecast exactly. One that decides several is forecast by the joint distribution of the most
/// telling of them, as many as stay within <see cref="MostOutcomes"/> answers; what the others add is left out, so such a check is
/// worth at least what is said of it.
/// </remarks>
internal sealed class CheckForecasts
{
    /// <summary>Most joint answers of one check that are told apart.</summary>
    public const int MostOutcomes = 32;

    private readonly Moment _moment;
    private readonly Dictionary<int, Prediction> _predictions = [];

    public CheckForecasts(Moment moment, IEnumerable<IReadOnlyList<int>> nodesOfChecks)
    {
        _moment = moment;
        int[] nodes = [.. nodesOfChecks.SelectMany(list => list).Distinct().Order()];
        var predicted = moment.Model.Predict(moment.Evidence, [.. nodes.Select(moment.Network.NodeOf)]);
        for (var i = 0; i < nodes.Length; i++)
        {
            _predictions.Add(nodes[i], predicted[i]);
        }
    }

    /// <summary>The answers of a check that decides these nodes; answers that cannot come are left out.</summary>
    public ImmutableArray<ForecastOutcome> Of(IReadOnlyList<int> nodes)
    {
        var outcomes = nodes.Count == 1 ? Single(nodes[0]) : Joint(nodes);
        return [.. outcomes.Where(outcome => outcome.Outcome.Unlisted > 0 || outcome.Outcome.Likelihoods.Any(likelihood => likelihood > 0))];
    }

    /// <summary>How much a node is expected to say about the cause: mutual information in nats (Shannon 1948).</summary>
    private double Telling(int node)
    {
        var prediction = _predictions[node];
        double sum = 0;
        for (var position = 0; position <= _moment.Network.Causes.Length; position++)
        {
            var isListed = position < _moment.Network.Causes.Length;
            var weight = isListed ? _moment.ConfidenceAt(position) : _moment.Weighing.Unlisted;
            var row = isListed ? prediction.At(position) : prediction.GivenUnlisted;
            for (var grade = 0; grade < prediction.Grades; grade++)
            {
                if (weight > 0 && row[grade] > 0 && prediction.Overall[grade] > 0)
                {
                    sum += weight * row[grade] * Math.Log(row[grade] / prediction.Overall[grade]);
                }
            }
        }

        return sum;
    }

    private IEnumerable<ForecastOutcome> Single(int node)
    {
        var prediction = _predictions[node];
        for (var grade = 0; grade < prediction.Grades; grade++)
        {
            var likelihoods = new double[_moment.Network.Causes.Length];
            for (var position = 0; position < likelihoods.Length; position++)
            {
                likelihoods[position] = Probability(prediction.At(position)[grade]);
            }

            yield return new([(node, grade)], new PlanOutcome { Likelihoods = likelihoods, Unlisted = Probability(prediction.GivenUnlisted[grade]) });
        }
    }

    private IEnumerable<ForecastOutcome> Joint(IReadOnlyList<int> nodes)
    {
        int[] byTelling = [.. nodes.OrderByDescending(Telling).ThenBy(node => node)];
        var joint = _moment.Model.PredictTogether(_moment.Evidence, [.. byTelling.Select(_moment.Network.NodeOf)], MostOutcomes);
        for (var outcome = 0; outcome < joint.Outcomes; outcome++)
        {
            var likelihoods = new double[_moment.Network.Causes.Length];
            for (var position = 0; position < likelihoods.Length; position++)
            {
                likelihoods[position] = Probability(joint.At(position, outcome));
            }

            var grades = Enumerable.Range(0, joint.Nodes.Count).Select(i => (byTelling[i], joint.GradeOf(outcome, i)));
            yield return new([.. grades], new PlanOutcome { Likelihoods = likelihoods, Unlisted = Probability(joint.GivenUnlisted(outcome)) });
        }
    }

    // A quotient of two sums may overshoot by a rounding.
    private static double Probability(double quotient) => Math.Clamp(quotient, 0, 1);
}
