using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Electrohydraulics;

/// <summary>
/// What all calculations of this library share: the limits of each input are checked before the formula runs, and a result
/// that is not finite becomes a reason. The formulas themselves need no guards but those of their own physics.
/// </summary>
internal abstract class Calculation : ICalculation
{
    private readonly Input[] _inputs;

    protected Calculation(string name, string title, Input[] takes, string gives, string formula, string source, string range)
    {
        _inputs = takes;
        Description = new(name, title, [.. takes.Select(input => input.Parameter)], UnitTable.Get(gives), formula, source, range);
    }

    public CalculationDescription Description { get; }

    public CalculationResult Compute(ReadOnlySpan<double> arguments)
    {
        if (arguments.Length != _inputs.Length)
        {
            return CalculationResult.Because($"it takes {_inputs.Length} values and was given {arguments.Length}");
        }

        for (var i = 0; i < _inputs.Length; i++)
        {
            if (_inputs[i].Refuse(arguments[i]) is { } reason)
            {
                return CalculationResult.Because(reason);
            }
        }

        var result = Solve(arguments);
        return !result.IsComputed || double.IsFinite(result.Value)
            ? result
            : CalculationResult.Because("the values are too large or too small to compute with");
    }

    /// <summary>The formula, for inputs within their limits; in SI, in the order of the description.</summary>
    protected abstract CalculationResult Solve(ReadOnlySpan<double> given);

    protected static CalculationResult Because(string reason) => CalculationResult.Because(reason);
}
