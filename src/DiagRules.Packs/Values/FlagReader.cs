using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Reads flags: <c>yes</c> or <c>no</c>.</summary>
internal static class FlagReader
{
    /// <summary>The flag, or <see langword="null"/> after reporting.</summary>
    public static bool? Read(PlacedText text, string key, ProblemSink problems)
    {
        switch (text.Value)
        {
            case "yes":
                return true;
            case "no":
                return false;
            case var value when ReservedWords.IsYamlConstant(value):
                Report(text, ProblemCatalogue.TrueFalseOrNull,
                    $"'{key}' is '{value}', which other tools read in their own way; " +
                    "write 'yes' or 'no'.",
                    problems);
                return null;
            case var value:
                Report(text, ProblemCatalogue.WrongKindOfValue, $"'{key}' is '{Excerpt.Of(value)}'; it takes 'yes' or 'no', in small letters.", problems);
                return null;
        }
    }

    private static void Report(PlacedText text, ProblemDescriptor descriptor, string message, ProblemSink problems) =>
        problems.Add(descriptor, text.At(0, text.Value.Length), message);
}
