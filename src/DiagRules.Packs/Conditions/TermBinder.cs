using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>Looks up the words of a term and checks its units from the inside out.</summary>
internal sealed class TermBinder
{
    private readonly BindingScope _scope;
    private readonly CallBinder _calls;

    public TermBinder(BindingScope scope)
    {
        _scope = scope;
        _calls = new(scope, this);
    }

    /// <summary>The term, or <see langword="null"/> when some part of it is wrong.</summary>
    public Term? Bind(TermSyntax syntax)
    {
        if (!_scope.Count(syntax.Start, syntax.End))
        {
            return null;
        }

        var term = syntax switch
        {
            NumberSyntax number => BindNumber(number),
            NameSyntax name => BindName(name),
            BinarySyntax binary => BindBinary(binary),
            NegatedSyntax negated => BindNegated(negated),
            CallSyntax call => _calls.Bind(call),
            _ => null,
        };
        return term is null || IsSmallEnough(term, syntax) ? term : null;
    }

    private LiteralTerm BindNumber(NumberSyntax number)
    {
        var unit = number.Number.Unit ?? Unit.Number;
        return new LiteralTerm(unit.ToSi(number.Number.Value), TermType.Of(unit), PlaceOf(number));
    }

    private Term? BindName(NameSyntax name)
    {
        switch (_scope.Entry(name))
        {
            case null:
                return null;
            case Reading reading:
                return new ReadingTerm(reading, TermType.Of(reading.Unit), PlaceOf(name));
            case Parameter parameter:
                return new ParameterTerm(parameter.Index, TermType.Of(parameter.Value.Unit), PlaceOf(name));
            case Graded graded when graded is not Effect:
                _scope.Report(
                    ProblemCatalogue.GradedAsNumber,
                    name.Start,
                    name.End,
                    $"'{graded.Id}' is {EntryKinds.Name(graded)} with grades, not a number; test it with 'is', such as '{graded.Id} is {graded.Grades[^1]}'.");
                return null;
            case var other:
                _scope.Report(ProblemCatalogue.WrongSection, name.Start, name.End, WrongKind.Message(other, "readings and parameters are numbers"));
                return null;
        }
    }

    private ArithmeticTerm? BindBinary(BinarySyntax binary)
    {
        var left = Bind(binary.Left);
        var right = Bind(binary.Right);
        if (left is null || right is null)
        {
            return null;
        }

        var operands = new Operands(_scope, binary.Left, left.Type, binary.Right, right.Type, binary.Start, binary.End);
        var type = binary.Sign is '+' or '-' ? SumTyping.Of(binary.Sign, operands) : ProductTyping.Of(binary.Sign, operands);
        return type is null ? null : new ArithmeticTerm(binary.Sign, left, right, type.Value, PlaceOf(binary));
    }

    private NegatedTerm? BindNegated(NegatedSyntax negated)
    {
        var operand = Bind(negated.Operand);
        if (operand is null)
        {
            return null;
        }

        if (operand.Type.IsPoint)
        {
            _scope.Report(
                ProblemCatalogue.TemperaturesMixed,
                negated.Start,
                negated.End,
                $"'{_scope.Text(negated)}' would be the opposite of a temperature ({operand.Type.Unit}), which depends on where the scale has its zero; " +
                "take a difference of two temperatures first.");
            return null;
        }

        return new NegatedTerm(operand, operand.Type, PlaceOf(negated));
    }

    /// <summary>A short text can stand for very much: <c>b</c> from <c>a + a</c>, <c>c</c> from <c>b + b</c> and so on doubles with every step.</summary>
    private bool IsSmallEnough(Term term, TermSyntax syntax)
    {
        var limits = _scope.Limits;
        if (term.Size <= limits.Size && term.Depth <= limits.Chain)
        {
            return true;
        }

        var (what, limit, setting) = term.Size > limits.Size
            ? ("operations", limits.Size, "ConditionSize")
            : ("operations within each other", limits.Chain, "ConditionChain");
        _scope.Report(
            ProblemCatalogue.LimitExceeded,
            syntax.Start,
            syntax.End,
            $"With all that its readings derive from, '{Excerpt.Of(_scope.Text(syntax))}' has more than {limit} {what}; " +
            $"measure something in between (setting '{setting}').");
        return false;
    }

    private SourcePlace PlaceOf(TermSyntax syntax) => _scope.Place(syntax.Start, syntax.End);
}
