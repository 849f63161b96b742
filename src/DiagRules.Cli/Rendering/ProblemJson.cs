using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using DiagRules.Model.Problems;

namespace DiagRules.Cli.Rendering;

/// <summary>Problems for programs: <c>{ "problems": [ ... ] }</c>.</summary>
internal static class ProblemJson
{
    // Messages quote packs in any language; escaping their letters would help nobody, since this is never put into HTML.
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the document; problems a pack accepts are in it, with the reason.</summary>
    public static void Write(TextWriter writer, IEnumerable<Problem> problems)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            json.WriteStartArray("problems");
            foreach (var problem in problems)
            {
                Write(json, problem);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        writer.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }

    private static void Write(Utf8JsonWriter json, Problem problem)
    {
        json.WriteStartObject();
        json.WriteString("code", problem.Code);
        json.WriteString("severity", problem.Severity.ToString().ToLowerInvariant());
        json.WriteString("message", problem.Message);
        json.WriteString("pack", problem.Place.Pack);
        json.WriteString("file", problem.Place.File);
        json.WriteNumber("line", problem.Place.Line);
        json.WriteNumber("column", problem.Place.Column);
        json.WriteNumber("length", problem.Place.Length);
        if (problem.Place.Member is { } member)
        {
            json.WriteString("member", member);
        }

        if (problem.Accepted is { } reason)
        {
            json.WriteString("accepted", reason);
        }

        json.WriteEndObject();
    }
}
