using System.Collections.Immutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Conditions;

/// <summary>A call of a calculation, built in or from a library.</summary>
/// <param name="Calculation">The calculation.</param>
/// <param name="Arguments">One term per parameter, in the calculation's order, defaults filled in.</param>
/// <param name="Type">Dimension of the result.</param>
/// <param name="Place">Where it is written.</param>
public sealed record CallTerm(ICalculation Calculation, ImmutableArray<Term> Arguments, TermType Type, SourcePlace Place) : Term(Type, Place)
{
    // Central differences lose half the digits of a double; a step of its cube root balances truncation against rounding.
    private const double RelativeStep = 6e-6;

    /// <inheritdoc/>
    public override int Size { get; } = 1 + Arguments.Sum(argument => argument.Size);

    /// <inheritdoc/>
    public override int Depth { get; } = 1 + Arguments.Select(argument => argument.Depth).DefaultIfEmpty().Max();

    /// <inheritdoc/>
    public override Slope Evaluate(IFacts facts, int seed = -1)
    {
        Span<double> values = stackalloc double[Arguments.Length];
        Span<double> rates = stackalloc double[Arguments.Length];
        if (!AreKnown(facts, seed, values, rates))
        {
            return Slope.Unknown;
        }

        var value = Contained(values);
        return double.IsFinite(value) ? new(value, seed < 0 ? 0 : Rate(values, rates, value)) : Slope.Unknown;
    }

    /// <summary>
    /// Asks again why the call comes to nothing; <see langword="null"/> when it has a value, or when some argument is itself not known.
    /// </summary>
    /// <param name="facts">What is known.</param>
    public CalculationFailure? FailureWith(IFacts facts)
    {
        Span<double> values = stackalloc double[Arguments.Length];
        Span<double> rates = stackalloc double[Arguments.Length];
        if (!AreKnown(facts, seed: -1, values, rates))
        {
            return null;
        }

        var result = Calculation.ComputeContained(values);
        return result.IsComputed ? null : new CalculationFailure(Calculation.Description, Written(values), result);
    }

    internal override void CollectBases(SortedSet<int> bases)
    {
        foreach (var argument in Arguments)
        {
            argument.CollectBases(bases);
        }
    }

    private bool AreKnown(IFacts facts, int seed, Span<double> values, Span<double> rates)
    {
        for (var i = 0; i < values.Length; i++)
        {
            var argument = Arguments[i].Evaluate(facts, seed);
            if (!double.IsFinite(argument.Value))
            {
                return false;
            }

            values[i] = argument.Value;
            rates[i] = argument.Rate;
        }

        return true;
    }

    private ImmutableArray<Quantity> Written(ReadOnlySpan<double> values)
    {
        var written = ImmutableArray.CreateBuilder<Quantity>(values.Length);
        for (var i = 0; i < values.Length; i++)
        {
            written.Add(Quantity.FromSi(values[i], Calculation.Description.Parameters[i].Unit));
        }

        return written.MoveToImmutable();
    }

    private double Rate(Span<double> values, ReadOnlySpan<double> rates, double value)
    {
        double total = 0;
        for (var i = 0; i < values.Length; i++)
        {
            if (rates[i] == 0)
            {
                continue;
            }

            var at = values[i];
            var step = RelativeStep * Math.Max(Math.Abs(at), 1e-6);
            values[i] = at + step;
            var above = Contained(values);
            values[i] = at - step;
            var below = Contained(values);
            values[i] = at;

            total += SlopeBetween((value - below) / step, (above - value) / step) * rates[i];
        }

        return total;
    }

    /// <summary>
    /// The slope of a curve from those on its two sides: their mean (a central difference), the one that computes at the edge of the
    /// valid range, and the steeper where the curve turns round (|x| at 0), since their mean would say that an inaccurate x does no harm.
    /// </summary>
    private static double SlopeBetween(double before, double behind) => (double.IsFinite(before), double.IsFinite(behind)) switch
    {
        (true, true) => before * behind < 0 ? Math.MaxMagnitude(before, behind) : (before + behind) / 2,
        (true, false) => before,
        (false, true) => behind,
        _ => 0,
    };

    private double Contained(ReadOnlySpan<double> values) => Calculation.ComputeContained(values).Value;
}
