using System.CommandLine;
using DiagRules.Model;
using DiagRules.Packs;

namespace DiagRules.Cli.Inputs;

/// <summary>The pack a verb works on: the argument that names it, and the options that say where its bases lie and for which chassis.</summary>
internal sealed class PackInput
{
    private readonly Argument<string> _pack = new("PACK") { Description = "Folder of the pack" };
    private readonly Option<string?> _chassis = new("--chassis") { HelpName = "CODE", Description = "Chassis code; else the pack's only or first one" };
    private readonly SearchInput _search = new();
    private readonly PluginsInput _plugins = new();

    /// <summary>Adds the argument and options to a verb.</summary>
    public void AddTo(Command command)
    {
        command.Add(_pack);
        command.Add(_chassis);
        _search.AddTo(command);
        _plugins.AddTo(command);
    }

    /// <summary>Loads the pack, which must be usable.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="casePath">A file of recorded cases to read in place of the pack's own, or <see langword="null"/>.</param>
    /// <exception cref="WrongUseException">There is no such folder, or the pack was refused; then the message shows the errors.</exception>
    public PackLoadResult Load(ParseResult parsed, string? casePath = null)
    {
        var path = parsed.GetRequiredValue(_pack);
        var result = PackFolder.Load(path, _search.Read(parsed), _plugins.Load(parsed), casePath);
        return result.Pack is null ? throw Refusals.Of(result.Problems, $"The pack in '{path}' was refused") : result;
    }

    /// <summary>Compiles the pack for the chassis asked for.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="otherwise">The chassis when none is asked for, or <see langword="null"/> for the pack's first.</param>
    /// <exception cref="WrongUseException">The pack has no such chassis.</exception>
    public DiagnosisEngine Compile(ParseResult parsed, Pack pack, string? otherwise = null)
    {
        var chassis = parsed.GetValue(_chassis) ?? otherwise;
        if (chassis is not null && !pack.Chassis.Contains(chassis, StringComparer.Ordinal))
        {
            var known = pack.Chassis.IsEmpty ? "it names none" : "it has " + string.Join(", ", pack.Chassis);
            throw new WrongUseException($"Pack '{pack.Id}' has no chassis '{chassis}'; {known}.");
        }

        return DiagnosisEngine.Compile(pack, new EngineOptions { Chassis = chassis });
    }
}
