using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Files;

/// <summary>Packs in folders. Each test has a folder of its own.</summary>
public sealed class FolderFilesTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("diagrules-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void EveryYamlBelowTheFolder_IsRead()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("pack/work/access/covers.yaml", "access:\n  cover-off: { title: x }\n");
        Write("pack/README.md", "not a pack file");

        new PackLoader().Load(In("pack")).Require().Access.ShouldHaveSingleItem().Id.ShouldBe("cover-off");
    }

    [Fact]
    public void Problem_ShowsThePathAsTheFolderWasGiven()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("pack/work/covers.yaml", "access:\n  cover-off: { titel: x }\n");
        var given = Path.GetRelativePath(Directory.GetCurrentDirectory(), In("pack")).Replace('\\', '/');

        var place = new PackLoader().Load(given).Problems[0].Place;

        place.File.ShouldBe($"{given}/work/covers.yaml");
    }

    [Fact]
    public void FolderThatIsNotThere_ReportsDR1101()
    {
        var result = new PackLoader().Load(In("nowhere"));

        result.Pack.ShouldBeNull();
        result.Problems.ShouldHaveSingleItem().Code.ShouldBe("DR1101");
    }

    [Fact]
    public void LinkToAFileOutside_IsRefusedAndNotRead()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("outside.yaml", "access:\n  secret: { titel: x }\n");
        File.CreateSymbolicLink(In("pack/inside.yaml"), In("outside.yaml"));

        var result = new PackLoader().Load(In("pack"));

        var problem = result.Problems.ShouldHaveSingleItem();
        (problem.Code, problem.Message).ShouldBe(("DR7002", "'inside.yaml' is a link; put the file itself into the pack's folder."));
        result.Pack.ShouldBeNull();
    }

    [Fact]
    public void LinkToAFolderOutside_IsRefusedAndNotFollowed()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("outside/more.yaml", "access:\n  secret: { titel: x }\n");
        Directory.CreateSymbolicLink(In("pack/inside"), In("outside"));

        new PackLoader().Load(In("pack")).Problems.ShouldHaveSingleItem().Code.ShouldBe("DR7002");
    }

    [Fact]
    public void FileThatEndsInYml_IsNotedAndNotRead()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("pack/work.yml", "access:\n  cover-off: { title: x }\n");

        var result = new PackLoader().Load(In("pack"));

        result.Require().Access.ShouldBeEmpty();
        var note = result.Problems.ShouldHaveSingleItem();
        (note.Code, note.Message).ShouldBe(("DR1012", "'work.yml' is not read: the files of a pack end in '.yaml'."));
    }

    [Fact]
    public void DotFoldersAndBuildOutput_AreNoPartOfThePack()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("pack/pack.csproj", "<Project />");
        Write("pack/.github/workflows/ci.yaml", "on: push\n");
        Write("pack/bin/rulepacks/base/pack.yaml", PackText.Head);

        new PackLoader().Load(In("pack")).Problems.ShouldBeEmpty();
    }

    [Fact]
    public void FolderNamedBinWithoutAProject_IsPartOfThePack()
    {
        Write("pack/pack.yaml", PackText.Head);
        Write("pack/bin/access.yaml", "access:\n  cover-off: { title: x }\n");

        new PackLoader().Load(In("pack")).Require().Access.Length.ShouldBe(1);
    }

    [Fact]
    public void PathThatLeavesThePack_ReportsDR7002()
    {
        var result = new PackLoader().Load(PackFiles.FromText(("pack.yaml", PackText.Head), ("../other.yaml", "access:\n")));

        var problem = result.Problems.ShouldHaveSingleItem();
        (problem.Code, problem.Message).ShouldBe(("DR7002", "'../other.yaml' leads out of the pack; a pack reads only what lies in its folder."));
    }

    [Fact]
    public void Base_IsFoundInASearchFolder()
    {
        Write("packs/unit/pack.yaml", "format: 1\npack: unit\nversion: 1.2.0\ntitle: Unit\naccess:\n  cover-off: { title: x }\n");
        Write("packs/lift/pack.yaml", PackText.Head + "extends: [unit@1.x]\n");

        var pack = new PackLoader(new PackLoaderOptions { SearchFolders = [In("packs")] }).Load(In("packs/lift")).Require();

        pack.Access.ShouldHaveSingleItem().Place.File.ShouldBe(In("packs").Replace('\\', '/') + "/unit/pack.yaml");
    }

    private string In(string path) => Path.Combine(_root, path.Replace('/', Path.DirectorySeparatorChar));

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(path))!);
        File.WriteAllText(In(path), text);
    }
}
