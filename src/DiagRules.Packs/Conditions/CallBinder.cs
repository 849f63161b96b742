using System.Collections.Immutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>Looks up a calculation and puts its arguments in order.</summary>
internal sealed class CallBinder(BindingScope scope, TermBinder terms)
{
    /// <summary>The call, or <see langword="null"/> when some part of it is wrong.</summary>
    public CallTerm? Bind(CallSyntax call)
    {
        var values = call.Arguments.Select(argument => terms.Bind(argument.Value)).ToList();
        if (BuiltInCalculation.Names.Contains(call.Name.Text))
        {
            return BindBuiltIn(call, values);
        }

        var calculation = scope.Symbols.Calculations.Select(library => library.Find(call.Name.Text)).FirstOrDefault(found => found is not null);
        if (calculation is null)
        {
            ReportUnknown(call.Name);
            return null;
        }

        return BindArguments(call, values, calculation);
    }

    private CallTerm? BindBuiltIn(CallSyntax call, List<Term?> values)
    {
        var name = call.Name.Text;
        var signature = BuiltInCalculation.Signature(name);
        if (call.Arguments.FirstOrDefault(argument => argument.Name is not null).Name is { } named)
        {
            Report(named, $"'{name}' takes its values without names: {signature}.");
            return null;
        }

        if (values.Count == 0 || (name == BuiltInCalculation.Abs && values.Count > 1))
        {
            Report(call.Name, $"'{name}' is given {Numbered(values.Count)}; it takes {(name == BuiltInCalculation.Abs ? "one value" : "one value or more")}: {signature}.");
            return null;
        }

        if (values.Contains(null) || !AreOfOneType(call, values))
        {
            return null;
        }

        var type = values[0]!.Type;
        if (type.IsPoint && name == BuiltInCalculation.Abs)
        {
            scope.Report(
                ProblemCatalogue.TemperaturesMixed,
                call.Start,
                call.End,
                $"'{scope.Text(call)}' would take the sign off a temperature, which depends on where the scale has its zero; take a difference of two temperatures first.");
            return null;
        }

        var calculation = BuiltInCalculation.For(name, values.Count, type);
        return new CallTerm(calculation, [.. values!], type, scope.Place(call.Start, call.End));
    }

    private bool AreOfOneType(CallSyntax call, List<Term?> values)
    {
        var first = values[0]!.Type;
        for (var i = 1; i < values.Count; i++)
        {
            var next = values[i]!.Type;
            var operands = new Operands(scope, call.Arguments[0].Value, first, call.Arguments[i].Value, next, call.Start, call.End);
            if (!operands.HaveOneDimension("give another"))
            {
                return false;
            }

            if (first.IsPoint != next.IsPoint)
            {
                operands.ReportMixedTemperatures($"'{scope.Text(call)}' takes temperatures (degC) or temperature differences (K), not both.");
                return false;
            }
        }

        return true;
    }

    private CallTerm? BindArguments(CallSyntax call, List<Term?> values, ICalculation calculation)
    {
        var parameters = calculation.Description.Parameters;
        var given = new Term?[parameters.Length];
        var isFilled = new bool[parameters.Length];
        var isRight = true;
        for (var i = 0; i < values.Count; i++)
        {
            var parameter = ParameterOf(call, i, parameters, isFilled, calculation);
            if (parameter < 0)
            {
                isRight = false;
                continue;
            }

            isFilled[parameter] = true;
            given[parameter] = values[i] is { } value && Fits(call.Arguments[i].Value, value, parameters[parameter], calculation) ? value : null;
            isRight &= given[parameter] is not null;
        }

        // What is missing is told only where nothing else is wrong: a misspelt name would be told twice.
        for (var i = 0; i < parameters.Length && isRight; i++)
        {
            isRight &= isFilled[i] || FillDefault(call, calculation, parameters[i], ref given[i]);
        }

        return isRight
            ? new CallTerm(calculation, [.. given!], TermType.Of(calculation.Description.Result), scope.Place(call.Start, call.End))
            : null;
    }

