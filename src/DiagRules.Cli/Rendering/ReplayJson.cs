using System.Text.Json;
using DiagRules.Replay;

namespace DiagRules.Cli.Rendering;

/// <summary>What packs make of their recorded cases, for programs.</summary>
internal static class ReplayJson
{
    public static string Write(IEnumerable<PackReplay> replays) => JsonText.Write(json =>
    {
        json.WriteStartArray("packs");
        foreach (var replay in replays)
        {
            Write(json, replay);
        }

        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, PackReplay replay)
    {
        json.WriteStartObject();
        json.WriteString("pack", replay.Pack.Id);
        json.WriteString("version", replay.Pack.Version);
        json.WriteBoolean("accepted", replay.IsAccepted);
        json.WriteStartObject("scores");
        json.WriteNumber("cases", replay.Scores.Count);
        Write(json, "top-1", replay.Scores.Top1);
        Write(json, "top-3", replay.Scores.Top3);
        Write(json, "mean-reciprocal-rank", replay.Scores.MeanReciprocalRank);
        Write(json, "brier", replay.Scores.Brier);
        Write(json, "log-loss", replay.Scores.LogLoss);
        json.WriteEndObject();
        json.WriteStartArray("cases");
        foreach (var played in replay.Cases)
        {
            Write(json, played);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ReplayedCase played)
    {
        json.WriteStartObject();
        json.WriteString("case", played.Case.Id);
        WriteArray(json, "confirmed", played.Case.Confirmed);
        json.WriteNumber("rank", played.Rank);
        json.WriteNumber("confidence", played.Confidence);
        json.WriteBoolean("met", played.IsMet);
        WriteArray(json, "missed", played.Missed);
        json.WriteEndObject();
    }

    private static void WriteArray(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    /// <summary>A pack without counted cases has no scores.</summary>
    private static void Write(Utf8JsonWriter json, string name, Measure measure)
    {
        json.WriteStartObject(name);
        foreach (var (key, value) in new[] { ("value", measure.Value), ("low", measure.Low), ("high", measure.High) })
        {
            if (double.IsFinite(value))
            {
                json.WriteNumber(key, value);
            }
            else
            {
                json.WriteNull(key);
            }
        }

        json.WriteEndObject();
    }
}
