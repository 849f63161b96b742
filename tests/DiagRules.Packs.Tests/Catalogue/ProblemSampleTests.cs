using DiagRules.Electrohydraulics;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Catalogue;

/// <summary>Every code that the text of a pack raises: the smallest pack that raises it and nothing else, and the nearest that raises nothing.</summary>
public sealed class ProblemSampleTests
{
    public static TheoryData<string> Codes => [.. ProblemSamples.Codes.Except(ProblemSamples.RaisedByPlaying.Keys)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void BadSample_PrintsWhatItSays(string code)
    {
        var printed = ProblemSamples.AsSeenFromItsFolder(code, isBad: true, Load(code, isBad: true).Problems.Where(problem => problem.Accepted is null));

        ProblemSamples.Write(code, printed);
        printed.ShouldBe(ProblemSamples.Expected(code), $"if the new text is right, run the tests once with {ProblemSamples.WriteAnew}=1");
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void BadSample_RaisesItsCodeAndNoOther(string code) =>
        Load(code, isBad: true).Problems.Where(problem => problem.Accepted is null).Select(problem => problem.Code).Distinct().ShouldBe([code]);

    [Theory]
    [MemberData(nameof(Codes))]
    public void GoodSample_RaisesNothing(string code)
    {
        var result = Load(code, isBad: false);

        result.Problems.Where(problem => problem.Accepted is null).Select(problem => problem.ToString()).ShouldBeEmpty();
        result.Pack.ShouldNotBeNull();
    }

    private static PackLoadResult Load(string code, bool isBad) => new PackLoader(new PackLoaderOptions
    {
        Calculations = [ElectrohydraulicsLibrary.Create()],
        SearchFolders = [ProblemSamples.Folder(code, isBad)],
    }).Load(ProblemSamples.PackFolder(code, isBad));
}
