using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Calculations;

namespace DiagRules.Cli.Rendering;

/// <summary>Calculations for people.</summary>
internal static class CalculationText
{
    private const int LabelWidth = 11;

    /// <summary>A result with all it rests on.</summary>
    public static void Write(Page page, CalculationCall call, CalculationResult result)
    {
        var description = call.Calculation.Description;
        page.Text(0, Answer(description, result), Ink.Strong);
        page.Text(0, description.Title);
        page.Blank();
        page.Item(2, "Formula", LabelWidth, description.Formula);
        var label = "With";
        foreach (var argument in call.Arguments)
        {
            page.Item(2, label, LabelWidth, Argument(argument));
            label = "";
        }

        page.Item(2, "Range", LabelWidth, Sentence(description.ValidRange));
        page.Item(2, "Source", LabelWidth, Sentence(description.Source));
        page.Item(2, "Library", LabelWidth, $"{call.Library.Name} {call.Library.Version}");
        page.Blank();
        SafetyText.Write(page);
    }

    /// <summary>A list, library by library.</summary>
    public static void Write(Page page, IReadOnlyList<ListedCalculation> listed, string text)
    {
        foreach (var library in listed.GroupBy(one => one.Library))
        {
            page.Heading($"{library.Key.Name} {library.Key.Version}");
            foreach (var (_, description) in library)
            {
                page.Item(2, "-", 2, $"{description.Signature} in {description.Result}");
                page.Text(4, description.Title, Ink.Faint);
            }
        }

        page.Blank();
        page.Text(0, listed.Count == 0
            ? $"No calculation has '{text}' in its name, title or parameters."
            : $"{Words.Count(listed.Count, "calculation", "calculations")}. 'diagrules calculate NAME ARGUMENT...' computes one; what has a value behind '=' may be left out.");
    }

    private static string Answer(CalculationDescription description, CalculationResult result) => result.IsComputed
        ? Page.Together($"{description.Name} = {Quantity.FromSi(result.Value, description.Result).Rounded()}")
        : $"'{description.Name}' cannot be computed, because {result.Reason!.TrimEnd('.')}.";

    private static string Argument(CalculationArgument argument)
    {
        var (parameter, value, isLeftOut) = argument;
        var si = CoherentUnit.Of(parameter.Unit);
        var inSi = value.Unit == si ? "" : $" = {Quantity.FromSi(value.Si, si)}";
        return $"{Page.Together($"{parameter.Name} {value}{inSi}")}: {parameter.Meaning}{(isLeftOut ? " (left out)" : "")}";
    }

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";
}
