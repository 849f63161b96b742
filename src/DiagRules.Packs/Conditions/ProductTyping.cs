using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>What products and quotients measure.</summary>
internal static class ProductTyping
{
    // Nothing in physics that a workshop meets comes near; beyond it the exponents would overflow their byte.
    private const int HighestPower = 20;

    /// <summary>The type of the result, or <see langword="null"/> after reporting why there is none.</summary>
    public static TermType? Of(char sign, Operands operands)
    {
        var (left, right) = (operands.Left, operands.Right);
        if (left.IsPoint || right.IsPoint)
        {
            var (verb, point) = (sign == '*' ? "multiply" : "divide", left.IsPoint ? operands.LeftText : operands.RightText);
            operands.ReportMixedTemperatures(
                $"'{operands.Scope.Text(operands.Start, operands.End)}' would {verb} with the temperature '{point}', which depends on where the scale has its zero; " +
                "take a difference of two temperatures first.");
            return null;
        }

        var dimension = sign == '*' ? left.Dimension * right.Dimension : left.Dimension / right.Dimension;
        if (IsBeyondAnyUnit(dimension))
        {
            operands.Scope.Report(
                ProblemCatalogue.UnitsDoNotMatch,
                operands.Start,
                operands.End,
                $"'{operands.LeftText}' is {Measure.Describe(left)} and '{operands.RightText}' is {Measure.Describe(right)}; " +
                $"their {(sign == '*' ? "product" : "quotient")} has a power above {HighestPower}, which no quantity has.");
            return null;
        }

        return new TermType(dimension, false, Measure.Combine(left.Unit, sign, right.Unit, dimension));
    }

    private static bool IsBeyondAnyUnit(Dimension dimension) =>
        Math.Abs((int)dimension.Length) > HighestPower || Math.Abs((int)dimension.Mass) > HighestPower || Math.Abs((int)dimension.Time) > HighestPower
        || Math.Abs((int)dimension.Current) > HighestPower || Math.Abs((int)dimension.Temperature) > HighestPower || Math.Abs((int)dimension.Angle) > HighestPower;
}
