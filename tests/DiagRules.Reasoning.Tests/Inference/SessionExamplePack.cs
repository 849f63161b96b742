using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>A pack of session-examples.json as a model.</summary>
internal sealed class SessionExamplePack
{
    private readonly Dictionary<string, int> _nodes = [];
    private readonly Dictionary<string, string[]> _grades = [];
    private readonly NetworkBuilder _builder = new();

    public SessionExamplePack(JsonElement pack)
    {
        var shares = new Dictionary<int, double>();
        foreach (var cause in pack.GetProperty("causes").EnumerateObject())
        {
            _nodes[cause.Name] = _builder.AddCause(cause.Name, 0.5);
            _grades[cause.Name] = ["absent", "present"];
            shares[_nodes[cause.Name]] = cause.Value.GetProperty("share").GetDouble();
        }

        foreach (var name in ReferenceData.Strings(pack.GetProperty("order")))
        {
            AddChild(name, pack.GetProperty("nodes").GetProperty(name));
        }

        Model = CauseModel.FromShares(_builder.Build(), shares, pack.GetProperty("unlisted").GetDouble(), pack.GetProperty("coexistence").GetDouble());
    }

    public CauseModel Model { get; }

    public int NodeOf(string name) => _nodes[name];

    public CauseEvidence EvidenceOf(JsonElement example)
    {
        var evidence = Model.NewEvidence();
        foreach (var finding in example.GetProperty("observations").EnumerateObject())
        {
            evidence.Observe(_nodes[finding.Name], Array.IndexOf(_grades[finding.Name], finding.Value.GetString()));
        }

        foreach (var finding in example.GetProperty("soft").EnumerateObject())
        {
            evidence.Observe(_nodes[finding.Name], ByGrade(finding.Name, finding.Value));
        }

        Array.ForEach(ReferenceData.Strings(example.GetProperty("ruled_out")), cause => evidence.RuleOut(_nodes[cause]));
        Array.ForEach(ReferenceData.Strings(example.GetProperty("observed_present")), cause => evidence.ObservePresent(_nodes[cause]));
        Array.ForEach(ReferenceData.Strings(example.GetProperty("repair_failed_for")), cause => evidence.RepairFailed(_nodes[cause]));
        return evidence;
    }

    private void AddChild(string name, JsonElement node)
    {
        _grades[name] = ReferenceData.Strings(node.GetProperty("grades"));
        var contributions = node.GetProperty("parents").EnumerateObject().Select(parent => Contribution.OfLaterGrades(
            _nodes[parent.Name],
            [.. _grades[parent.Name][1..].Select(grade => (IReadOnlyList<double>)ByGrade(name, parent.Value.GetProperty(grade))[1..])]));
        var background = Distribution.WithRest(ByGrade(name, node.GetProperty("background"))[1..]);
        _nodes[name] = _builder.AddGraded(name, _grades[name].Length, background, [.. contributions]);
    }

    private double[] ByGrade(string node, JsonElement values)
        => [.. _grades[node].Select(grade => values.TryGetProperty(grade, out var value) ? value.GetDouble() : 0)];
}