    /// <summary>Which parameter an argument is for, or -1 after reporting that there is none.</summary>
    private int ParameterOf(CallSyntax call, int argument, ImmutableArray<CalculationParameter> parameters, bool[] isFilled, ICalculation calculation)
    {
        var (name, value) = (call.Arguments[argument].Name, call.Arguments[argument].Value);
        if (name is null)
        {
            if (argument > 0 && call.Arguments[argument - 1].Name is not null)
            {
                Report(value, $"'{scope.Text(value)}' stands without a name behind a named argument; name it too: {Signature(calculation)}.");
                return -1;
            }

            if (argument >= parameters.Length)
            {
                Report(value, $"'{scope.Text(value)}' is one argument too many: {Signature(calculation)}.");
                return -1;
            }

            return argument;
        }

        var index = parameters.Select(parameter => parameter.Name).ToList().IndexOf(name.Text);
        if (index < 0)
        {
            var near = Spelling.DidYouMean(name.Text, parameters.Select(parameter => parameter.Name));
            Report(name, $"'{calculation.Description.Name}' takes no '{name.Text}': {Signature(calculation)}.{near}");
            return -1;
        }

        if (isFilled[index])
        {
            Report(name, $"'{name.Text}' is given twice: {Signature(calculation)}.");
            return -1;
        }

        return index;
    }

    private bool Fits(TermSyntax syntax, Term value, CalculationParameter parameter, ICalculation calculation)
    {
        var expected = TermType.Of(parameter.Unit);
        if (value.Type.Dimension == expected.Dimension && value.Type.IsPoint == expected.IsPoint)
        {
            return true;
        }

        var text = scope.Text(syntax);
        if (value.Type.Dimension == expected.Dimension)
        {
            scope.Report(
                ProblemCatalogue.TemperaturesMixed,
                syntax.Start,
                syntax.End,
                $"'{text}' is {Measure.Describe(value.Type)}, and '{parameter.Name}' of '{calculation.Description.Name}' takes {Measure.Describe(expected)}: {Signature(calculation)}.");
        }
        else if (value.Type.Dimension.IsNone)
        {
            scope.Report(
                ProblemCatalogue.UnitMissing,
                syntax.Start,
                syntax.End,
                $"'{text}' is a number without a unit, and '{parameter.Name}' of '{calculation.Description.Name}' takes {Measure.Describe(expected)}, such as '{Measure.Example(expected)}'.");
        }
        else
        {
            Report(syntax, $"'{text}' is {Measure.Describe(value.Type)}, and '{parameter.Name}' takes {Measure.Describe(expected)}: {Signature(calculation)}.");
        }

        return false;
    }

    private bool FillDefault(CallSyntax call, ICalculation calculation, CalculationParameter parameter, ref Term? given)
    {
        if (parameter.Default is { } value)
        {
            given = new LiteralTerm(value, TermType.Of(parameter.Unit), scope.Place(call.Start, call.End));
            return true;
        }

        Report(call.Name, $"'{calculation.Description.Name}' is not given its '{parameter.Name}' ({parameter.Meaning}): {Signature(calculation)}.");
        return false;
    }

    private void ReportUnknown(NameSyntax name)
    {
        var known = BuiltInCalculation.Names
            .Concat(scope.Symbols.Calculations.SelectMany(library => library.Calculations.Select(calculation => calculation.Description.Name)));
        var near = Spelling.DidYouMean(name.Text, known);
        var message = scope.Symbols.Find(name.Text) is { } entry
            ? $"'{name.Text}' is {EntryKinds.Name(entry)}, not a calculation; write '*' where a product is meant."
            : $"There is no calculation '{name.Text}'.{near}"
                + (near.Length > 0 ? "" : scope.Symbols.Calculations.Count == 0
                    ? " Built in are 'min', 'max', 'abs' and 'mean'; others come from a library named under 'calculations' in 'pack.yaml'."
                    : $" The pack has those of {Wording.And(scope.Symbols.Calculations.Select(library => library.Name))}, and 'min', 'max', 'abs' and 'mean'.");
        Report(name, message);
    }

    /// <summary><c>locked-rotor-current(supply: V, resistance: ohm)</c>, in square brackets what may be left out.</summary>
    private static string Signature(ICalculation calculation)
    {
        var parameters = calculation.Description.Parameters.Select(parameter => parameter.Default is null
            ? $"{parameter.Name}: {parameter.Unit}"
            : $"[{parameter.Name}: {parameter.Unit}]");
        return $"{calculation.Description.Name}({string.Join(", ", parameters)})";
    }

    private static string Numbered(int count) => count == 0 ? "no value" : $"{count} values";

    private void Report(TermSyntax at, string message) => scope.Report(ProblemCatalogue.BadCalculation, at.Start, at.End, message);
}
