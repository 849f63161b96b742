using DiagRules.Model;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>Which findings and causes a check decides: those it gives, and those read from the readings it gives.</summary>
internal sealed class Decided(CheckScope scope)
{
    private ILookup<string, string>? _readFrom;

    /// <summary>Ids in ordinal order.</summary>
    public SortedSet<string> By(Declared check)
    {
        var decided = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var id in check.Entry is Check { Gives: var gives } ? gives : [check.Id])
        {
            if (scope.Draft.Find(id) is { Section: Section.Readings })
            {
                decided.UnionWith(ReadFrom[id]);
            }
            else
            {
                decided.Add(id);
            }
        }

        return decided;
    }

    /// <summary>For each measured reading the findings read from it, through derived readings too.</summary>
    private ILookup<string, string> ReadFrom => _readFrom ??= (
        from finding in scope.Of<Finding>(Section.Findings)
        from reading in Readings(finding.Entry)
        select (reading, finding.Entry.Id)).Distinct().ToLookup(pair => pair.reading, pair => pair.Id);

    private IEnumerable<string> Readings(Finding finding)
    {
        var mentions = finding.Reads.SelectMany(read => Mention.In(read.When, scope.Draft));
        if (finding.Bands is { } bands)
        {
            mentions = mentions.Concat(bands.Limits.SelectMany(limit => Mention.In(limit, scope.Draft)));
        }

        return mentions.Select(mention => mention.To.Entry).OfType<Reading>().Concat(finding.Bands is null ? [] : [finding.Bands.Of]).SelectMany(Measured);
    }

    private IEnumerable<string> Measured(Reading reading) =>
        reading.From is null ? [reading.Id] : Mention.In(reading.From, scope.Draft).Select(mention => mention.To.Entry).OfType<Reading>().SelectMany(Measured);
}
