using DiagRules.Model.Calculations;

namespace DiagRules.Cli.Rendering;

/// <summary>A calculation and where it is from.</summary>
/// <param name="Library">The library.</param>
/// <param name="Description">What it says about itself.</param>
internal sealed record ListedCalculation(CalculationLibrary Library, CalculationDescription Description);

/// <summary>Picks calculations to list.</summary>
internal static class CalculationList
{
    /// <summary>Those with a text in their name, title or parameters, capitals or not, by library and name.</summary>
    public static IReadOnlyList<ListedCalculation> Matching(IEnumerable<CalculationLibrary> libraries, string text) =>
    [
        .. from library in libraries
           orderby library.Name, library.Version
           from calculation in library.Calculations
           where Texts(calculation.Description).Any(one => one.Contains(text, StringComparison.OrdinalIgnoreCase))
           select new ListedCalculation(library, calculation.Description),
    ];

    private static IEnumerable<string> Texts(CalculationDescription description) =>
        [description.Name, description.Title, .. description.Parameters.SelectMany(parameter => (string[])[parameter.Name, parameter.Meaning])];
}
