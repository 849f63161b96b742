using CsCheck;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

public sealed class IdReaderTests
{
    private const string Rule = "small letters, digits and single dashes, a letter first, at most 64 characters";

    [Theory]
    [InlineData("a")]
    [InlineData("pump-fuse")]
    [InlineData("ram-2-wet")]
    [InlineData("v12")]
    [InlineData("yes")]
    [InlineData("over-range")]
    public void Ids_are_kebab_case(string text) => Sampled.Sound(text, Reader()).ShouldBe(text);

    [Theory]
    [InlineData("Pump Fuse", "pump-fuse")]
    [InlineData("pump_fuse", "pump-fuse")]
    [InlineData("pumpFuse", "pump-fuse")]
    [InlineData("pump--fuse", "pump-fuse")]
    [InlineData("-pump-fuse-", "pump-fuse")]
    [InlineData("PUMP-FUSE", "pump-fuse")]
    [InlineData("12v-feed", "n12v-feed")]
    [InlineData("r\u00FCckweg", "ruckweg")]
    [InlineData("../base", "base")]
    public void A_bad_id_comes_with_a_good_one(string text, string proposal) =>
        Sampled.ShouldFail($"[|{text}|]", Reader(), "DR2003", $"'{text}' is not an id: {Rule}. Write '{proposal}'.");

    [Fact]
    public void Sixty_four_characters_are_an_id_and_one_more_is_not()
    {
        var longest = new string('a', 64);

        Sampled.Sound(longest, Reader()).ShouldBe(longest);
        Sampled.ShouldFail($"[|{longest}a|]", Reader(), "DR2003", $"'{longest[..56]} ...' is not an id: {Rule}. Write '{longest}'.");
    }

    [Fact]
    public void Where_no_letter_is_left_nothing_is_proposed() => Sampled.ShouldFail("[|--|]", Reader(), "DR2003", $"'--' is not an id: {Rule}.");

    [Theory]
    [InlineData("worse", "the language of conditions")]
    [InlineData("known", "the language of conditions")]
    [InlineData("trust", "a key of observations")]
    [InlineData("result", "a key of observations")]
    [InlineData("present", "the grades of causes")]
    [InlineData("absent", "the grades of causes")]
    [InlineData("cannot-tell", "an observation without an answer")]
    [InlineData("unlisted", "what no listed cause explains")]
    [InlineData("remove", "taking an entry or a key of a base pack away")]
    [InlineData("pattern", "the built-in finding that says whether the fault comes and goes")]
    public void Words_that_mean_something_are_no_ids(string text, string purpose)
    {
        Sampled.ShouldFail($"[|{text}|]", Reader(), "DR2006", $"'{text}' is reserved for {purpose} and cannot be an id; pick another word.");
        Sampled.ShouldFail($"[|{text}|]", Reader(IdKind.Grade), "DR2006", $"'{text}' is reserved for {purpose} and cannot be a grade; pick another word.");
    }

    [Fact]
    public void All_words_of_the_language_of_conditions_are_reserved()
    {
        foreach (var word in (string[])["and", "or", "not", "is", "known", "unknown", "any", "every", "worse", "better", "by", "trust", "while", "at", "note", "tried", "result"])
        {
            Sampled.CodeOf(word, Reader()).ShouldBe("DR2006");
        }
    }

    [Fact]
    public void The_built_in_finding_may_be_named_where_a_pack_overrides_its_texts() =>
        Sampled.Sound("pattern", (text, problems) => IdReader.Read(text, IdKind.Id, problems, isPattern: true)).ShouldBe("pattern");

    [Theory]
    [InlineData("true", IdKind.Id, "an id")]
    [InlineData("False", IdKind.Grade, "a grade")]
    [InlineData("null", IdKind.Id, "an id")]
    [InlineData("~", IdKind.Grade, "a grade")]
    internal void Constants_of_other_tools_are_no_words(string text, IdKind kind, string what) =>
        Sampled.ShouldFail($"[|{text}|]", Reader(kind), "DR1011", $"'{text}' as {what} is read by other tools in their own way; pick another word.");

    [Theory]
    [InlineData("ram-$side-wet", true)]
    [InlineData("$side-ram", true)]
    [InlineData("jack-$side-$axle", true)]
    [InlineData("ram-$side2", true)]
    [InlineData("ram-$-wet", false)]
    [InlineData("ram-$Side", false)]
    public void A_template_may_hold_sets(string text, bool isTemplate)
    {
        IdReader.IsWellFormed(text, IdKind.Template).ShouldBe(isTemplate);
        IdReader.IsWellFormed(text).ShouldBeFalse();
    }

    [Fact]
    public void What_is_proposed_is_always_an_id() => Gen.Char['\0', '\uFFFF'].Array[0, 100].Select(letters => new string(letters)).Sample(
        text =>
        {
            var proposal = IdReader.Proposal(text);
            (proposal.Length == 0 || IdReader.IsWellFormed(proposal)).ShouldBeTrue(proposal);
        },
        iter: 5_000,
        threads: 1);

    private static Func<PlacedText, ProblemSink, string?> Reader(IdKind kind = IdKind.Id) => (text, problems) => IdReader.Read(text, kind, problems);
}
