using System.Globalization;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>What is known: the complaint, findings and readings, each with where it comes from.</summary>
internal static class KnownText
{
    /// <summary>Writes one line for each.</summary>
    public static void Write(Page page, Pack pack, Diagnosis diagnosis)
    {
        if (diagnosis.Complaint is { } complaint)
        {
            page.Item(2, "-", 2, "Complaint: " + new Titles(pack).Of(complaint), textInk: Ink.Strong);
        }

        foreach (var finding in diagnosis.Findings)
        {
            page.Item(2, "-", 2, Titles.WithAnswer(finding.Title, Words.Plain(finding.Grade)) + Source(finding));
        }

        foreach (var reading in diagnosis.Readings)
        {
            page.Item(2, "-", 2, $"{reading.Title}: {Value(reading)}{(reading.IsDerived ? " (worked out)" : "")}");
        }

        if (diagnosis is { Complaint: null, Findings.IsEmpty: true, Readings.IsEmpty: true })
        {
            page.Text(2, "Nothing yet.");
        }
    }

    private static string Source(KnownFinding finding)
    {
        string[] remarks =
        [
            .. finding.From.Where(from => from != "observation").Select(Source),
            .. finding.Trust < 1 ? [Page.Together(Words.Percent(finding.Trust) + " sure")] : Array.Empty<string>(),
        ];
        return remarks.Length == 0 ? "" : $" ({string.Join(", ", remarks)})";
    }

    private static string Source(string from) => from switch
    {
        "observation" => "as seen",
        "complaint" => "from the complaint",
        "readings" => "from the readings",
        _ when from.Contains(' ', StringComparison.Ordinal) => from,
        _ => "by " + from,
    };

    private static string Value(Results.KnownReading reading)
    {
        if (double.IsInfinity(reading.Value))
        {
            return reading.Value > 0 ? "over range" : "under range";
        }

        var unit = reading.Unit == "number" ? "" : " " + reading.Unit;
        var plusMinus = reading.PlusMinus is { } limit ? " +/- " + limit.ToString("G2", CultureInfo.InvariantCulture) : "";
        return Page.Together(reading.Value.ToString("G4", CultureInfo.InvariantCulture) + plusMinus + unit);
    }

    /// <summary>Sides that do not agree, as one sentence.</summary>
    public static string Disagreement(Contradiction contradiction)
    {
        var sides = contradiction.Sides.Select(side => $"{Words.Plain(side.Grade)} ({Source(side.From)})");
        return $"{contradiction.Title}: {string.Join(" against ", sides)}. Left out until it is settled.";
    }
}
