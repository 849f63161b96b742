using DiagRules.Model.Problems;
using DiagRules.TestSupport;

namespace DiagRules.Conventions.Tests;

/// <summary>Catalogue, pages and samples of problem codes agree.</summary>
public sealed class ProblemPages
{
    private static readonly (string Range, string Title)[] Ranges =
    [
        ("DR10", "Files and YAML"), ("DR11", "The pack and layering"), ("DR20", "Keys, ids and references"),
        ("DR30", "Conditions, rules, calculations"), ("DR31", "Numbers and units"), ("DR40", "Causes and weights"),
        ("DR50", "Checks, repairs, safety"), ("DR60", "Recorded cases and replay"), ("DR70", "Limits, trust, host"),
    ];

    private const string Hint = $"if the new text is right, run the tests once with {ProblemSamples.WriteAnew}=1";

    public static TheoryData<string> Codes => [.. ProblemCatalogue.All.Select(descriptor => descriptor.Code)];

    [Fact]
    public void Every_code_has_a_page_and_every_page_a_code() =>
        Directory.EnumerateFiles(RepositoryFolder.At("docs", "problems"), "DR*.md").Select(file => Path.GetFileNameWithoutExtension(file))
            .ShouldBe(ProblemCatalogue.All.Select(descriptor => descriptor.Code), ignoreOrder: true);

    [Fact]
    public void Every_code_that_is_raised_has_samples_and_every_sample_a_code() =>
        ProblemSamples.Codes.ShouldBe(ProblemCatalogue.All.Select(descriptor => descriptor.Code).Except(ProblemSamples.Without));

    [Fact]
    public void Every_sample_says_what_is_printed() =>
        ProblemSamples.Codes.Where(code => !ProblemSamples.Expected(code).Contains($" {code}: ", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void What_is_said_of_codes_is_said_of_codes_there_are() =>
        ProblemSamples.RaisedByPlaying.Keys.Concat(ProblemSamples.Without).Except(ProblemCatalogue.All.Select(descriptor => descriptor.Code)).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_page_shows_the_samples_and_what_they_print(string code)
    {
        var page = Read(ProblemPage.File(code));
        var right = ProblemPage.Of(ProblemCatalogue.All.Single(descriptor => descriptor.Code == code), page);

        Write(ProblemPage.File(code), right);
        page.ShouldBe(right, Hint);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_page_has_the_same_headings_as_the_others_and_words_under_each(string code)
    {
        var parts = ProblemPage.Parts(Read(ProblemPage.File(code)));

        parts.Keys.ShouldBe(ProblemPage.Headings);
        parts.Where(part => part.Value.Trim().Length < 20).Select(part => part.Key).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_page_says_when_nothing_raises_its_code_yet(string code) =>
        Read(ProblemPage.File(code)).Contains("**Nothing reports this code yet:**", StringComparison.Ordinal).ShouldBe(ProblemSamples.NotRaisedYet.ContainsKey(code));

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_page_says_how_a_warning_is_accepted_and_that_an_error_is_not(string code)
    {
        var accepting = ProblemPage.Parts(Read(ProblemPage.File(code)))[ProblemPage.Accepting];
        var isError = ProblemCatalogue.All.Single(descriptor => descriptor.Code == code).Severity == Severity.Error;

        accepting.ShouldContain(ProblemSamples.Without.Contains(code) ? "accept" : isError ? "cannot be accepted" : $"`accepts: {{ {code}: \"");
    }

    [Fact]
    public void The_index_lists_all_codes()
    {
        var file = RepositoryFolder.At("docs", "problems", "README.md");
        var right = Index();

        Write(file, right);
        Read(file).ShouldBe(right, Hint);
    }

    [Fact]
    public void Every_code_belongs_to_a_range() =>
        ProblemCatalogue.All.Where(descriptor => !Ranges.Any(range => descriptor.Code.StartsWith(range.Range, StringComparison.Ordinal))).ShouldBeEmpty();

    private static string Index()
    {
        const string Head = """
            # Problems

            What `diagrules validate` and `diagrules replay` say about a pack, by code. Each page says what the problem means, shows the smallest pack that raises
            it and how it is mended, and when it may be accepted. The samples lie in `tests/problems`.

            **error**: the pack, or the recorded case, is refused. **warning**: the pack loads, but look at it; `accepts: { CODE: "reason" }` in the entry, or in
            `pack.yaml` for the whole pack, accepts it. **note**: advice. Codes are never used again for something else.


            """;
        return Head.ReplaceLineEndings("\n").TrimEnd('\n') + "\n" + string.Concat(Ranges.Select(Section));
    }

    private static string Section((string Range, string Title) range)
    {
        var codes = ProblemCatalogue.All.Where(descriptor => descriptor.Code.StartsWith(range.Range, StringComparison.Ordinal));
        var lines = codes.Select(descriptor =>
        {
            var yet = ProblemSamples.NotRaisedYet.ContainsKey(descriptor.Code) ? " (not raised yet)" : "";
            return $"| [{descriptor.Code}]({descriptor.Code}.md) | {descriptor.Severity.ToString().ToLowerInvariant()} | {descriptor.Title.Replace('\'', '`')}{yet} |\n";
        });
        return $"\n## {range.Range}xx {range.Title}\n\n| code | severity | problem |\n|---|---|---|\n{string.Concat(lines)}";
    }

    private static string Read(string file) => File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : "";

    private static void Write(string file, string text)
    {
        if (ProblemSamples.IsWriting)
        {
            File.WriteAllText(file, text);
        }
    }
}
