using System.Text;

namespace DiagRules.Tests.Plugins;

/// <summary>A folder for plugins that a test fills with copies of the built ones, changed in some bytes where it needs another plugin.</summary>
internal sealed class PluginCopies : IDisposable
{
    public const string Sample = "GasSprings";
    public const string Awkward = "DiagRules.AwkwardPlugin";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("diagrules-plugins-");

    /// <summary>The folder.</summary>
    public string Folder => _folder.FullName.Replace('\\', '/');

    public static Change Utf8(string old, string changed) => new(Encoding.UTF8.GetBytes(old), Encoding.UTF8.GetBytes(changed));

    /// <summary>Texts of the program itself.</summary>
    public static Change Utf16(string old, string changed) => new(Encoding.Unicode.GetBytes(old), Encoding.Unicode.GetBytes(changed));

    /// <summary>Copies a plugin into a folder of its own.</summary>
    /// <returns>Path of the assembly.</returns>
    public string Add(string plugin, string folder = "plugin", params ReadOnlySpan<Change> changes)
    {
        var target = _folder.CreateSubdirectory(folder).FullName;
        foreach (var file in Directory.EnumerateFiles(Built(plugin)))
        {
            File.Copy(file, Path.Combine(target, Path.GetFileName(file)));
        }

        var assembly = Path.Combine(target, plugin + ".dll");
        var bytes = File.ReadAllBytes(assembly);
        foreach (var change in changes)
        {
            change.Make(bytes);
        }

        File.WriteAllBytes(assembly, bytes);
        return assembly.Replace('\\', '/');
    }

    /// <summary>Writes a file that is no copy of a plugin.</summary>
    public string Write(string name, byte[] bytes)
    {
        var file = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(file, bytes);
        return file.Replace('\\', '/');
    }

    public static string Built(string plugin) => Path.Combine(AppContext.BaseDirectory, "plugins", plugin);

    // On systems that lock loaded assemblies some of them stay behind until the process ends.
    public void Dispose()
    {
        try
        {
            _folder.Delete(recursive: true);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
        }
    }

    /// <summary>Bytes in place of others, as many, wherever they are.</summary>
    internal sealed record Change(byte[] Old, byte[] New)
    {
        public void Make(byte[] bytes)
        {
            New.Length.ShouldBe(Old.Length);
            var changed = 0;
            for (var rest = 0; bytes.AsSpan(rest).IndexOf(Old) is >= 0 and var at; rest += at + Old.Length)
            {
                New.CopyTo(bytes, rest + at);
                changed++;
            }

            changed.ShouldBeGreaterThan(0, "nothing to change was found");
        }
    }
}
