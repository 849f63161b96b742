using System.CommandLine;
using DiagRules.Model;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--complaint</c>: how the job begins.</summary>
internal sealed class ComplaintInput
{
    private readonly Option<string?> _complaint = new("--complaint") { HelpName = "ID", Description = "What the customer complains of" };

    /// <summary>Adds the option to a verb.</summary>
    public void AddTo(Command command) => command.Add(_complaint);

    /// <summary>Id of the complaint, or <see langword="null"/>.</summary>
    /// <exception cref="WrongUseException">The pack has no such complaint on this chassis.</exception>
    public string? Read(ParseResult parsed, DiagnosisEngine engine)
    {
        if (parsed.GetValue(_complaint) is not { } id)
        {
            return null;
        }

        var pack = engine.Pack;
        var known = pack.Complaints.Where(complaint => complaint.IsOn(engine.Chassis)).Select(complaint => complaint.Id).ToList();
        return known.Contains(id, StringComparer.Ordinal)
            ? id
            : throw new WrongUseException($"Pack '{pack.Id}' has no complaint '{id}'.{Spelling.Hint(id, known)} Complaints are {string.Join(", ", known)}.");
    }
}
