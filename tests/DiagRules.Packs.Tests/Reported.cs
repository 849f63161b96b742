using DiagRules.Model.Problems;
using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests;

/// <summary>What a pack must report.</summary>
internal static class Reported
{
    /// <summary>
    /// The pack reports exactly this problem, at its mark. Beside an error there may be warnings, which say what the piece of a pack in
    /// a test lacks; beside a warning there is no error.
    /// </summary>
    public static void ShouldReport(this PackText pack, string code, string message)
    {
        var problems = pack.Load().Problems;
        var errors = problems.Where(problem => problem.Severity == Severity.Error).ToList();
        var reported = errors.Count > 0 ? errors : problems.Where(problem => problem.Code == code).ToList();

        var all = string.Join('\n', problems);
        var problem = reported.ShouldHaveSingleItem(all);
        problem.Code.ShouldBe(code, all);
        problem.Message.ShouldBe(message);
        problem.Accepted.ShouldBeNull();
        if (pack.Mark is { } mark)
        {
            (problem.Place.File, problem.Place.Line, problem.Place.Column, problem.Place.Length).ShouldBe((mark.File, mark.Line, mark.Column, mark.Length));
        }
    }

    /// <summary>The pack loads, all its cases too, and does not report this code.</summary>
    public static void ShouldNotReport(this PackText pack, string code)
    {
        var result = pack.Load();

        result.Problems.Where(problem => problem.Severity == Severity.Error || problem.Code == code).Select(problem => problem.ToString()).ShouldBeEmpty();
        result.Pack.ShouldNotBeNull();
    }
}
