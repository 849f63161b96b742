using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;
using DiagRules.Rules;

namespace DiagRules.Charts.Drawing;

/// <summary>What the answers of a check mean in numbers: the readings to take and the limits of each grade, parameters written out as values.</summary>
internal sealed partial class Limits(Pack pack, string? chassis)
{
    /// <summary>A condition as the pack writes it, with the values of its parameters.</summary>
    public string Write(Condition condition) => Write(condition.Text);

    /// <summary>Readings that a check gives for a finding or cause, and derived ones that its limits name.</summary>
    public ImmutableArray<ChartReading> ReadingsFor(Check check, Graded asked)
    {
        if (check.Gives.Contains(asked.Id))
        {
            return [];
        }

        var measured = Conditions(asked).SelectMany(pair => Dependence.MeasuredIn(pair.When, pack)).Distinct().Order()
            .Select(index => pack.Readings[index])
            .Where(reading => check.Gives.Contains(reading.Id))
            .Select(reading => new ChartReading(reading.Id, reading.Title, reading.Unit.Symbol));
        var texts = Conditions(asked).SelectMany(pair => Word().Matches(pair.When.Text).Select(match => match.Value)).ToHashSet(StringComparer.Ordinal);
        var derived = pack.Readings
            .Where(reading => reading.From is not null && texts.Contains(reading.Id))
            .Select(reading => new ChartReading(reading.Id, $"worked out from {Words.Join([.. Dependence.ReadingsIn(reading.From!).Select(of => of.Id).Distinct()])}", reading.Unit.Symbol));
        return [.. measured, .. derived];
    }

    /// <summary>What a grade means in readings, or <see langword="null"/> where the check sees it directly or the pack does not say.</summary>
    public string? Of(Check check, Graded asked, int grade)
    {
        if (check.Gives.Contains(asked.Id))
        {
            return null;
        }

        var ways = asked is Finding { Bands: { } bands } ? Segments(bands, grade) : [];
        ways = ways.Concat(asked switch
        {
            Finding finding => finding.Reads.Where(read => read.Grade == grade).Select(read => Write(read.When)),
            Cause { Precondition: { } demand } => [grade == 0 ? Write(demand.Must) : $"not ({Write(demand.Must)})"],
            _ => [],
        });
        var text = string.Join("; or ", ways);
        return text.Length == 0 ? null : text;
    }

    private static IEnumerable<(int Grade, Condition When)> Conditions(Graded asked) => asked switch
    {
        Finding finding => BandConditions.ReadsOf(finding).Select(read => (read.Grade, read.When)),
        Cause { Precondition: { } demand } => [(0, demand.Must)],
        _ => [],
    };

    /// <summary>A value on a limit takes the earlier grade of the two, in the finding's own order.</summary>
    private IEnumerable<string> Segments(Bands bands, int grade)
    {
        for (var segment = 0; segment < bands.Grades.Length; segment++)
        {
            if (bands.Grades[segment] != grade)
            {
                continue;
            }

            var text = bands.Of.Id;
            if (segment > 0)
            {
                text += (bands.Grades[segment - 1] <= grade ? " above " : " from ") + ValueOf(bands, segment - 1);
            }

            if (segment < bands.Limits.Length)
            {
                text += (segment > 0 ? "," : "") + (grade <= bands.Grades[segment + 1] ? " up to " : " below ") + ValueOf(bands, segment);
            }

            yield return bands.If is { } condition ? $"{text}, if {Write(condition)}" : text;
        }
    }

    private string ValueOf(Bands bands, int limit) => bands.Limits[limit] switch
    {
        LiteralTerm literal => Quantity.FromSi(literal.Si, bands.Of.Unit).ToString(CultureInfo.InvariantCulture),
        ParameterTerm parameter => pack.Parameters[parameter.Parameter].On(chassis).ToString(CultureInfo.InvariantCulture),
        _ => "its limit",
    };

    private string Write(string text) => Word().Replace(text, word => pack.Find<Parameter>(word.Value)?.On(chassis).ToString(CultureInfo.InvariantCulture) ?? word.Value);

    [GeneratedRegex("[a-z][a-z0-9]*(?:-[a-z0-9]+)*")]
    private static partial Regex Word();
}
