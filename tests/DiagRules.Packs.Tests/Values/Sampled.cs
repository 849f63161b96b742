using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Values;

/// <summary>Reads a marked sample with one of the value readers.</summary>
internal static class Sampled
{
    /// <summary>The value of a text about which nothing may be said.</summary>
    public static T Sound<T>(string text, Func<PlacedText, ProblemSink, T> read)
    {
        var problems = new ProblemSink();
        var value = read(Marked.Parse(text).Placed, problems);
        problems.InOrder().ShouldBeEmpty();
        return value;
    }

    /// <summary>Asserts that a text is refused with one problem at the marked place.</summary>
    public static void ShouldFail<T>(string marked, Func<PlacedText, ProblemSink, T> read, string code, string message)
    {
        var problems = new ProblemSink();
        var sample = Marked.Parse(marked);
        ((object?)read(sample.Placed, problems)).ShouldBeNull();
        var problem = problems.InOrder().ShouldHaveSingleItem();
        problem.Code.ShouldBe(code);
        problem.Message.ShouldBe(message);
        problem.Place.ShouldBe(sample.Place);
    }

    /// <summary>The code of the one problem of a text.</summary>
    public static string CodeOf<T>(string text, Func<PlacedText, ProblemSink, T> read)
    {
        var problems = new ProblemSink();
        ((object?)read(Marked.Parse(text).Placed, problems)).ShouldBeNull();
        return problems.InOrder().ShouldHaveSingleItem().Code;
    }
}
