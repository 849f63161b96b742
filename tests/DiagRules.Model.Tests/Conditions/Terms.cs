using DiagRules.Model.Calculations;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>Makers of terms and conditions whose text and place do not matter.</summary>
internal static class Terms
{
    private static readonly TermType Bare = TermType.Of(Unit.Number);

    public static Reading Measured(int index) => new() { Id = $"r{index}", Index = index, Title = "", Unit = Unit.Number };

    public static Reading Derived(int index, Term from) => new() { Id = $"r{index}", Index = index, Title = "", Unit = Unit.Number, From = from };

    public static ReadingTerm Of(Reading reading) => new(reading, Bare, default);

    public static ReadingTerm Of(int reading) => Of(Measured(reading));

    public static LiteralTerm Number(double value) => new(value, Bare, default);

    public static ParameterTerm Parameter(int index) => new(index, Bare, default);

    public static ArithmeticTerm Do(Term left, char sign, Term right) => new(sign, left, right, Bare, default);

    public static NegatedTerm Negate(Term operand) => new(operand, Bare, default);

    public static CallTerm Call(Func<double[], double> function, params Term[] arguments) =>
        new(new Function(function, arguments.Length), [.. arguments], Bare, default);

    public static Comparison Compare(Term left, Comparator comparator, Term right) => new(left, comparator, right, "", default);

    public static Condition Always(Truth truth) => new Constant(truth, "", default);

    public static Negation Not(Condition part) => new(part, "", default);

    public static AllOf And(params Condition[] parts) => new([.. parts], "", default);

    public static AnyOf Or(params Condition[] parts) => new([.. parts], "", default);

    public static GradeTest Is(int node, GradeSet grades) => new(node, grades, "", default);

    private sealed class Function(Func<double[], double> function, int count) : ICalculation
    {
        public CalculationDescription Description { get; } = new(
            "function",
            "",
            [.. Enumerable.Range(0, count).Select(i => new CalculationParameter($"x{i}", Unit.Number, ""))],
            Unit.Number,
            "",
            "",
            "");

        public CalculationResult Compute(ReadOnlySpan<double> arguments) => function(arguments.ToArray());
    }
}
