using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using DiagRules.Model.Problems;
using DiagRules.Plugins;

namespace DiagRules.Tests.Plugins;

/// <summary>What is found in a folder of plugins, and what is said about what cannot be used.</summary>
public sealed class PluginFolderTests : IDisposable
{
    private readonly PluginCopies _copies = new();

    public void Dispose() => _copies.Dispose();

    [Fact]
    public void Inspect_TellsNameVersionAndModel_WithoutLoading()
    {
        var file = _copies.Add(PluginCopies.Sample);

        var plugin = PluginFolder.Inspect(_copies.Folder).ShouldHaveSingleItem();

        plugin.ShouldBe(new PluginInfo("gas-springs", new Version(1, 0, 0), file, HostModel.Version));
        plugin.ToString().ShouldBe("gas-springs 1.0.0");
        AppDomain.CurrentDomain.GetAssemblies().Where(assembly => !assembly.IsDynamic && assembly.Location.StartsWith(_copies.Folder, StringComparison.Ordinal)).ShouldBeEmpty();
    }

    // 400 N at 20 degC are 400 * 263.15 / 293.15 = 359.07 N at -10 degC: the pressure law, 3.4 % for each 10 K.
    [Fact]
    public void Load_SamplePlugin_Computes()
    {
        _copies.Add(PluginCopies.Sample);

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Problems.ShouldBeEmpty();
        var library = plugins.Libraries.ShouldHaveSingleItem();
        (library.Name, library.Version).ShouldBe(("gas-springs", new Version(1, 0, 0)));
        var calculation = library.Find("gas-spring-force").ShouldNotBeNull();
        calculation.Description.Signature.ShouldBe("gas-spring-force(force: N, temperature: degC, stated-at: degC = 20 degC)");
        calculation.Compute([400, 263.15, 293.15]).Value.ShouldBe(359.07, 0.01);
        calculation.Compute([-1, 263.15, 293.15]).Reason.ShouldBe("'force' is negative");
    }

    [Fact]
    public void Load_CopyOfDiagRulesModelBesideThePlugin_IsNotUsed()
    {
        var folder = Path.GetDirectoryName(_copies.Add(PluginCopies.Sample))!;
        File.Copy(typeof(Problem).Assembly.Location, Path.Combine(folder, "DiagRules.Model.dll"));

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Problems.ShouldBeEmpty();
        plugins.Libraries.ShouldHaveSingleItem().Find("gas-spring-force").ShouldNotBeNull();
    }

    [Fact]
    public void Load_LibraryThatComesWithDiagRules_IsAPluginLikeAnyOther()
    {
        _copies.Write("DiagRules.Electrohydraulics.dll", File.ReadAllBytes(typeof(Electrohydraulics.ElectrohydraulicsLibrary).Assembly.Location));

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Problems.ShouldBeEmpty();
        plugins.Libraries.ShouldHaveSingleItem().Calculations.Length.ShouldBe(Electrohydraulics.ElectrohydraulicsLibrary.Create().Calculations.Length);
        plugins.Libraries[0].Find("locked-rotor-current")!.Compute([12, 0.06]).Value.ShouldBe(200, 1e-9);
    }

    [Fact]
    public void Load_TwoVersions_RunSideBySide()
    {
        _copies.Add(PluginCopies.Sample, "old");
        _copies.Add(PluginCopies.Sample, "new", PluginCopies.Utf8("1.0.0", "2.0.0"), PluginCopies.Utf16("is negative", "is below 0!"));

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Problems.ShouldBeEmpty();
        plugins.Plugins.Select(plugin => plugin.ToString()).ShouldBe(["gas-springs 1.0.0", "gas-springs 2.0.0"]);
        plugins.Libraries.Select(library => library.Find("gas-spring-force")!.Compute([-1, 300, 300]).Reason)
            .ShouldBe(["'force' is negative", "'force' is below 0!"]);
    }

    [Fact]
    public void Load_SameVersionTwice_TakesOneAndSaysSo()
    {
        var first = _copies.Add(PluginCopies.Sample, "a");
        var second = _copies.Add(PluginCopies.Sample, "b");

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Plugins.ShouldHaveSingleItem().File.ShouldBe(first);
        Only(plugins).ShouldBe($"{second}: error DR7004: Plugin 'gas-springs 1.0.0' is there twice, also as '{first}'; take one of them out.");
    }

