using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>A network whose nodes and grades have names, as the reference files give them.</summary>
internal sealed class NamedNetwork
{
    private readonly Dictionary<string, int> _nodes = [];
    private readonly Dictionary<string, string[]> _states = [];
    private readonly NetworkBuilder _builder = new();
    private InferenceEngine? _engine;

    public InferenceEngine Engine => _engine ??= new InferenceEngine(_builder.Build());

    public int this[string name] => _nodes[name];

    public IReadOnlyList<string> StatesOf(string name) => _states[name];

    /// <summary>Parents before children; rows are divided by their sums.</summary>
    public void AddTable(string name, string[] states, string[] parents, IEnumerable<double[]> rows)
    {
        var normalised = rows.SelectMany(row => row.Select(number => number / row.Sum())).ToArray();
        _states[name] = states;
        _nodes[name] = parents.Length == 0
            ? _builder.AddRoot(name, normalised)
            : _builder.AddTable(name, states.Length, [.. parents.Select(parent => _nodes[parent])], normalised);
    }

    public void AddGraded(string name, string[] states, double[] background, IEnumerable<(string Parent, double[][] ByParentGrade)> links)
    {
        _states[name] = states;
        _nodes[name] = _builder.AddGraded(name, states.Length, background, [.. links.Select(link => Contribution.Of(_nodes[link.Parent], link.ByParentGrade))]);
    }

    public Evidence EvidenceOf(JsonElement states)
    {
        var evidence = new Evidence(Engine.Network);
        foreach (var observation in states.EnumerateObject())
        {
            evidence.Observe(_nodes[observation.Name], Array.IndexOf(_states[observation.Name], observation.Value.GetString()));
        }

        return evidence;
    }

    public void ShouldHave(Posteriors posteriors, string name, JsonElement answer, double tolerance)
    {
        foreach (var state in answer.EnumerateObject())
        {
            posteriors.Of(_nodes[name], Array.IndexOf(_states[name], state.Name)).ShouldBe(state.Value.GetDouble(), tolerance, $"{name} = {state.Name}");
        }
    }
}
