using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;

namespace DiagRules.Plugins;

/// <summary>Plugins that are loaded. Thread-safe.</summary>
/// <remarks>
/// <para>Hand <see cref="Libraries"/> to the loader of packs. A calculation runs on a thread of its plugin, one at a time; what throws, gives
/// no finite number or runs longer than <see cref="PluginOptions.TimeLimit"/> makes its reading unknown and is told in the notes of the
/// diagnosis. After the latter the whole plugin is switched off, since no thread can be stopped from outside.</para>
/// <para>Disposing it unloads the plugins. Packs and engines that still call them go on; the readings behind such calls then are
/// unknown. A calculation that never ends keeps its own plugin in memory until the process ends.</para>
/// </remarks>
/// <example>
/// <code>
/// using var plugins = PluginFolder.Load("plugins");
/// var loader = new PackLoader(new PackLoaderOptions { Calculations = plugins.Libraries });
/// </code>
/// </example>
public sealed class PluginSet : IDisposable
{
    private readonly List<LoadedPlugin> _plugins;

    internal PluginSet(List<LoadedPlugin> plugins, List<Problem> problems)
    {
        _plugins = plugins;
        Problems = [.. problems.OrderBy(problem => problem.Place)];
        Plugins = [.. plugins.Select(plugin => plugin.Info)];
        Libraries = [.. plugins.Select(plugin => plugin.Library)];
        Contexts = [.. plugins.Select(plugin => plugin.Context)];
    }

    /// <summary>The plugins, in order of name and version; several versions of one may be there.</summary>
    public IReadOnlyList<PluginInfo> Plugins { get; }

    /// <summary>Their calculation libraries, in the same order.</summary>
    public IReadOnlyList<CalculationLibrary> Libraries { get; }

    /// <summary>What is wrong with folders and with assemblies that could not be loaded (DR7004), by file; the other plugins work.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    internal IReadOnlyList<WeakReference> Contexts { get; }

    /// <summary>Unloads the plugins. Their memory is freed by one of the next garbage collections. Once is enough, more does no harm.</summary>
    public void Dispose()
    {
        lock (_plugins)
        {
            foreach (var plugin in _plugins)
            {
                plugin.Unload();
            }

            _plugins.Clear();
        }
    }
}
