namespace DiagRules.Plugins;

/// <summary>What a plugin says about itself in its metadata. Immutable.</summary>
/// <param name="Name">Name of its calculation library, as packs write it in <c>calculations:</c>.</param>
/// <param name="Version">Version of the library.</param>
/// <param name="File">Path of the assembly, as the folder was given.</param>
/// <param name="BuiltFor">Version of DiagRules.Model it was built for.</param>
public sealed record PluginInfo(string Name, Version Version, string File, Version BuiltFor)
{
    /// <summary><c>gas-springs 1.0.0</c>.</summary>
    public override string ToString() => $"{Name} {Version}";
}
