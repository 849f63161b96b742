using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;

namespace DiagRules.Rules;

/// <summary>Writes <c>bands</c> as one condition per grade, so that they are settled and weighed like <c>read</c>.</summary>
internal static class BandConditions
{
    /// <summary>The reads of a finding, those its bands stand for included.</summary>
    public static IEnumerable<ReadGrade> ReadsOf(Finding finding) =>
        finding.Bands is null ? finding.Reads : finding.Reads.Concat(FromBands(finding.Bands));

    private static IEnumerable<ReadGrade> FromBands(Bands bands)
    {
        var segments = Enumerable.Range(0, bands.Grades.Length).GroupBy(segment => bands.Grades[segment]);
        foreach (var grade in segments.OrderBy(group => group.Key))
        {
            var inside = grade.Select(segment => Segment(bands, segment)).ToImmutableArray();
            var any = inside.Length == 1 ? inside[0] : new AnyOf(inside, string.Join(" or ", inside.Select(part => part.Text)), bands.Place);
            yield return new ReadGrade(
                grade.Key,
                bands.If is null ? any : new AllOf([any, bands.If], $"{any.Text} and ({bands.If.Text})", bands.Place));
        }
    }

    private static Condition Segment(Bands bands, int segment)
    {
        var parts = new List<Condition>(2);
        if (segment > 0)
        {
            // A value on a limit takes the earlier grade of the two, in the finding's own order.
            var belongsBelow = bands.Grades[segment - 1] <= bands.Grades[segment];
            parts.Add(Compare(bands, belongsBelow ? Comparator.Greater : Comparator.GreaterOrEqual, bands.Limits[segment - 1]));
        }

        if (segment < bands.Limits.Length)
        {
            var belongsHere = bands.Grades[segment] <= bands.Grades[segment + 1];
            parts.Add(Compare(bands, belongsHere ? Comparator.LessOrEqual : Comparator.Less, bands.Limits[segment]));
        }

        return parts.Count == 1 ? parts[0] : new AllOf([.. parts], string.Join(" and ", parts.Select(part => part.Text)), bands.Place);
    }

    private static Comparison Compare(Bands bands, Comparator comparator, Term limit)
    {
        var of = new ReadingTerm(bands.Of, TermType.Of(bands.Of.Unit), bands.Place);
        var sign = comparator switch
        {
            Comparator.Less => "<",
            Comparator.LessOrEqual => "<=",
            Comparator.Greater => ">",
            _ => ">=",
        };
        return new Comparison(of, comparator, limit, $"{bands.Of.Id} {sign} {Describe(bands.Of, limit)}", limit.Place);
    }

    private static string Describe(Reading of, Term limit) =>
        limit is LiteralTerm literal ? Quantity.FromSi(literal.Si, of.Unit).ToString(CultureInfo.InvariantCulture) : "its limit";
}
