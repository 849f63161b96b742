using CsCheck;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Text;

public sealed class SpellingTests
{
    private static readonly string[] Ids = ["pump-fuse", "pump-sound", "fuse-feed", "fuse-load", "fluid-level", "platform", "V", "mohm", "Mohm", "ohm"];

    [Theory]
    [InlineData("pump-fusse", "pump-fuse")]
    [InlineData("pmup-fuse", "pump-fuse")]
    [InlineData("PUMP-FUSE", "pump-fuse")]
    [InlineData("fuse-pump", "pump-fuse")]
    [InlineData("fuse_feed", "fuse-feed")]
    [InlineData("v", "V")]
    [InlineData("plat-form", "platform")]
    [InlineData("zebra", "")]
    [InlineData("", "")]
    public void The_nearest_word_comes_first(string word, string nearest) =>
        Spelling.Near(word, Ids).FirstOrDefault("").ShouldBe(nearest);

    [Fact]
    public void A_mistake_in_capitals_comes_before_a_wrong_letter() =>
        Spelling.Near("MOHM", Ids).ShouldBe(["Mohm", "mohm"]);

    [Fact]
    public void Three_at_most_are_proposed() =>
        Spelling.Near("ram-a", ["ram-b", "ram-c", "ram-d", "ram-e"]).ShouldBe(["ram-b", "ram-c", "ram-d"]);

    [Fact]
    public void A_word_that_is_longer_than_any_id_is_no_spelling_mistake() =>
        Spelling.Near(new string('a', 5_000), [new string('a', 64)]).ShouldBeEmpty();

    // Worked values of the Levenshtein distance (kitten to sitting, Saturday to Sunday) are those of R. A. Wagner and M. J. Fischer,
    // "The String-to-String Correction Problem", JACM 21 (1974), as commonly quoted; "ca" to "abc" is the usual example that tells the
    // restricted distance (3) from the unrestricted one (2). All from memory.
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("Saturday", "Sunday", 3)]
    [InlineData("ca", "abc", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("abc", "abc", 0)]
    [InlineData("", "abc", 3)]
    public void Distances_are_those_of_the_literature(string left, string right, int distance)
    {
        Spelling.Distance(left, right, 10).ShouldBe(distance);
        Spelling.Distance(right, left, 10).ShouldBe(distance);
    }

    [Fact]
    public void Beyond_the_cut_off_the_distance_is_only_said_to_be_beyond() =>
        Spelling.Distance("kitten", "sitting", 2).ShouldBeGreaterThan(2);

    [Fact]
    public void The_short_cuts_change_no_distance() => Gen.Select(Gen.Char['a', 'd'].Array[0, 9], Gen.Char['a', 'd'].Array[0, 9], Gen.Int[0, 9]).Sample(
        (left, right, cutoff) =>
        {
            var whole = WholeTable(left, right);
            var distance = Spelling.Distance(left, right, cutoff);

            (whole <= cutoff ? distance == whole : distance > cutoff).ShouldBeTrue($"{new string(left)} {new string(right)} {cutoff}: {distance}, not {whole}");
        },
        iter: 20_000,
        threads: 1);

    [Theory]
    [InlineData("pump-fusse", " Did you mean 'pump-fuse'?")]
    [InlineData("fuse-fead", " Did you mean 'fuse-feed' or 'fuse-load'?")]
    [InlineData("zebra", "")]
    public void The_proposal_is_a_sentence_of_its_own(string word, string sentence) => Spelling.DidYouMean(word, Ids).ShouldBe(sentence);

    /// <summary>Optimal string alignment by its definition, every cell filled.</summary>
    private static int WholeTable(char[] left, char[] right)
    {
        var table = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
        {
            for (var j = 0; j <= right.Length; j++)
            {
                table[i, j] = i == 0 || j == 0
                    ? i + j
                    : Math.Min(table[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1), Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
                }
            }
        }

        return table[left.Length, right.Length];
    }
}
