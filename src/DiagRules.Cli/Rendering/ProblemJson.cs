using System.Text.Json;
using DiagRules.Model.Problems;

namespace DiagRules.Cli.Rendering;

/// <summary>Problems for programs: <c>{ "problems": [ ... ] }</c>.</summary>
internal static class ProblemJson
{
    /// <summary>The document; problems a pack accepts are in it, with the reason.</summary>
    public static string Write(IEnumerable<Problem> problems) => JsonText.Write(json =>
    {
        json.WriteStartArray("problems");
        foreach (var problem in problems)
        {
            Write(json, problem);
        }

        json.WriteEndArray();
    });

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
