using System.CommandLine;
using DiagRules.Model.Calculations;
using DiagRules.Packs.Calculations;

namespace DiagRules.Cli.Inputs;

/// <summary>A calculation and its arguments on the command line.</summary>
internal sealed class CalculationInput
{
    private readonly Argument<string?> _name = new("NAME") { Description = "Name of the calculation", Arity = ArgumentArity.ZeroOrOne };

    private readonly Argument<string[]> _arguments = new("ARGUMENT")
    {
        Description = "Its arguments, each name=value, as in temperature=\"60 degC\"",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>Adds the arguments to a verb.</summary>
    public void AddTo(Command command)
    {
        command.Add(_name);
        command.Add(_arguments);
    }

    /// <summary>The name, or <see langword="null"/> when none is given.</summary>
    public string? Name(ParseResult parsed) => parsed.GetValue(_name);

    /// <summary>The call.</summary>
    /// <exception cref="WrongUseException">There is no such calculation, or its arguments are wrong; the message holds all faults.</exception>
    public CalculationCall Read(ParseResult parsed, IEnumerable<CalculationLibrary> libraries)
    {
        var name = Name(parsed) ?? throw new WrongUseException("'calculate' needs NAME: Name of the calculation. 'diagrules calculate --list' shows those there are.");
        var result = new CalculationCallReader(libraries).Read(name, parsed.GetValue(_arguments) ?? []);
        return result.Call ?? throw new WrongUseException(string.Join(Environment.NewLine, result.Problems.Select(problem => problem.Message)));
    }
}
