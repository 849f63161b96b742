using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Reasoning.Inference;
using DiagRules.Reasoning.Testability;
using DiagRules.Steps;

namespace DiagRules.Testability;

/// <summary>Makes the matrix: what every check would show under every cause alone, and on a machine without a fault.</summary>
internal sealed class Study
{
    private readonly DiagnosisEngine _engine;
    private readonly TestabilityOptions _options;
    private readonly ImmutableArray<Cause> _causes;
    private readonly ImmutableArray<Check> _checks;
    private readonly int[][] _nodesOfCheck;
    private readonly int[] _nodes;
    private readonly double[][][] _underCause;
    private readonly double[][] _sound;

    public Study(DiagnosisEngine engine, TestabilityOptions options)
    {
        _engine = engine;
        _options = options;
        _causes = [.. engine.Network.Causes.Where(cause => (cause.Share ?? cause.Probability) > 0)];
        _checks = [.. engine.Pack.Checks.Where(check => check.IsOn(engine.Chassis))];
        var telling = new TellingNodes(engine.Start().Now());
        _nodesOfCheck = [.. _checks.Select(check => telling.Of(check).ToArray())];
        _nodes = [.. _nodesOfCheck.SelectMany(nodes => nodes).Distinct().Order()];
        _sound = Predict(null);
        _underCause = [.. _causes.Select(Predict)];
    }

    public TestabilityStudy Make()
    {
        var likelihoods = new double[_causes.Length, _checks.Length];
        var detects = new bool[_causes.Length, _checks.Length];
        for (var cause = 0; cause < _causes.Length; cause++)
        {
            for (var check = 0; check < _checks.Length; check++)
            {
                likelihoods[cause, check] = _nodesOfCheck[check].Select(node => 1 - _underCause[cause][PlaceOf(node)][0]).DefaultIfEmpty(0).Max();
                detects[cause, check] = SignsOf(cause, _nodesOfCheck[check]).Any();
            }
        }

        var report = Matrix(detects).Analyse(_options.CheckSets);
        var total = Rates().Sum();
        return new TestabilityStudy(likelihoods, detects, report)
        {
            Pack = _engine.Pack.Id,
            Version = _engine.Pack.Version,
            PackTitle = _engine.Pack.Title,
            Language = _engine.Pack.Language,
            Chassis = _engine.Chassis,
            Detection = _options.Detection,
            Causes = [.. _causes.Zip(Rates(), (cause, rate) => new StudiedCause(cause.Id, cause.Title, rate / total))],
            Checks = [.. _checks.Select((check, index) => new StudiedCheck(check.Id, check.Title, _nodesOfCheck[index].Length == 0))],
            ToldApartByGrade = [.. report.AmbiguityGroups.Select(PartsOf)],
        };
    }

    private DetectionMatrix Matrix(bool[,] detects) => new(
        [.. Enumerable.Range(0, _causes.Length).Select(cause => (IReadOnlyList<bool>)[.. Enumerable.Range(0, _checks.Length).Select(check => detects[cause, check])])],
        Rates());

    private double[] Rates() => [.. _causes.Select(cause => cause.Share ?? cause.Probability ?? 0)];

    /// <summary>Distribution of every node that some check decides, with one cause present or none, and all others absent.</summary>
    private double[][] Predict(Cause? present)
    {
        var network = _engine.Network;
        var evidence = new Evidence(network.Model.Network);
        foreach (var cause in network.Causes)
        {
            evidence.Observe(network.NodeOf(cause.Node), ReferenceEquals(cause, present) ? 1 : 0);
        }

        int[] nodes = [.. _nodes.Select(network.NodeOf)];
        var posteriors = network.Model.Engine.Infer(evidence, nodes);
        return [.. nodes.Select(node => posteriors.Of(node).ToArray())];
    }

    /// <summary>Findings and abnormal grades that give a cause away: the grade or a later one is likely under it and unlikely without.</summary>
    private IEnumerable<(int Node, int Grade)> SignsOf(int cause, IEnumerable<int> nodes)
    {
        foreach (var node in nodes)
        {
            var (under, without) = (_underCause[cause][PlaceOf(node)], _sound[PlaceOf(node)]);
            for (var grade = 1; grade < under.Length; grade++)
            {
                // Sums of the same numbers in another order differ by a rounding.
                const double Rounding = 1e-12;
                var (seen, anyway) = (under[grade..].Sum(), without[grade..].Sum());
                if (seen >= _options.Detection - Rounding && anyway <= 1 - _options.Detection + Rounding && anyway < seen)
                {
                    yield return (node, grade);
                }
            }
        }
    }

    /// <summary>A group by what grades its members show.</summary>
    private ImmutableArray<ImmutableArray<int>> PartsOf(IReadOnlyList<int> group) =>
        [.. group.GroupBy(cause => string.Join(' ', SignsOf(cause, _nodes))).Select(part => part.ToImmutableArray())];

    private int PlaceOf(int node) => Array.BinarySearch(_nodes, node);
}