    [Theory]
    [InlineData("this is no assembly")]
    [InlineData("")]
    [InlineData("MZ and then nothing")]
    public void Load_BrokenAssembly_IsAProblemAndTheOthersWork(string content)
    {
        _copies.Add(PluginCopies.Sample);
        var broken = _copies.Write("broken.dll", System.Text.Encoding.UTF8.GetBytes(content));

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Plugins.ShouldHaveSingleItem();
        var problem = Only(plugins);
        problem.ShouldStartWith($"{broken}: error DR7004: 'broken.dll' cannot be read as an assembly (");
        problem.ShouldEndWith("); copy it anew, or take it out of the folder of plugins.");
    }

    /// <summary>Any byte of the metadata may be wrong; that is a problem or no plugin, never an exception.</summary>
    [Fact]
    public void Load_DamagedPlugin_NeverThrows()
    {
        var whole = File.ReadAllBytes(Path.Combine(PluginCopies.Built(PluginCopies.Sample), PluginCopies.Sample + ".dll"));
        var random = new Random(20260301);
        for (var i = 0; i < 40; i++)
        {
            var damaged = whole.ToArray();
            for (var j = 0; j < 20; j++)
            {
                damaged[random.Next(damaged.Length)] = (byte)random.Next(256);
            }

            _copies.Write("damaged.dll", i % 2 == 0 ? damaged : whole[..random.Next(whole.Length)]);
            Should.NotThrow(() => PluginFolder.Inspect(_copies.Folder));
        }
    }

    [Fact]
    public void Load_NativeLibraryBesideThePlugin_IsLeftAlone()
    {
        _copies.Add(PluginCopies.Sample);
        _copies.Write("native.dll", NativeImage());

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Problems.ShouldBeEmpty();
    }

    [Fact]
    public void Load_FolderWithoutPlugin_SaysWhatAPluginIs()
    {
        using var plugins = PluginFolder.Load(_copies.Folder);

        Only(plugins).ShouldBe(
            $"{_copies.Folder}: error DR7004: '{_copies.Folder}' holds no plugin; a plugin is an assembly in it, or in a folder of its own in it, " +
            "that carries the attribute 'CalculationPlugin'.");
    }

    [Fact]
    public void Load_NoSuchFolder_IsAProblem()
    {
        using var plugins = PluginFolder.Load("no-such-folder");

        Only(plugins).ShouldBe("no-such-folder: error DR7004: There is no folder 'no-such-folder' to load plugins from.");
    }

    [Fact]
    public void Load_VersionOfTwoParts_IsAProblem()
    {
        var file = _copies.Add(PluginCopies.Sample, "plugin", PluginCopies.Utf8("1.0.0", "1.0.x"));

        using var plugins = PluginFolder.Load(_copies.Folder);

        Only(plugins).ShouldBe($"{file}: error DR7004: Plugin 'gas-springs' says that its version is '1.0.x'; write three numbers, such as '1.2.0'.");
    }

    [Fact]
    public void Load_BuiltForANewerModel_IsRefused()
    {
        var file = _copies.Add(PluginCopies.Sample);
        File.WriteAllBytes(file, BuiltFor(File.ReadAllBytes(file), major: 99));

        using var plugins = PluginFolder.Load(_copies.Folder);

        plugins.Plugins.ShouldBeEmpty();
        var model = HostModel.Version;
        Only(plugins).ShouldBe(
            $"{file}: error DR7004: Plugin 'gas-springs 1.0.0' was built for DiagRules.Model 99.{model.Minor}.{model.Build}, and this host has {model}; " +
            "take a newer host, or a plugin built for this one.");
    }

    [Theory]
    [InlineData("1.2.0", "1.2.0", true)]
    [InlineData("1.1.5", "1.2.0", true)]
    [InlineData("1.2.1", "1.2.0", false)]
    [InlineData("1.9.0", "2.0.0", false)]
    [InlineData("0.3.1", "0.3.2", true)]
    [InlineData("0.2.9", "0.3.0", false)]
    public void Fits_NotNewerAndNoIncompatibleChangeBetween(string builtFor, string host, bool fits) =>
        HostModel.Fits(new Version(builtFor), new Version(host)).ShouldBe(fits);

