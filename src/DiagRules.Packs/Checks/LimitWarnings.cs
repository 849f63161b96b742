using System.Globalization;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>Limits that a meter cannot tell apart.</summary>
internal sealed class LimitWarnings(CheckScope scope)
{
    public void Run()
    {
        foreach (var (declared, finding) in scope.Of<Finding>(Section.Findings))
        {
            var limits = Limits(finding).GroupBy(limit => limit.Reading);
            foreach (var ofReading in limits)
            {
                Check(declared, ofReading.Key, [.. ofReading.DistinctBy(limit => limit.Value).OrderBy(limit => limit.Value)]);
            }
        }
    }

    /// <summary>The limits of one finding on readings by themselves, parameters at their value for the first chassis.</summary>
    private IEnumerable<Limit> Limits(Finding finding)
    {
        if (finding.Bands is { } bands)
        {
            foreach (var limit in bands.Limits)
            {
                yield return new Limit(bands.Of, Value(limit), limit.Place);
            }
        }

        foreach (var comparison in finding.Reads.SelectMany(read => ConditionUse.Comparisons(read.When)))
        {
            if (comparison is { Left: ReadingTerm left } && IsConstant(comparison.Right))
            {
                yield return new Limit(left.Reading, Value(comparison.Right), comparison.Right.Place);
            }
            else if (comparison is { Right: ReadingTerm right } && IsConstant(comparison.Left))
            {
                yield return new Limit(right.Reading, Value(comparison.Left), comparison.Left.Place);
            }
        }
    }

    private bool IsConstant(Term term) => double.IsFinite(Value(term));

    private double Value(Term term) => term.Evaluate(new ParameterFacts(scope.Draft, scope.Draft.Chassis.IsEmpty ? null : scope.Draft.Chassis[0])).Value;

    private void Check(Declared declared, Reading reading, List<Limit> limits)
    {
        if (reading.Accuracy is not { } accuracy)
        {
            return;
        }

        for (var i = 0; i < limits.Count; i++)
        {
            var (_, value, place) = limits[i];
            var width = Comparison.CoverageFactor * accuracy.StandardUncertainty(value);
            var neighbour = i > 0 && value - limits[i - 1].Value < width ? limits[i - 1].Value
                : !reading.Unit.IsPoint && Math.Abs(value) < width ? 0
                : (double?)null;
            if (neighbour is { } near)
            {
                var to = near == 0 ? "zero" : $"'{Quantity.FromSi(near, reading.Unit)}'";
                var uncertain = Quantity.FromSi(TwoDigits(width), reading.Unit.IsPoint ? Unit.Number : reading.Unit);
                scope.Warn(
                    ProblemCatalogue.LimitTooFine,
                    place,
                    $"'{Quantity.FromSi(value, reading.Unit)}' is nearer to {to} than '{reading.Id}' can be measured (within {uncertain} "
                    + "there); answers near it stay unknown. Take a better meter, or a wider limit.",
                    declared);
            }
        }
    }

    /// <summary>Nobody states an uncertainty more finely (JCGM 100:2008, 7.2.6).</summary>
    private static double TwoDigits(double value) =>
        double.Parse(value.ToString("E1", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private readonly record struct Limit(Reading Reading, double Value, SourcePlace Place);
}
