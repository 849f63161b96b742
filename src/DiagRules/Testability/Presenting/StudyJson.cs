using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace DiagRules.Testability.Presenting;

/// <summary>A study as JSON.</summary>
internal static class StudyJson
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(TestabilityStudy study)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            WriteHead(json, study);
            WriteRates(json, study);
            WriteFindings(json, study);
            WriteMatrix(json, study);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteHead(Utf8JsonWriter json, TestabilityStudy study)
    {
        json.WriteString("pack", study.Pack);
        json.WriteString("version", study.Version);
        json.WriteString("chassis", study.Chassis);
        json.WriteNumber("detection", study.Detection);
    }

    private static void WriteRates(Utf8JsonWriter json, TestabilityStudy study)
    {
        var report = study.Report;
        json.WriteNumber("detection-rate", report.DetectionRate);
        json.WriteNumber("detection-rate-by-rate", report.DetectionRateByRate);
        json.WriteStartArray("isolation-rates");
        for (var size = 1; size <= report.AmbiguityGroups.Select(group => group.Count).DefaultIfEmpty(0).Max(); size++)
        {
            json.WriteStartObject();
            json.WriteNumber("group-size", size);
            json.WriteNumber("rate", report.IsolationRate(size));
            json.WriteNumber("rate-by-rate", report.IsolationRateByRate(size));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("mean-group-size", report.MeanGroupSize);
        json.WriteNumber("expected-group-size", report.ExpectedGroupSize);
        json.WriteNumber("expected-group-size-by-rate", report.ExpectedGroupSizeByRate);
    }

    private static void WriteFindings(Utf8JsonWriter json, TestabilityStudy study)
    {
        var report = study.Report;
        Ids(json, "undetected", report.Undetected.Select(cause => study.Causes[cause].Id));
        json.WriteStartArray("ambiguity-groups");
        for (var i = 0; i < report.AmbiguityGroups.Count; i++)
        {
            json.WriteStartObject();
            Ids(json, "causes", report.AmbiguityGroups[i].Select(cause => study.Causes[cause].Id));
            json.WriteStartArray("told-apart-by-grade");
            foreach (var part in study.ToldApartByGrade[i])
            {
                Ids(json, null, part.Select(cause => study.Causes[cause].Id));
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Ids(json, "redundant-checks", report.RedundantChecks.Select(check => study.Checks[check].Id));
        json.WriteStartArray("minimal-check-sets");
        foreach (var set in report.MinimalCheckSets)
        {
            Ids(json, null, set.Select(check => study.Checks[check].Id));
        }

        json.WriteEndArray();
        json.WriteBoolean("has-all-minimal-check-sets", report.HasAllMinimalCheckSets);
        json.WriteStartArray("imitations");
        foreach (var pair in report.Imitations)
        {
            json.WriteStartObject();
            Ids(json, "causes", new[] { pair.First, pair.Second }.Select(cause => study.Causes[cause].Id));
            Ids(json, "look-like", pair.LooksLike.Select(cause => study.Causes[cause].Id));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("hidden-causes");
        foreach (var hidden in report.HiddenCauses)
        {
            json.WriteStartObject();
            json.WriteString("cause", study.Causes[hidden.Cause].Id);
            json.WriteString("behind", study.Causes[hidden.BehindCause].Id);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteMatrix(Utf8JsonWriter json, TestabilityStudy study)
    {
        json.WriteStartArray("checks");
        foreach (var check in study.Checks)
        {
            json.WriteStartObject();
            json.WriteString("check", check.Id);
            json.WriteBoolean("decides-nothing", check.DecidesNothing);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("causes");
        for (var cause = 0; cause < study.Causes.Length; cause++)
        {
            var row = cause;
            json.WriteStartObject();
            json.WriteString("cause", study.Causes[cause].Id);
            json.WriteNumber("rate", study.Causes[cause].Rate);
            json.WriteStartObject("likelihoods");
            for (var check = 0; check < study.Checks.Length; check++)
            {
                if (study.Likelihood(cause, check) > 0)
                {
                    json.WriteNumber(study.Checks[check].Id, study.Likelihood(cause, check));
                }
            }

            json.WriteEndObject();
            Ids(json, "detected-by", study.Checks.Where((_, check) => study.Detects(row, check)).Select(check => check.Id));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Ids(Utf8JsonWriter json, string? name, IEnumerable<string> ids)
    {
        if (name is not null)
        {
            json.WritePropertyName(name);
        }

        json.WriteStartArray();
        foreach (var id in ids)
        {
            json.WriteStringValue(id);
        }

        json.WriteEndArray();
    }
}
