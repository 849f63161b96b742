using DiagRules.Model.Conditions;

namespace DiagRules.Packs.Conditions;

/// <summary>What sums and differences measure.</summary>
internal static class SumTyping
{
    /// <summary>The type of the result, or <see langword="null"/> after reporting why there is none.</summary>
    public static TermType? Of(char sign, Operands operands)
    {
        if (!operands.HaveOneDimension(sign == '+' ? "add" : "take off"))
        {
            return null;
        }

        var (left, right) = (operands.Left, operands.Right);
        return (left.IsPoint, right.IsPoint) switch
        {
            (false, false) => Plain(left, right),
            (true, false) => left,
            (false, true) when sign == '+' => right,
            (true, true) when sign == '-' => new TermType(left.Dimension, false, "K"),
            (true, true) => Refuse(operands, "would add two temperatures, which depends on where the scale has its zero; add a difference in K, or use 'mean' for the middle of both"),
            _ => Refuse(operands, "would take a temperature off a difference; write the temperature first"),
        };
    }

    /// <summary>A bare number takes no unit away: <c>5 % + 0.1</c> is shown as a number, not in percent.</summary>
    private static TermType Plain(TermType left, TermType right) =>
        left.Dimension.IsNone && left.Unit != right.Unit ? TermType.Of(Model.Quantities.Unit.Number) : left;

    private static TermType? Refuse(Operands operands, string why)
    {
        operands.ReportMixedTemperatures($"'{operands.Scope.Text(operands.Start, operands.End)}' {why}.");
        return null;
    }
}
