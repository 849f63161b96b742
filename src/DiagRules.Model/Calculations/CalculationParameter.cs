using DiagRules.Model.Quantities;

namespace DiagRules.Model.Calculations;

/// <summary>One parameter of a calculation. Immutable.</summary>
/// <param name="Name">Kebab-case name.</param>
/// <param name="Unit">
/// A unit of the dimension it takes; messages show it as the example. Where it is a temperature point (<c>degC</c>), so is the argument.
/// </param>
/// <param name="Meaning">What it is, in a few plain words.</param>
/// <param name="Default">Value in the coherent SI unit when a call leaves it out; <see langword="null"/> if it must be given.</param>
public sealed record CalculationParameter(string Name, Unit Unit, string Meaning, double? Default = null)
{
    internal string Signature => Default is { } value ? $"{Name}: {Unit} = {Quantity.FromSi(value, Unit)}" : $"{Name}: {Unit}";
}
