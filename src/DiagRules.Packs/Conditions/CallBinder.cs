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
            if (!scope.Symbols.LacksLibrary)
            {
                ReportUnknown(call.Name);
            }

            return null;
        }

        return new ArgumentBinder(scope, calculation).Bind(call, values);
    }

    private CallTerm? BindBuiltIn(CallSyntax call, List<Term?> values)
    {
        if (!IsCalledRightly(call) || values.Contains(null) || !AreOfOneType(call, values))
        {
            return null;
        }

        var type = values[0]!.Type;
        if (type.IsPoint && call.Name.Text == BuiltInCalculation.Abs)
        {
            scope.Report(
                ProblemCatalogue.TemperaturesMixed,
                call.Start,
                call.End,
                $"'{scope.Text(call)}' would take the sign off a temperature, which depends on where the scale has its zero; " +
                "take a difference of two temperatures first.");
            return null;
        }

        var calculation = BuiltInCalculation.For(call.Name.Text, values.Count, type);
        return new CallTerm(calculation, [.. values!], type, scope.Place(call.Start, call.End));
    }

    private bool IsCalledRightly(CallSyntax call)
    {
        var name = call.Name.Text;
        var count = call.Arguments.Length;
        var signature = BuiltInCalculation.Signature(name);
        if (call.Arguments.FirstOrDefault(argument => argument.Name is not null).Name is { } named)
        {
            Report(named, $"'{name}' takes its values without names: {signature}.");
            return false;
        }

        if (count == 0 || (name == BuiltInCalculation.Abs && count > 1))
        {
            var (given, taken) = (count == 0 ? "no value" : $"{count} values", name == BuiltInCalculation.Abs ? "one value" : "one value or more");
            Report(call.Name, $"'{name}' is given {given}; it takes {taken}: {signature}.");
            return false;
        }

        return true;
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

    private void ReportUnknown(NameSyntax name)
    {
        var known = BuiltInCalculation.Names
            .Concat(scope.Symbols.Calculations.SelectMany(library => library.Calculations.Select(calculation => calculation.Description.Name)));
        var near = scope.DidYouMean(name.Text, known);
        var message = scope.Symbols.Find(name.Text) is { } entry
            ? $"'{name.Text}' is {EntryKinds.Name(entry)}, not a calculation; write '*' where a product is meant."
            : $"No calculation '{name.Text}'.{near}"
                + (near.Length > 0 ? "" : scope.Symbols.Calculations.Count == 0
                    ? " Built in are 'min', 'max', 'abs' and 'mean'; others come from a library named under 'calculations' in 'pack.yaml'."
                    : $" The pack has those of {Wording.And(scope.Symbols.Calculations.Select(library => library.Name))}, and 'min', 'max', 'abs' and 'mean'.");
        Report(name, message);
    }

    private void Report(TermSyntax at, string message) => scope.Report(ProblemCatalogue.BadCalculation, at.Start, at.End, message);
}
