using System.Globalization;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Conditions;

/// <summary>Says what may have been meant by a word that names no entry.</summary>
internal static class UnknownNames
{
    public static void Report(BindingScope scope, NameSyntax name, string id)
    {
        if (Difference(scope, id) is var (left, right))
        {
            scope.Report(
                ProblemCatalogue.MinusWithoutSpaces,
                name.Start,
                name.End,
                $"'{id}' is read as one id, and there is none; write '{left} - {right}' with spaces for the difference.");
            return;
        }

        scope.Report(
            ProblemCatalogue.NoSuchId,
            name.Start,
            name.End,
            $"No reading, finding, cause or parameter '{id}'.{scope.DidYouMean(id, scope.Symbols.Ids)}");
    }

    /// <summary>The two numbers whose difference was written without spaces, if both are there.</summary>
    private static (string Left, string Right)? Difference(BindingScope scope, string id)
    {
        for (var at = id.IndexOf('-', StringComparison.Ordinal); at > 0; at = id.IndexOf('-', at + 1))
        {
            var left = id[..at];
            var right = id[(at + 1)..];
            if (scope.Symbols.Find(left) is Model.Reading or Model.Parameter && IsNumber(scope, right))
            {
                return (left, right);
            }
        }

        return null;
    }

    private static bool IsNumber(BindingScope scope, string text) =>
        scope.Symbols.Find(text) is Model.Reading or Model.Parameter || double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
