using DiagRules.Model.Problems;

namespace DiagRules.Plugins;

/// <summary>Finds and loads plugins: assemblies with calculations that packs may call. Thread-safe.</summary>
/// <remarks>
/// <para>A folder may hold plugins itself, or in folders of their own, one level down: <c>plugins/gas-springs/GasSprings.dll</c>, with what
/// the plugin needs beside it. Assemblies without a <see cref="Model.Calculations.CalculationPluginAttribute"/> are taken for something
/// that a plugin needs.</para>
/// <para>A plugin runs in this process with all its rights. Its own load context keeps versions apart; it is no sandbox. Load only what
/// you would install.</para>
/// </remarks>
public static class PluginFolder
{
    /// <summary>Says which plugins lie in folders, from their metadata alone; nothing is loaded and no code of theirs runs.</summary>
    /// <returns>The plugins, in order of name, version and file. What cannot be read is left out; <see cref="Load(IEnumerable{string}, PluginOptions?)"/> says why.</returns>
    public static IReadOnlyList<PluginInfo> Inspect(params IEnumerable<string> folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        return [.. InOrder(Candidates(folders, []))];
    }

    /// <summary>Loads the plugins of folders, each in a context of its own that shares nothing but DiagRules.Model with the host.</summary>
    /// <param name="folders">The folders.</param>
    /// <param name="options">Options; the defaults when <see langword="null"/>.</param>
    /// <returns>The plugins, and what is wrong with those that could not be loaded (DR7004). Dispose it to unload them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time limit is not above zero, or more than a day.</exception>
    public static PluginSet Load(IEnumerable<string> folders, PluginOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(folders);
        options ??= new PluginOptions();
        options.ThrowIfOutOfRange();
        var problems = new List<Problem>();
        var plugins = new List<LoadedPlugin>();
        foreach (var info in InOrder(Candidates(folders, problems)))
        {
            if (Refusal(info, plugins) is { } refusal)
            {
                problems.Add(refusal);
            }
            else if (PluginActivator.Activate(info, options.TimeLimit, problems) is { } plugin)
            {
                plugins.Add(plugin);
            }
        }

        return new PluginSet(plugins, problems);
    }

    /// <summary>Loads the plugins of one folder with the default options.</summary>
    /// <param name="folder">The folder.</param>
    /// <returns>The plugins, and what is wrong with those that could not be loaded (DR7004). Dispose it to unload them.</returns>
    public static PluginSet Load(string folder) => Load([folder]);

    private static IEnumerable<PluginInfo> InOrder(IEnumerable<PluginInfo> plugins) => plugins
        .OrderBy(plugin => plugin.Name, StringComparer.Ordinal)
        .ThenBy(plugin => plugin.Version)
        .ThenBy(plugin => plugin.File, StringComparer.Ordinal);

    private static List<PluginInfo> Candidates(IEnumerable<string> folders, List<Problem> problems)
    {
        var found = new List<PluginInfo>();
        foreach (var folder in folders)
        {
            var (plugins, faults) = (found.Count, problems.Count);
            foreach (var file in AssembliesIn(folder, problems))
            {
                if (PluginMetadata.Read(file, problems) is { } plugin)
                {
                    found.Add(plugin);
                }
            }

            if (found.Count == plugins && problems.Count == faults)
            {
                problems.Add(PluginProblems.NoneIn(folder));
            }
        }

        return found;
    }

    private static List<string> AssembliesIn(string folder, List<Problem> problems)
    {
        try
        {
            return [.. Directory.EnumerateDirectories(folder).Prepend(folder).SelectMany(AssembliesDirectlyIn).Order(StringComparer.Ordinal)];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException)
        {
            problems.Add(PluginProblems.FolderUnreadable(folder, exception.Message));
            return [];
        }
    }

    private static IEnumerable<string> AssembliesDirectlyIn(string folder) =>
        Directory.EnumerateFiles(folder, "*.dll").Select(file => file.Replace('\\', '/'));

    private static Problem? Refusal(PluginInfo plugin, List<LoadedPlugin> loaded)
    {
        var host = HostModel.Version;
        if (!HostModel.Fits(plugin.BuiltFor))
        {
            return PluginProblems.OtherModel(plugin, host);
        }

        return loaded.Find(other => (other.Info.Name, other.Info.Version) == (plugin.Name, plugin.Version)) is { } twin
            ? PluginProblems.Twice(plugin, twin.Info)
            : null;
    }
}
