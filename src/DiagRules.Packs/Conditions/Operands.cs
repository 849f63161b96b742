using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>Two terms that meet in an operation or comparison, and how to say that they do not fit.</summary>
internal sealed record Operands(BindingScope Scope, TermSyntax LeftSyntax, TermType Left, TermSyntax RightSyntax, TermType Right, int Start, int End)
{
    public string LeftText => Scope.Text(LeftSyntax);

    public string RightText => Scope.Text(RightSyntax);

    /// <summary>Whether both sides have the same dimension; reports it if they do not.</summary>
    /// <param name="advice">What to do instead, as half a sentence: <c>compare it with</c>.</param>
    public bool HaveOneDimension(string advice)
    {
        if (Left.Dimension == Right.Dimension)
        {
            return true;
        }

        if (Left.Dimension.IsNone || Right.Dimension.IsNone)
        {
            ReportUnitMissing();
        }
        else
        {
            ReportMismatch(advice);
        }

        return false;
    }

    /// <summary>Reports a mixture of temperatures and differences.</summary>
    public void ReportMixedTemperatures(string message) => Scope.Report(ProblemCatalogue.TemperaturesMixed, Start, End, message);

    private void ReportUnitMissing()
    {
        var leftIsBare = Left.Dimension.IsNone;
        var bare = leftIsBare ? LeftSyntax : RightSyntax;
        var quantity = leftIsBare ? RightSyntax : LeftSyntax;
        var type = leftIsBare ? Right : Left;
        var (what, example) = bare is NumberSyntax { Number.Unit: null } number
            ? ("a number without a unit", $"write the unit, such as '{Measure.Example(type, number.Number.Text)}'")
            : ("a bare number", $"a quantity such as '{Measure.Example(type)}' is expected");
        Scope.Report(
            ProblemCatalogue.UnitMissing,
            bare.Start,
            bare.End,
            $"'{Scope.Text(bare)}' is {what} and '{Scope.Text(quantity)}' is {Measure.Describe(type)}; {example}.");
    }

    private void ReportMismatch(string advice)
    {
        var hint = (Left.Dimension with { Angle = 0 }) == (Right.Dimension with { Angle = 0 })
            ? "torque is not energy, and turns are not cycles: they differ by an angle ('1 rad')"
            : $"{advice} {Measure.Want(Left)}";
        Scope.Report(
            ProblemCatalogue.UnitsDoNotMatch,
            RightSyntax.Start,
            RightSyntax.End,
            $"'{LeftText}' is {Measure.Describe(Left)} and '{RightText}' is {Measure.Describe(Right)}; {hint}.");
    }
}
