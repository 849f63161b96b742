using System.Globalization;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics.Tests;

/// <summary>Calls calculations as packs do: by name, with values and units as text.</summary>
internal static class Calling
{
    public static CalculationLibrary Library { get; } = ElectrohydraulicsLibrary.Create();

    public static ICalculation Find(string name) =>
        Library.Find(name) ?? throw new InvalidOperationException($"No calculation '{name}'.");

    /// <summary>The result in the unit the description names.</summary>
    public static double Value(string name, params (string Name, string Value)[] given)
    {
        var result = Result(name, given);
        result.Reason.ShouldBeNull($"'{name}' cannot be computed");
        return Find(name).Description.Result.FromSi(result.Value);
    }

    public static CalculationResult Result(string name, params IReadOnlyCollection<(string Name, string Value)> given)
    {
        var calculation = Find(name);
        var parameters = calculation.Description.Parameters;
        given.Select(pair => pair.Name).Except(parameters.Select(parameter => parameter.Name)).ShouldBeEmpty($"arguments '{name}' does not take");
        return calculation.Compute([.. parameters.Select(parameter => Argument(name, parameter, given))]);
    }

    public static Quantity Read(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        var number = double.Parse(space < 0 ? text : text[..space], CultureInfo.InvariantCulture);
        return new Quantity(number, space < 0 ? Unit.Number : UnitTable.Get(text[(space + 1)..]));
    }

    /// <summary>A value as packs write it, with all its digits.</summary>
    public static string Text(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:R} {unit}");

    private static double Argument(string name, CalculationParameter parameter, IReadOnlyCollection<(string Name, string Value)> given)
    {
        var text = given.SingleOrDefault(pair => pair.Name == parameter.Name).Value;
        if (text is null)
        {
            return parameter.Default ?? throw new InvalidOperationException($"'{name}' needs '{parameter.Name}'.");
        }

        var quantity = Read(text);
        quantity.Unit.Dimension.ShouldBe(parameter.Unit.Dimension, $"unit of '{parameter.Name}' of '{name}'");
        return quantity.Si;
    }
}
