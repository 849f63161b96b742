using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>The causes in order of belief, with what the pack does not list in its place among them.</summary>
internal static class StandingText
{
    private const double WorthNaming = 0.01;
    private const int MostRuledOut = 8;
    private const int Indent = 2;
    private const int LabelWidth = 24;
    private const int CompactLabelWidth = 7;

    /// <summary>The whole standing, in percent and words.</summary>
    public static void Write(Page page, Pack pack, Diagnosis diagnosis, int most = 8)
    {
        var standing = Ranked(pack, diagnosis);
        var named = Named(standing, most);
        foreach (var (title, confidence) in named)
        {
            var ink = title == named[0].Title ? Ink.Strong : Ink.Plain;
            page.Item(Indent, $"{Words.Percent(confidence),5}  {Words.Belief(confidence)}", LabelWidth, title, textInk: ink);
        }

        WriteRest(page, standing[named.Count..], LabelWidth);
        WriteAlsoPresent(page, diagnosis);
        WriteRuledOut(page, diagnosis);
    }

    /// <summary>The first few in percent alone, for between two questions.</summary>
    public static void WriteCompact(Page page, Pack pack, Diagnosis diagnosis)
    {
        var standing = Ranked(pack, diagnosis);
        var named = Named(standing, 3);
        page.Text(0, "Standing now", Ink.Strong);
        foreach (var (title, confidence) in named)
        {
            page.Item(Indent, $"{Words.Percent(confidence),5}", CompactLabelWidth, title);
        }

        WriteRest(page, standing[named.Count..], CompactLabelWidth);
    }

    private static List<(string Title, double Confidence)> Ranked(Pack pack, Diagnosis diagnosis)
    {
        var titles = new Titles(pack);
        var listed = diagnosis.Hypotheses.Select(hypothesis => (hypothesis.Title, hypothesis.Confidence));
        var unlisted = diagnosis.Unlisted is { } share
            ? [(Title: Words.Sentence(titles.Of(RecordedCase.Unlisted)), Confidence: share)]
            : Array.Empty<(string Title, double Confidence)>();
        return [.. listed.Concat(unlisted).Where(one => one.Confidence > 0).OrderByDescending(one => one.Confidence)];
    }

    private static List<(string Title, double Confidence)> Named(List<(string Title, double Confidence)> standing, int most)
    {
        var worth = standing.Count(one => one.Confidence >= WorthNaming);
        return standing[..Math.Clamp(worth, Math.Min(1, standing.Count), most)];
    }

    private static void WriteRest(Page page, List<(string Title, double Confidence)> rest, int labelWidth)
    {
        if (rest.Count == 0)
        {
            return;
        }

        var together = rest.Sum(one => one.Confidence);
        var text = rest.Count == 1 ? rest[0].Title : Words.Count(rest.Count, "other", "others") + " together";
        page.Item(Indent, Words.Percent(together).PadLeft(5), labelWidth, text, textInk: Ink.Faint);
    }

    private static void WriteAlsoPresent(Page page, Diagnosis diagnosis)
    {
        foreach (var also in diagnosis.AlsoPresent)
        {
            page.Item(Indent, "Beside it", LabelWidth, $"{also.Title} may be there as well ({Page.Together(Words.Percent(also.Probability))})");
        }
    }

    private static void WriteRuledOut(Page page, Diagnosis diagnosis)
    {
        var ruledOut = diagnosis.Hypotheses.Where(hypothesis => hypothesis.Confidence == 0).Select(hypothesis => hypothesis.Title).ToList();
        if (ruledOut.Count == 0)
        {
            return;
        }

        var more = ruledOut.Count > MostRuledOut ? $"; and {ruledOut.Count - MostRuledOut} more" : "";
        page.Item(Indent, "Ruled out", LabelWidth, string.Join("; ", ruledOut.Take(MostRuledOut)) + more);
    }
}
