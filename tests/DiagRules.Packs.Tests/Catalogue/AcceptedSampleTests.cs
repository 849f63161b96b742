using DiagRules.Model.Problems;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Catalogue;

/// <summary>Every warning and note can be accepted for the whole pack.</summary>
public sealed class AcceptedSampleTests
{
    public static TheoryData<string> Warnings =>
        [.. ProblemSamples.Codes.Except(ProblemSamples.RaisedByPlaying.Keys)
            .Where(code => ProblemCatalogue.All.Single(descriptor => descriptor.Code == code).Severity != Severity.Error)];

    [Theory]
    [MemberData(nameof(Warnings))]
    public void Warning_AcceptedInPackYaml_HasItsReason(string code)
    {
        using var copy = new SampleCopy(code);
        File.AppendAllText(Path.Combine(copy.Pack, "pack.yaml"), $"\naccepts: {{ {code}: \"for a reason\" }}\n");

        var result = new PackLoader(new PackLoaderOptions { SearchFolders = [copy.Root] }).Load(copy.Pack);

        result.Problems.ShouldNotBeEmpty();
        result.Problems.ShouldAllBe(problem => problem.Code == code && problem.Accepted == "for a reason");
    }

    /// <summary>A sample that may be changed.</summary>
    private sealed class SampleCopy : IDisposable
    {
        private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("diagrules-sample-");

        public SampleCopy(string code)
        {
            var from = ProblemSamples.Folder(code, isBad: true);
            foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
            {
                var to = Path.Combine(Root, Path.GetRelativePath(from, file));
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.Copy(file, to);
            }

            var pack = Path.GetRelativePath(from, ProblemSamples.PackFolder(code, isBad: true));
            Pack = Path.GetFullPath(Path.Combine(Root, pack));
        }

        public string Root => _folder.FullName;

        public string Pack { get; }

        public void Dispose() => _folder.Delete(recursive: true);
    }
}
