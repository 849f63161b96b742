using System.CommandLine;
using DiagRules.Electrohydraulics;
using DiagRules.Model.Calculations;
using DiagRules.Plugins;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--plugins</c>: folders with calculations of others, beside those that come with the tool.</summary>
internal sealed class PluginsInput
{
    private readonly Option<string[]> _plugins = new("--plugins")
    {
        HelpName = "FOLDER",
        Description = "Where plugins with further calculations lie; their code runs with your rights (repeat it for more)",
    };

    /// <summary>Adds the option to a verb.</summary>
    public void AddTo(Command command) => command.Add(_plugins);

    /// <summary>All calculation libraries there are. Plugins stay loaded as long as the process lives.</summary>
    /// <exception cref="WrongUseException">A folder or a plugin cannot be used; a verdict without it would pass over it in silence.</exception>
    public IReadOnlyList<CalculationLibrary> Load(ParseResult parsed)
    {
        var own = ElectrohydraulicsLibrary.Create();
        var folders = parsed.GetValue(_plugins) ?? [];
        if (folders.Length == 0)
        {
            return [own];
        }

        var plugins = PluginFolder.Load(folders);
        return plugins.Problems.Count == 0
            ? [own, .. plugins.Libraries]
            : throw Refusals.Of(plugins.Problems, $"The plugins in '{string.Join("', '", folders)}' were refused");
    }
}
