using System.Reflection;
using System.Runtime.Loader;

namespace DiagRules.Plugins;

/// <summary>Where one plugin's assemblies live: its own and what lies beside it, DiagRules.Model and the .NET base libraries from the host, nothing else.</summary>
internal sealed class PluginContext(string file) : AssemblyLoadContext(Path.GetFileNameWithoutExtension(file), isCollectible: true)
{
    // Public key tokens of the .NET base libraries (System.*, netstandard, mscorlib). Libraries of other tokens must lie beside the plugin:
    // were they taken from the host, an update of the host would change the plugin.
    private static readonly HashSet<string> BaseLibraries = ["b03f5f7f11d50a3a", "b77a5c561934e089", "cc7b13ffcd2ddd51", "7cec85d7bea7798e"];

    private readonly AssemblyDependencyResolver _resolver = new(file);

    protected override Assembly? Load(AssemblyName assemblyName)
    {
        if (assemblyName.Name == HostModel.Name)
        {
            return HostModel.Assembly;
        }

        if (_resolver.ResolveAssemblyToPath(assemblyName) is { } path)
        {
            return LoadFromAssemblyPath(path);
        }

        return IsBaseLibrary(assemblyName)
            ? null
            : throw new PluginFaultException($"it needs '{assemblyName.Name} {assemblyName.Version}', which does not lie beside it");
    }

    protected override nint LoadUnmanagedDll(string unmanagedDllName) =>
        _resolver.ResolveUnmanagedDllToPath(unmanagedDllName) is { } path ? LoadUnmanagedDllFromPath(path) : 0;

    private static bool IsBaseLibrary(AssemblyName name) =>
        name.GetPublicKeyToken() is { } token && BaseLibraries.Contains(Convert.ToHexStringLower(token));
}
