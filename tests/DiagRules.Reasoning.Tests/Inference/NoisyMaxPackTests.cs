using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// Generated noisy-MAX packs against Data/network-queries.json: enumeration in rational arithmetic with a brute-force maximum over contributions.
/// </summary>
public class NoisyMaxPackTests
{
    private static readonly JsonElement Packs = ReferenceData.Json("network-queries.json").GetProperty("noisy_max_packs");

    public static TheoryData<string> Names => [.. Packs.EnumerateArray().Select(pack => pack.GetProperty("id").GetString()!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void PosteriorsOfAllNodes_AreThoseOfEnumeration(string id)
    {
        var pack = ReferenceData.Item(Packs, id);
        var network = NetworkOf(pack);

        foreach (var query in pack.GetProperty("queries").EnumerateArray())
        {
            var posteriors = network.Engine.Infer(network.EvidenceOf(query.GetProperty("evidence")));

            foreach (var answer in query.GetProperty("posteriors").EnumerateObject())
            {
                network.ShouldHave(posteriors, answer.Name, answer.Value, 1e-10);
            }

            (posteriors.Probability / query.GetProperty("p_evidence").GetDouble()).ShouldBe(1, 1e-9);
        }
    }

    private static NamedNetwork NetworkOf(JsonElement pack)
    {
        var network = new NamedNetwork();
        foreach (var node in pack.GetProperty("nodes").EnumerateArray())
        {
            var name = node.GetProperty("id").GetString()!;
            var states = ReferenceData.Strings(node.GetProperty("states"));
            if (node.TryGetProperty("prior", out var prior))
            {
                network.AddTable(name, states, [], [ReferenceData.Doubles(prior)]);
            }
            else
            {
                network.AddGraded(name, states, ReferenceData.Doubles(node.GetProperty("leak")), node.GetProperty("links").EnumerateArray().Select(LinkOf));
            }
        }

        return network;
    }

    private static (string Parent, double[][] ByParentGrade) LinkOf(JsonElement link)
        => (link.GetProperty("parent").GetString()!, [.. link.GetProperty("given").EnumerateObject().Select(row => ReferenceData.Doubles(row.Value))]);
}
