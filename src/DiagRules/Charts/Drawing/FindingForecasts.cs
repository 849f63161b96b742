using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Reasoning.Inference;
using DiagRules.Rules;
using DiagRules.Steps;

namespace DiagRules.Charts.Drawing;

/// <summary>What each finding that a check decides would show, one by one.</summary>
internal sealed class FindingForecasts
{
    /// <summary>A finding is asked beside the first one when a grade of it moves some cause by at least this.</summary>
    public const double WorthAsking = 0.05;

    /// <summary>A grade that is less likely than this moves nobody worth a box.</summary>
    private const double Rare = 0.02;

    private readonly Moment _moment;
    private readonly double[] _weights;
    private readonly int[] _nodes;
    private readonly IReadOnlyList<Prediction> _predictions;

    public FindingForecasts(Moment moment, Check check)
    {
        _moment = moment;
        _weights = Weights(moment);
        _nodes = [.. new TellingNodes(moment).Of(check)];
        _predictions = _nodes.Length == 0 ? [] : moment.Model.Predict(moment.Evidence, [.. _nodes.Select(moment.Network.NodeOf)]);
    }

    /// <summary>Confidence of every cause and then of something unlisted, as alternatives that add up to 1.</summary>
    public static double[] Weights(Moment moment)
    {
        double[] weights = [.. moment.Network.Causes.Select((_, position) => moment.ConfidenceAt(position)), moment.Weighing.Unlisted];
        var sum = weights.Sum();
        return sum > 0 ? [.. weights.Select(weight => weight / sum)] : [.. weights.Select((_, position) => position == weights.Length - 1 ? 1.0 : 0)];
    }

    /// <summary>The finding or cause, by node of the pack, that is expected to say most; <see langword="null"/> when none is worth asking.</summary>
    /// <param name="leastShift">How much some grade must move some cause; 0 takes the most telling one whatever it says.</param>
    public int? MostTelling(double leastShift)
    {
        var kept = _nodes.Where((node, place) => leastShift <= 0 || Shift(place) >= leastShift || LiftsDeferral(node)).ToList();
        return kept.Count == 0 ? null : kept.MaxBy(node => Telling(Array.IndexOf(_nodes, node)));
    }

    /// <summary>How likely each grade is; together 1.</summary>
    public IReadOnlyList<double> Grades(int node)
    {
        var prediction = _predictions[Array.IndexOf(_nodes, node)];
        var grades = new double[prediction.Grades];
        for (var grade = 0; grade < grades.Length; grade++)
        {
            grades[grade] = Enumerable.Range(0, _weights.Length).Sum(position => _weights[position] * Row(prediction, position)[grade]);
        }

        var sum = grades.Sum();
        return [.. grades.Select(probability => probability / sum)];
    }

    /// <summary>Confidence of the cause that leads after a grade.</summary>
    public double LeadAfter(int node, int grade)
    {
        var prediction = _predictions[Array.IndexOf(_nodes, node)];
        var joint = Enumerable.Range(0, _weights.Length).Select(position => _weights[position] * Row(prediction, position)[grade]).ToArray();
        var sum = joint.Sum();
        return sum > 0 ? joint.SkipLast(1).Max() / sum : 0;
    }

    private ReadOnlySpan<double> Row(Prediction prediction, int position) =>
        position < _weights.Length - 1 ? prediction.At(position) : prediction.GivenUnlisted;

    /// <summary>Mutual information of grade and cause in nats (Shannon 1948).</summary>
    private double Telling(int place)
    {
        var overall = Grades(_nodes[place]);
        double sum = 0;
        for (var position = 0; position < _weights.Length; position++)
        {
            var row = Row(_predictions[place], position);
            for (var grade = 0; grade < row.Length; grade++)
            {
                sum += _weights[position] > 0 && row[grade] > 0 && overall[grade] > 0 ? _weights[position] * row[grade] * Math.Log(row[grade] / overall[grade]) : 0;
            }
        }

        return sum;
    }

    /// <summary>The most that any grade worth a box moves any cause.</summary>
    private double Shift(int place)
    {
        var overall = Grades(_nodes[place]);
        double most = 0;
        for (var position = 0; position < _weights.Length; position++)
        {
            var row = Row(_predictions[place], position);
            for (var grade = 0; grade < row.Length; grade++)
            {
                most = overall[grade] < Rare ? most : Math.Max(most, Math.Abs((_weights[position] * row[grade] / overall[grade]) - _weights[position]));
            }
        }

        return most;
    }

    /// <summary>Whether a rule keeps something back until this is known.</summary>
    private bool LiftsDeferral(int node) =>
        _moment.Outcomes.Any(line => line.Kind == LineKind.Defer && Dependence.NodesIn(line.When).Contains(node));
}
