using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>Checks that what is compared can be, and makes two comparisons of a chain.</summary>
internal sealed class ComparisonBinder(BindingScope scope)
{
    /// <summary>The comparison, or <see langword="null"/> when some part of it is wrong.</summary>
    public Condition? Bind(ComparisonSyntax syntax, TermBinder terms)
    {
        var bound = syntax.Terms.Select(terms.Bind).ToList();
        var links = ImmutableArray.CreateBuilder<Condition>();
        for (var i = 0; i < syntax.Comparators.Length; i++)
        {
            if (bound[i] is { } left && bound[i + 1] is { } right && Link(syntax, i, left, right) is { } link)
            {
                links.Add(link);
            }
        }

        return links.Count < syntax.Comparators.Length ? null
            : links.Count == 1 ? links[0]
            : new AllOf(links.DrainToImmutable(), scope.Text(syntax.Start, syntax.End), scope.Place(syntax.Start, syntax.End));
    }

    private Comparison? Link(ComparisonSyntax syntax, int link, Term left, Term right)
    {
        var (leftSyntax, sign, rightSyntax) = (syntax.Terms[link], syntax.Comparators[link], syntax.Terms[link + 1]);
        var operands = new Operands(scope, leftSyntax, left.Type, rightSyntax, right.Type, leftSyntax.Start, rightSyntax.End);
        if (!operands.HaveOneDimension("compare it with") || !AreBothPoints(operands))
        {
            return null;
        }

        var comparator = ComparatorOf(sign.Text);
        if (comparator is Comparator.Equal or Comparator.NotEqual && !(Counts.IsCount(left) && Counts.IsCount(right)))
        {
            ReportEquality(operands, comparator, left, right);
            return null;
        }

        return new Comparison(left, comparator, right, scope.Text(operands.Start, operands.End), scope.Place(operands.Start, operands.End));
    }

    private static bool AreBothPoints(Operands operands)
    {
        if (operands.Left.IsPoint == operands.Right.IsPoint)
        {
            return true;
        }

        var (point, difference) = operands.Left.IsPoint ? (operands.LeftText, operands.RightText) : (operands.RightText, operands.LeftText);
        operands.ReportMixedTemperatures(
            $"'{point}' is a temperature (degC) and '{difference}' is a temperature difference (K); " +
            "compare a temperature with one in degC, or the difference of two temperatures with one in K.");
        return false;
    }

    private void ReportEquality(Operands operands, Comparator comparator, Term left, Term right)
    {
        var test = scope.Text(operands.Start, operands.End);
        var (literal, other) = left is LiteralTerm l ? (l, operands.RightText) : (right as LiteralTerm, operands.LeftText);
        var band = literal is null ? Closeness(operands) : Band(literal, other);
        scope.Report(
            ProblemCatalogue.EqualityOnMeasured,
            operands.Start,
            operands.End,
            $"'{test}' compares what is measured with '{(comparator == Comparator.Equal ? "=" : "!=")}', and no measured value is ever quite the same; " +
            $"write a band such as '{(comparator == Comparator.Equal ? band : $"not ({band})")}'. Only counts ('unit: number') can be equal.");
    }

    /// <summary>A band about one twentieth of the leading digit wide, just to show the form.</summary>
    private static string Band(LiteralTerm literal, string other)
    {
        var unit = Measure.UnitOf(literal.Type);
        var value = (decimal)Math.Clamp(unit.FromSi(literal.Si), -1e12, 1e12);
        var width = value == 0 ? 0.1m : (decimal)Math.Pow(10, Math.Floor(Math.Log10((double)Math.Abs(value)))) / 20;
        return $"{Show(value - width)} <= {other} <= {Show(value + width)}";

        string Show(decimal number) => Measure.Example(literal.Type, number.ToString("0.#########", CultureInfo.InvariantCulture));
    }

    private static string Closeness(Operands operands)
    {
        var right = operands.RightSyntax is BinarySyntax ? $"({operands.RightText})" : operands.RightText;
        return $"abs({operands.LeftText} - {right}) <= {Measure.Example(operands.Left with { Unit = operands.Left.IsPoint ? "K" : operands.Left.Unit }, "0.1")}";
    }

    private static Comparator ComparatorOf(string sign) => sign switch
    {
        "<" => Comparator.Less,
        "<=" => Comparator.LessOrEqual,
        ">" => Comparator.Greater,
        ">=" => Comparator.GreaterOrEqual,
        "=" => Comparator.Equal,
        _ => Comparator.NotEqual,
    };
}
