using System.Globalization;
using System.Text;
using CsCheck;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Loading;

/// <summary>The order of files, sections and entries never changes an answer.</summary>
public class OrderTests
{
    private static readonly string Expected = Fingerprint(new PackLoader().Load(ExamplePack.Folder).Require());

    [Fact]
    public void FilesSectionsAndEntries_InAnyOrder_MakeTheSamePack() =>
        Gen.Int.Sample(
            seed =>
            {
                var shuffled = Shuffle(new Random(seed));
                var result = shuffled.Load();

                result.Problems.Where(problem => problem.Severity == Severity.Error).ShouldBeEmpty();
                Fingerprint(result.Require()).ShouldBe(Expected);
            },
            iter: 20);

    /// <summary>All entries of the example pack dealt out at random to a few files, in any order.</summary>
    private static PackText Shuffle(Random random)
    {
        var entries = ExamplePack.Files.Where(file => !file.Path.StartsWith("cases/", StringComparison.Ordinal) && file.Path != "pack.yaml")
            .SelectMany(file => Entries(file.Text))
            .ToArray();
        random.Shuffle(entries);
        var pack = new PackText();
        foreach (var (path, text) in ExamplePack.Files.Where(file => file.Path == "pack.yaml" || file.Path.StartsWith("cases/", StringComparison.Ordinal)))
        {
            pack.With(path, text);
        }

        var names = new[] { "a.yaml", "m/b.yaml", "z.yaml" };
        foreach (var file in entries.GroupBy(_ => names[random.Next(names.Length)]).OrderBy(_ => random.Next()))
        {
            pack.With(file.Key, string.Concat(file.GroupBy(entry => entry.Section).OrderBy(_ => random.Next()).Select(section => $"{section.Key}:\n{string.Concat(section.Select(entry => entry.Text))}")));
        }

        return pack;
    }

    /// <summary>Sections stand at the left edge, entries two spaces in.</summary>
    private static IEnumerable<(string Section, string Text)> Entries(string text)
    {
        var section = "";
        var entry = new StringBuilder();
        foreach (var line in text.Split('\n').Append("end:"))
        {
            var isSection = line.Length > 0 && char.IsAsciiLetter(line[0]);
            if ((isSection || (line.StartsWith("  ", StringComparison.Ordinal) && line.Length > 2 && line[2] is not (' ' or '#' or '-'))) && entry.Length > 0)
            {
                yield return (section, entry.ToString());
                entry.Clear();
            }

            if (isSection)
            {
                section = line.Split(':')[0];
            }
            else if (line.StartsWith("  ", StringComparison.Ordinal))
            {
                entry.Append(line).Append('\n');
            }
        }
    }

    /// <summary>Everything about a pack that an answer can rest on, without places.</summary>
    private static string Fingerprint(Pack pack)
    {
        var text = new StringBuilder();
        foreach (var entry in pack.Readings.Cast<Entry>().Concat(pack.Nodes).Concat(pack.Parameters).Concat(pack.Complaints).Concat(pack.Rules)
            .Concat(pack.Checks).Concat(pack.Access).Concat(pack.Hazards).Concat(pack.Repairs))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{entry.GetType().Name} {entry.Id} {entry.Index} {entry.Title} {string.Join(',', entry.Only)} {Content(entry)}");
        }

        return text.AppendJoin(',', pack.Cases.Select(recorded => $"{recorded.Id} {string.Join(' ', recorded.Observations.Select(observation => observation with { Place = default }))} {string.Join(',', recorded.Confirmed)}")).ToString();
    }

    private static string Content(Entry entry) => entry switch
    {
        Reading reading => $"{reading.Unit} {reading.Plausible} {reading.Accuracy} {reading.IsLasting}",
        Cause cause => $"{cause.Node} {cause.Share} {Shown(cause)} {string.Join(',', cause.Repairs)} {string.Join(',', cause.Hazards)} {Text(cause.Precondition?.Must)}",
        Finding finding => $"{finding.Node} {Shown(finding)} {string.Join(',', finding.Background)} {string.Join(',', finding.Reads.Select(read => $"{read.Grade} {Text(read.When)}"))} {finding.Bands?.Of.Id} {Text(finding.Bands?.If)}",
        Consequence effect => $"{effect.Node} {Shown(effect)} {string.Join(',', effect.Background)}",
        Rule rule => $"{Text(rule.When)} {string.Join(',', rule.Settles)} {string.Join(',', rule.RulesOut)} {string.Join(',', rule.Defers)} {string.Join(',', rule.Hazards)}",
        Model.Check check => $"{string.Join(',', check.Gives)} {Text(check.SkipIf)} {check.Minutes} {check.Cost} {string.Join(',', check.Needs)}",
        Repair repair => $"{repair.Minutes} {repair.Cost} {string.Join(',', repair.VerifyBy.Select(proof => $"{proof.Check} {proof.Times}"))}",
        Complaint complaint => $"{string.Join(',', complaint.Means)} {string.Join(',', (complaint.Shares ?? []).OrderBy(share => share.Key))}",
        Parameter parameter => $"{parameter.Value} {string.Join(',', parameter.ByChassis.OrderBy(value => value.Key))}",
        _ => "",
    };

    private static string Shown(Graded graded) =>
        string.Join(';', graded.Shows.Select(shown => $"{shown.Child}: {string.Join('|', shown.ByGrade.Select(row => string.Join(' ', row)))}"));

    private static string? Text(Condition? condition) => condition?.Text;
}
