using System.Globalization;
using DiagRules.Model.Conditions;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>
/// Prints a condition in prefix form, so that a test sees how it was read: <c>(or (is pump-fuse blown) (&lt; fuse-feed 11V))</c>. Numbers
/// are in SI, units as the type of the term has them.
/// </summary>
internal sealed class Shape(TestMachine machine)
{
    public string Of(Condition condition) => condition switch
    {
        AllOf all => $"(and {Join(all.Parts.Select(Of))})",
        AnyOf any => $"(or {Join(any.Parts.Select(Of))})",
        Negation not => $"(not {Of(not.Part)})",
        GradeTest test => $"(is {machine.Node(test.Node).Id} {GradesOf(test)})",
        KnownGrade known => $"({Word(known.WantsKnown)} {machine.Node(known.Node).Id})",
        KnownReading known => $"({Word(known.WantsKnown)} {Reading(known.Reading)})",
        Comparison comparison => $"({Sign(comparison.Comparator)} {Of(comparison.Left)} {Of(comparison.Right)})",
        Constant constant => constant.Value.ToString(),
        _ => throw new ArgumentException(condition.GetType().Name, nameof(condition)),
    };

    public string Of(Term term) => term switch
    {
        LiteralTerm literal => literal.Si.ToString("R", CultureInfo.InvariantCulture) + (literal.Type.Unit == "number" ? "" : literal.Type.Unit),
        ReadingTerm reading => reading.Reading.Id,
        ParameterTerm parameter => machine.Ids.Select(machine.Find).OfType<Model.Parameter>().Single(entry => entry.Index == parameter.Parameter).Id,
        NegatedTerm negated => $"(- {Of(negated.Operand)})",
        ArithmeticTerm arithmetic => $"({arithmetic.Operator} {Of(arithmetic.Left)} {Of(arithmetic.Right)})",
        CallTerm call => $"({call.Calculation.Description.Name} {Join(call.Arguments.Select(Of))})",
        _ => throw new ArgumentException(term.GetType().Name, nameof(term)),
    };

    private static string Join(IEnumerable<string> parts) => string.Join(' ', parts);

    private static string Word(bool wantsKnown) => wantsKnown ? "known" : "unknown";

    private string Reading(int index) => machine.Ids.Select(machine.Find).OfType<Model.Reading>().Single(reading => reading.Index == index).Id;

    private string GradesOf(GradeTest test)
    {
        var grades = machine.Node(test.Node).Grades;
        return string.Join('|', grades.Where((_, grade) => test.Grades.Contains(grade)));
    }

    private static string Sign(Comparator comparator) => comparator switch
    {
        Comparator.Less => "<",
        Comparator.LessOrEqual => "<=",
        Comparator.Greater => ">",
        Comparator.GreaterOrEqual => ">=",
        Comparator.Equal => "=",
        _ => "!=",
    };
}
