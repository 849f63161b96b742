using System.Collections.Immutable;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Calculations;

/// <summary>A call that had all its arguments and came to no result. Immutable.</summary>
/// <param name="Calculation">The calculation.</param>
/// <param name="Arguments">What it was given, in the units and the order of its parameters.</param>
/// <param name="Result">The reason, and whether the calculation itself is at fault.</param>
public sealed record CalculationFailure(CalculationDescription Calculation, ImmutableArray<Quantity> Arguments, CalculationResult Result)
{
    /// <summary>The arguments with their names, to four digits: <c>supply 12 V, resistance 60 mohm</c>.</summary>
    public string Given =>
        string.Join(", ", Arguments.Select((argument, position) => $"{Calculation.Parameters[position].Name} {argument.Rounded()}"));
}
