using System.Text.RegularExpressions;

namespace DiagRules.Model.Calculations;

/// <summary>What would make a library ambiguous or impossible to call from a pack.</summary>
internal static partial class LibraryFaults
{
    private const int LongestName = 64;

    /// <summary>Words a condition would read as its own, and the calculations that are built in.</summary>
    private static readonly HashSet<string> TakenWords =
        ["and", "or", "not", "is", "known", "unknown", "any", "every", "worse", "better", "min", "max", "abs", "mean"];

    public static IEnumerable<string> Of(CalculationLibrary library)
    {
        if (!IsKebabCase(library.Name))
        {
            yield return $"Its name '{library.Name}' is not kebab-case.";
        }

        foreach (var group in library.Calculations.Select(calculation => calculation.Description).GroupBy(description => description.Name))
        {
            if (group.Count() > 1)
            {
                yield return $"Calculation '{group.Key}' is there {group.Count()} times.";
            }

            foreach (var fault in group.SelectMany(Of))
            {
                yield return fault;
            }
        }
    }

    private static IEnumerable<string> Of(CalculationDescription description)
    {
        if (!IsKebabCase(description.Name))
        {
            yield return $"Calculation '{description.Name}' is not kebab-case.";
        }

        if (TakenWords.Contains(description.Name))
        {
            yield return $"Calculation '{description.Name}' has a name the condition language uses itself.";
        }

        foreach (var group in description.Parameters.GroupBy(parameter => parameter.Name))
        {
            if (!IsKebabCase(group.Key))
            {
                yield return $"Parameter '{group.Key}' of '{description.Name}' is not kebab-case.";
            }

            if (group.Count() > 1)
            {
                yield return $"Parameter '{group.Key}' of '{description.Name}' is there {group.Count()} times.";
            }

            if (group.Any(parameter => parameter.Default is { } value && !double.IsFinite(value)))
            {
                yield return $"The default of parameter '{group.Key}' of '{description.Name}' is not a finite number.";
            }
        }
    }

    private static bool IsKebabCase(string name) => name.Length <= LongestName && KebabCase().IsMatch(name);

    [GeneratedRegex(@"\A[a-z][a-z0-9]*(-[a-z0-9]+)*\z", RegexOptions.CultureInvariant)]
    private static partial Regex KebabCase();
}
