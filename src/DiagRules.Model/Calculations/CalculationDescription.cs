using System.Collections.Immutable;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Calculations;

/// <summary>What a calculation is called, takes, gives, and where it comes from. Immutable.</summary>
/// <param name="Name">Kebab-case name as conditions write it.</param>
/// <param name="Title">One plain sentence.</param>
/// <param name="Parameters">Parameters in order.</param>
/// <param name="Result">Unit of the result; the value is handed over in the coherent SI unit of its dimension.</param>
/// <param name="Formula">The formula in plain text, with the parameter names.</param>
/// <param name="Source">The standard, handbook or law the formula and its constants come from.</param>
/// <param name="ValidRange">Where the formula holds, and how far it can be off.</param>
public sealed record CalculationDescription(
    string Name,
    string Title,
    ImmutableArray<CalculationParameter> Parameters,
    Unit Result,
    string Formula,
    string Source,
    string ValidRange)
{
    /// <summary>
    /// How to call it, with a unit for each parameter and the value of those that may be left out:
    /// <c>battery-charge(volts: V, temperature: degC = 25 degC)</c>.
    /// </summary>
    public string Signature => $"{Name}({string.Join(", ", Parameters.Select(parameter => parameter.Signature))})";
}