    [Fact]
    public void Load_SomethingNeededDoesNotLieBesideIt_NamesIt()
    {
        // Without the key of the base libraries, System.Runtime is a stranger that would have to lie beside the plugin.
        byte[] token = [0xb0, 0x3f, 0x5f, 0x7f, 0x11, 0xd5, 0x0a, 0x3a];
        var file = _copies.Add(PluginCopies.Sample, "plugin", new PluginCopies.Change(token, [1, 2, 3, 4, 5, 6, 7, 8]));

        using var plugins = PluginFolder.Load(_copies.Folder);

        Only(plugins).ShouldBe(
            $"{file}: error DR7004: Plugin 'gas-springs 1.0.0' cannot be used, because it needs 'System.Runtime 10.0.0.0', which does not lie beside it.");
    }

    [Theory]
    [InlineData("FailingCalculations", "it threw NotSupportedException: Not on this machine")]
    [InlineData("WithoutCalculations", "'DiagRules.AwkwardPlugin.WithoutCalculations' makes no calculation")]
    [InlineData("AnotherCalculations", "'DiagRules.AwkwardPlugin.AnotherCalculations', which its attribute names, is no class with a constructor without parameters that implements 'ICalculationSource'")]
    [InlineData("EndlessCalculations", "its start ran longer than 2 s")]
    public void Load_StartGoesWrong_SaysWhy(string source, string reason)
    {
        var change = PluginCopies.Utf8("DiagRules.AwkwardPlugin.AwkwardCalculations", $"DiagRules.AwkwardPlugin.{source}");
        var file = _copies.Add(PluginCopies.Awkward, "plugin", change);

        using var plugins = PluginFolder.Load([_copies.Folder], new PluginOptions { TimeLimit = TimeSpan.FromSeconds(source[0] == 'E' ? 2 : 60) });

        plugins.Libraries.ShouldBeEmpty();
        Only(plugins).ShouldBe($"{file}: error DR7004: Plugin 'awkward 1.0.0' cannot be used, because {reason}.");
    }

    [Fact]
    public void Load_NameThatNoPackCanWrite_SaysWhy()
    {
        var file = _copies.Add(PluginCopies.Awkward, "plugin", PluginCopies.Utf8("awkward", "Awk-war"));

        using var plugins = PluginFolder.Load(_copies.Folder);

        Only(plugins).ShouldBe(
            $"{file}: error DR7004: Plugin 'Awk-war 1.0.0' cannot be used, because Library 'Awk-war' cannot be used. Its name 'Awk-war' is not kebab-case.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(86_401)]
    public void Load_TimeLimitOutOfRange_IsMisuse(int seconds) =>
        Should.Throw<ArgumentOutOfRangeException>(() => PluginFolder.Load([_copies.Folder], new PluginOptions { TimeLimit = TimeSpan.FromSeconds(seconds) }))
            .ParamName.ShouldBe("TimeLimit");

    private static string Only(PluginSet plugins) => plugins.Problems.ShouldHaveSingleItem().ToString();

    /// <summary>Writes another major version into the reference to DiagRules.Model (ECMA-335, II.22.5: the row begins with it).</summary>
    private static byte[] BuiltFor(byte[] assembly, byte major)
    {
        using var image = new PEReader(new MemoryStream(assembly));
        var metadata = image.GetMetadataReader();
        var row = metadata.AssemblyReferences.Single(handle => metadata.GetString(metadata.GetAssemblyReference(handle).Name) == "DiagRules.Model");
        var offset = image.PEHeaders.MetadataStartOffset + metadata.GetTableMetadataOffset(TableIndex.AssemblyRef)
            + ((MetadataTokens.GetRowNumber(row) - 1) * metadata.GetTableRowSize(TableIndex.AssemblyRef));
        assembly[offset] = major;
        return assembly;
    }

    /// <summary>The plugin without its metadata directory, which makes it an image of machine code.</summary>
    private static byte[] NativeImage()
    {
        var bytes = File.ReadAllBytes(Path.Combine(PluginCopies.Built(PluginCopies.Sample), PluginCopies.Sample + ".dll"));
        using var image = new PEReader(new MemoryStream(bytes));
        var isPlus = image.PEHeaders.PEHeader!.Magic == PEMagic.PE32Plus;
        const int CliHeader = 14;
        var directory = image.PEHeaders.PEHeaderStartOffset + (isPlus ? 112 : 96) + (CliHeader * 8);
        bytes.AsSpan(directory, 8).Clear();
        return bytes;
    }
}
