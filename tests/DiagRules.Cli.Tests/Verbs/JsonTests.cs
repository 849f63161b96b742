using System.Text.Json;
using DiagRules.TestSupport;

namespace DiagRules.Cli.Tests.Verbs;

/// <summary>What programs read: the keys of the documents, and numbers that add up.</summary>
public sealed class JsonTests
{
    [Fact]
    public void Diagnose_HoldsEveryKeyOfItsContract()
    {
        var diagnosis = Json("diagnose", Pack("tarn-p3-jack"), "--complaint", "will-not-extend", "--observe", "pump-sound=clicks-once", "--format", "json");

        string[] contract =
        [
            "pack", "version", "chassis", "hypotheses", "unlisted", "expected-cost", "also-present", "findings", "readings", "next", "advice", "hazards", "deferred",
            "contradictions", "notes",
        ];
        contract.Except(Keys(diagnosis)).ShouldBeEmpty();
    }

    [Fact]
    public void Diagnose_ConfidencesAddUpToOne()
    {
        var diagnosis = Json("diagnose", Pack("tarn-p3-jack"), "--observe", "pump-sound=clicks-once", "--format", "json");

        var sum = diagnosis.GetProperty("hypotheses").EnumerateArray().Sum(one => one.GetProperty("confidence").GetDouble())
            + diagnosis.GetProperty("unlisted").GetDouble();

        sum.ShouldBe(1, 1e-9);
    }

    [Fact]
    public void Validate_GivesThePlaceOfEveryProblem()
    {
        var problems = Json("validate", Pack("broken-pack"), "--format", "json").GetProperty("problems");

        problems.GetArrayLength().ShouldBeGreaterThan(0);
        foreach (var problem in problems.EnumerateArray())
        {
            Keys(problem).ShouldBe(["code", "severity", "message", "pack", "file", "line", "column", "length"]);
            problem.GetProperty("line").GetInt32().ShouldBeGreaterThan(0);
        }
    }

    [Fact]
    public void Explain_HoldsWeightsInDecibans()
    {
        var explanation = Json("explain", Pack("tarn-p3-jack"), "motor-brushes-worn", "--observe", "after-tap=runs", "--format", "json");

        Keys(explanation).ShouldBe(["pack", "version", "chassis", "cause", "title", "prior", "confidence", "weights", "ruled-out-by"]);
        explanation.GetProperty("weights")[0].GetProperty("decibans").GetDouble().ShouldBeGreaterThan(10);
    }

    private static IEnumerable<string> Keys(JsonElement element) => element.EnumerateObject().Select(member => member.Name);

    private static JsonElement Json(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        Tool.Run(args, new Terminal(TextReader.Null, output, error));
        error.ToString().ShouldBeEmpty();
        return JsonDocument.Parse(output.ToString()).RootElement;
    }

    private static string Pack(string name) => RepositoryFolder.At("tests", "DiagRules.Cli.Tests", "Packs", name);
}
