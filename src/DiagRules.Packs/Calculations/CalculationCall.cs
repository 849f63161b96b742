using System.Collections.Immutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Packs.Calculations;

/// <summary>A calculation with all its arguments, ready to compute. Immutable and thread-safe.</summary>
/// <param name="Library">The library it is from.</param>
/// <param name="Calculation">The calculation.</param>
/// <param name="Arguments">One per parameter, in the order of the description, those left out filled in.</param>
public sealed record CalculationCall(CalculationLibrary Library, ICalculation Calculation, ImmutableArray<CalculationArgument> Arguments)
{
    /// <summary>Computes it. Whatever goes wrong inside the calculation comes back as the reason why there is no result.</summary>
    public CalculationResult Compute() => Calculation.ComputeContained([.. Arguments.Select(argument => argument.Value.Si)]);
}

/// <summary>One argument as it was understood. Immutable.</summary>
/// <param name="Parameter">What it is for.</param>
/// <param name="Value">The value in the unit somebody wrote; a value left out in the parameter's unit.</param>
/// <param name="IsLeftOut">Whether nobody wrote it, so that the parameter's default stands.</param>
public sealed record CalculationArgument(CalculationParameter Parameter, Quantity Value, bool IsLeftOut);
