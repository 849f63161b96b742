using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// Published networks against Data/network-queries.json, whose answers come from dlib 19.24's join tree and from variable elimination in 60-digit decimals. The
/// paper behind each network stands in Data/networks/SOURCES.md.
/// </summary>
public class ClassicNetworkTests
{
    private const double Tolerance = 1e-10;

    private static readonly JsonElement Networks = ReferenceData.Json("network-queries.json").GetProperty("networks");

    public static TheoryData<string> Names => [.. Networks.EnumerateArray().Select(network => network.GetProperty("network").GetString()!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Posteriors_OfPublishedNetworks_AreThoseOfTwoOtherExactMethods(string name)
    {
        var reference = Networks.EnumerateArray().Single(network => network.GetProperty("network").GetString() == name);
        var network = BifReader.Read(ReferenceData.PathOf(reference.GetProperty("file").GetString()!));

        foreach (var query in reference.GetProperty("queries").EnumerateArray())
        {
            var target = query.GetProperty("target").GetString()!;

            var posteriors = network.Engine.Infer(network.EvidenceOf(query.GetProperty("evidence")), network[target]);

            network.ShouldHave(posteriors, target, query.GetProperty("posterior"), Tolerance);
            var expected = query.GetProperty("p_evidence").GetDouble();
            (posteriors.Probability / expected).ShouldBe(1, 1e-9, query.GetProperty("id").GetString());
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Posteriors_OfAllNodesAtOnce_AreThoseAskedForOneByOne(string name)
    {
        var reference = Networks.EnumerateArray().Single(network => network.GetProperty("network").GetString() == name);
        var network = BifReader.Read(ReferenceData.PathOf(reference.GetProperty("file").GetString()!));
        var query = reference.GetProperty("queries").EnumerateArray().Last();
        var evidence = network.EvidenceOf(query.GetProperty("evidence"));

        var all = network.Engine.Infer(evidence);

        for (var node = 0; node < network.Engine.Network.Count; node++)
        {
            all.Of(node).ToArray().ShouldBe(network.Engine.Infer(evidence, node).Of(node).ToArray(), 1e-12);
        }
    }
}
