using System.Collections.Immutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>Puts the arguments of one call in the order of its calculation: by position first, then by name, then what may be left out.</summary>
internal sealed class ArgumentBinder(BindingScope scope, ICalculation calculation)
{
    private string Name => calculation.Description.Name;

    private ImmutableArray<CalculationParameter> Parameters => calculation.Description.Parameters;

    /// <summary><c>locked-rotor-current(supply: V, resistance: ohm)</c>, in square brackets what may be left out.</summary>
    private string Signature
    {
        get
        {
            var parameters = Parameters.Select(parameter => parameter.Default is null
                ? $"{parameter.Name}: {parameter.Unit}"
                : $"[{parameter.Name}: {parameter.Unit}]");
            return $"{Name}({string.Join(", ", parameters)})";
        }
    }

    /// <summary>The call, or <see langword="null"/> when an argument is wrong, missing, unknown or given twice.</summary>
    public CallTerm? Bind(CallSyntax call, IReadOnlyList<Term?> values)
    {
        var given = new Term?[Parameters.Length];
        var isFilled = new bool[Parameters.Length];
        var isRight = true;
        for (var i = 0; i < values.Count; i++)
        {
            var parameter = ParameterOf(call, i, isFilled);
            if (parameter < 0)
            {
                isRight = false;
                continue;
            }

            isFilled[parameter] = true;
            given[parameter] = values[i] is { } value && Fits(call.Arguments[i].Value, value, Parameters[parameter]) ? value : null;
            isRight &= given[parameter] is not null;
        }

        // What is missing is told only where nothing else is wrong: a misspelt name would be told twice.
        for (var i = 0; i < Parameters.Length && isRight; i++)
        {
            isRight &= isFilled[i] || FillDefault(call, Parameters[i], ref given[i]);
        }

        return isRight
            ? new CallTerm(calculation, [.. given!], TermType.Of(calculation.Description.Result), scope.Place(call.Start, call.End))
            : null;
    }

    /// <summary>Which parameter an argument is for, or -1 after reporting that there is none.</summary>
    private int ParameterOf(CallSyntax call, int argument, bool[] isFilled) => call.Arguments[argument].Name is { } name
        ? ByName(name, isFilled)
        : ByPosition(call.Arguments[argument].Value, argument, isBehindName: argument > 0 && call.Arguments[argument - 1].Name is not null);

    private int ByPosition(TermSyntax value, int argument, bool isBehindName)
    {
        if (!isBehindName && argument < Parameters.Length)
        {
            return argument;
        }

        var why = isBehindName ? "stands without a name behind a named argument; name it too" : "is one argument too many";
        Report(value, $"'{scope.Text(value)}' {why}: {Signature}.");
        return -1;
    }

    private int ByName(NameSyntax name, bool[] isFilled)
    {
        for (var i = 0; i < Parameters.Length; i++)
        {
            if (Parameters[i].Name != name.Text)
            {
                continue;
            }

            if (!isFilled[i])
            {
                return i;
            }

            Report(name, $"'{name.Text}' is given twice: {Signature}.");
            return -1;
        }

        var near = scope.DidYouMean(name.Text, Parameters.Select(parameter => parameter.Name));
        Report(name, $"'{Name}' takes no '{name.Text}': {Signature}.{near}");
        return -1;
    }

    private bool Fits(TermSyntax syntax, Term value, CalculationParameter parameter)
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
                $"'{text}' is {Measure.Describe(value.Type)}, and '{parameter.Name}' of '{Name}' takes {Measure.Describe(expected)}: {Signature}.");
        }
        else if (value.Type.Dimension.IsNone)
        {
            scope.Report(
                ProblemCatalogue.UnitMissing,
                syntax.Start,
                syntax.End,
                $"'{text}' is a number without a unit, and '{parameter.Name}' of '{Name}' takes {Measure.Describe(expected)}, such as '{Measure.Example(expected)}'.");
        }
        else
        {
            Report(syntax, $"'{text}' is {Measure.Describe(value.Type)}, and '{parameter.Name}' takes {Measure.Describe(expected)}: {Signature}.");
        }

        return false;
    }

    private bool FillDefault(CallSyntax call, CalculationParameter parameter, ref Term? given)
    {
        if (parameter.Default is { } value)
        {
            given = new LiteralTerm(value, TermType.Of(parameter.Unit), scope.Place(call.Start, call.End));
            return true;
        }

        Report(call.Name, $"'{Name}' is not given its '{parameter.Name}' ({parameter.Meaning}): {Signature}.");
        return false;
    }

    private void Report(TermSyntax at, string message) => scope.Report(ProblemCatalogue.BadCalculation, at.Start, at.End, message);
}
