using DiagRules.Model.Problems;
using DiagRules.Packs;
using DiagRules.Replay;
using DiagRules.TestSupport;

namespace DiagRules.Tests.Replay;

/// <summary>Samples of the codes about recorded cases, which have to be played.</summary>
public sealed class CaseSampleTests
{
    private static readonly string[] OfReplay = [ProblemCatalogue.ExpectationNotMet.Code, ProblemCatalogue.AcceptanceNotReached.Code];

    public static TheoryData<string> Played => [.. ProblemSamples.RaisedByPlaying.Keys.Order(StringComparer.Ordinal)];

    public static TheoryData<string> AboutCases => [.. ProblemSamples.Codes.Where(code => code.StartsWith("DR60", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Played))]
    public void BadSample_PrintsWhatItSays(string code)
    {
        var printed = ProblemSamples.AsSeenFromItsFolder(code, isBad: true, Problems(code, isBad: true));

        ProblemSamples.Write(code, printed);
        printed.ShouldBe(ProblemSamples.Expected(code), $"if the new text is right, run the tests once with {ProblemSamples.WriteAnew}=1");
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void BadSample_RaisesItsCodeAndNoOther(string code) =>
        Problems(code, isBad: true).Select(problem => problem.Code).Distinct().ShouldBe([code]);

    [Theory]
    [MemberData(nameof(AboutCases))]
    public void GoodSample_RaisesNothingWhenItsCasesArePlayed(string code) =>
        Problems(code, isBad: false).Select(problem => problem.ToString()).ShouldBeEmpty();

    private static List<Problem> Problems(string code, bool isBad)
    {
        var loaded = new PackLoader().Load(ProblemSamples.PackFolder(code, isBad));
        var pack = loaded.Require();
        var played = OfReplay.Contains(code) ? PackReplay.Play(pack).Problems : CaseChecks.Run(pack);
        return [.. loaded.Problems.Concat(played).Where(problem => problem.Accepted is null)];
    }
}
