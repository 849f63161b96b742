using DiagRules.Model.Problems;

namespace DiagRules.Plugins;

/// <summary>What can be wrong with plugins, in words. All of it is DR7004: a plugin that is asked for is missing.</summary>
internal static class PluginProblems
{
    public static Problem FolderUnreadable(string folder, string detail) =>
        At(folder, Directory.Exists(folder)
            ? $"The folder '{folder}' cannot be read: {detail}"
            : $"There is no folder '{folder}' to load plugins from.");

    public static Problem NoneIn(string folder) =>
        At(folder, $"'{folder}' holds no plugin; a plugin is an assembly in it, or in a folder of its own in it, that carries the attribute 'CalculationPlugin'.");

    public static Problem Unreadable(string file, string detail) =>
        At(file, $"'{Name(file)}' cannot be read as an assembly ({detail}); copy it anew, or take it out of the folder of plugins.");

    public static Problem BadVersion(string file, string name, string version) =>
        At(file, $"Plugin '{name}' says that its version is '{version}'; write three numbers, such as '1.2.0'.");

    public static Problem OtherModel(PluginInfo plugin, Version host) =>
        At(plugin.File, $"Plugin '{plugin}' was built for {HostModel.Name} {plugin.BuiltFor}, and this host has {host}; " +
            (plugin.BuiltFor > host ? "take a newer host, or a plugin built for this one." : "take a newer version of the plugin."));

    public static Problem Twice(PluginInfo plugin, PluginInfo other) =>
        At(plugin.File, $"Plugin '{plugin}' is there twice, also as '{other.File}'; take one of them out.");

    public static Problem CannotStart(PluginInfo plugin, string reason) =>
        At(plugin.File, $"Plugin '{plugin}' cannot be used, because {reason.TrimEnd('.')}.");

    private static Problem At(string file, string message) =>
        new(ProblemCatalogue.PluginMissing, message, new SourcePlace("", file.Replace('\\', '/'), 0, 0));

    private static string Name(string file) => Path.GetFileName(file);
}
