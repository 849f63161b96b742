using System.Text.Json;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>Why a cause stands where it stands, for programs.</summary>
internal static class ExplanationJson
{
    /// <summary>The document; a weight that proves or excludes is the text <c>"Infinity"</c> or <c>"-Infinity"</c>.</summary>
    public static string Write(DiagnosisEngine engine, CauseExplanation explanation) => JsonText.Write(json =>
    {
        json.WriteString("pack", engine.Pack.Id);
        json.WriteString("version", engine.Pack.Version);
        json.WriteString("chassis", engine.Chassis);
        json.WriteString("cause", explanation.Cause);
        json.WriteString("title", explanation.Title);
        json.WriteNumber("prior", explanation.Prior);
        json.WriteNumber("confidence", explanation.Confidence);
        json.WriteStartArray("weights");
        foreach (var weight in explanation.Weights)
        {
            Write(json, weight);
        }

        json.WriteEndArray();
        json.WriteStartArray("ruled-out-by");
        foreach (var by in explanation.RuledOutBy)
        {
            json.WriteStringValue(by);
        }

        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, EvidenceWeight weight)
    {
        json.WriteStartObject();
        json.WriteString("finding", weight.Finding);
        json.WriteString("title", weight.Title);
        json.WriteString("grade", weight.Grade);
        if (double.IsInfinity(weight.Decibans))
        {
            json.WriteString("decibans", weight.Decibans > 0 ? "Infinity" : "-Infinity");
        }
        else
        {
            json.WriteNumber("decibans", weight.Decibans);
        }

        json.WriteEndObject();
    }
}
