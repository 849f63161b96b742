using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

/// <summary>Versions as semver.org 2.0.0 has them, and ranges of them.</summary>
public sealed class VersionTests
{
    // The examples of semver.org 2.0.0, item 11, in rising order.
    private static readonly string[] Rising =
    [
        "1.0.0-alpha", "1.0.0-alpha.1", "1.0.0-alpha.beta", "1.0.0-beta", "1.0.0-beta.2", "1.0.0-beta.11", "1.0.0-rc.1", "1.0.0", "2.0.0", "2.1.0", "2.1.1",
    ];

    [Fact]
    public void Order_is_that_of_the_specification()
    {
        for (var i = 0; i < Rising.Length; i++)
        {
            for (var j = 0; j < Rising.Length; j++)
            {
                Math.Sign(Version(Rising[i]).CompareTo(Version(Rising[j]))).ShouldBe(Math.Sign(i.CompareTo(j)), $"{Rising[i]} {Rising[j]}");
            }
        }
    }

    [Fact]
    public void Build_metadata_does_not_count_in_the_order()
    {
        Version("1.0.0+20130313144700").CompareTo(Version("1.0.0+exp.sha.5114f85")).ShouldBe(0);
        Version("1.0.0+20130313144700").ToString().ShouldBe("1.0.0+20130313144700");
    }

    // Items 2, 9 and 10 of the specification, and what they exclude.
    [Theory]
    [InlineData("1.9.0", true)]
    [InlineData("1.0.0-x.7.z.92", true)]
    [InlineData("1.0.0-x-y-z.--", true)]
    [InlineData("1.0.0-beta+exp.sha.5114f85", true)]
    [InlineData("1.0.0+21AF26D3----117B344092BD", true)]
    [InlineData("01.0.0", false)]
    [InlineData("1.0", false)]
    [InlineData("1.0.0-01", false)]
    [InlineData("1.0.0-", false)]
    [InlineData("v1.0.0", false)]
    [InlineData("1.0.0\n", false)]
    [InlineData("99999999999.0.0", false)]
    public void Shape_is_that_of_the_specification(string text, bool isVersion) => (SemanticVersion.Parse(text) is not null).ShouldBe(isVersion);

    [Theory]
    [InlineData("1.2.3", "1.2.3", true)]
    [InlineData("1.2.3", "1.2.4", false)]
    [InlineData("1.2.3", "1.2.3+build", true)]
    [InlineData("1.x", "1.0.0", true)]
    [InlineData("1.x", "1.99.7", true)]
    [InlineData("1.x", "2.0.0", false)]
    [InlineData("1.x", "1.3.0-beta", false)]
    [InlineData("1.3.0-beta", "1.3.0-beta", true)]
    [InlineData("1.2.x", "1.2.9", true)]
    [InlineData("1.2.x", "1.3.0", false)]
    [InlineData("0.x", "0.4.0", true)]
    public void A_range_holds_what_it_says(string range, string version, bool holds) =>
        VersionRange.Parse(range).ShouldNotBeNull().Contains(Version(version)).ShouldBe(holds);

    [Fact]
    public void A_library_of_calculations_has_a_version_of_this_kind() =>
        VersionRange.Parse("1.x").ShouldNotBeNull().Contains(SemanticVersion.From(new Version(1, 4))).ShouldBeTrue();

    [Theory]
    [InlineData("[|1.2|]", "'1.2' is not a version; write three numbers, such as '1.2.0'.")]
    [InlineData("[|v1.2.3|]", "'v1.2.3' is not a version; write three numbers, such as '1.2.3'.")]
    [InlineData("[|latest|]", "'latest' is not a version; write three numbers, such as '1.2.0'.")]
    public void A_bad_version_comes_with_a_good_one(string marked, string message) => Sampled.ShouldFail(marked, VersionReader.Read, "DR1104", message);

    [Fact]
    public void An_id_comes_with_the_versions_that_will_do()
    {
        var sample = Marked.Parse("[|electro-hydraulic-unit@1.x|]");

        var read = Sampled.Sound(sample.Text, VersionReader.ReadVersionedId).ShouldNotBeNull();

        read.Id.ShouldBe("electro-hydraulic-unit");
        read.Range.ToString().ShouldBe("1.x");
        read.Place.ShouldBe(sample.Place);
    }

    [Theory]
    [InlineData("[|electro-hydraulic-unit|]", "DR1104", "'electro-hydraulic-unit' does not say which versions will do; write 'electro-hydraulic-unit@1.x'.")]
    [InlineData("unit@[|1|]", "DR1104", "'1' is not a range of versions; write '1.2.3' for just that one, '1.2.x' for any 1.2, or '1.x' for any 1.")]
    [InlineData("unit@[|^1.2.0|]", "DR1104", "'^1.2.0' is not a range of versions; write '1.2.3' for just that one, '1.2.x' for any 1.2, or '1.x' for any 1.")]
    [InlineData("[|../unit|]@1.x", "DR2003", "'../unit' is not an id: small letters, digits and single dashes, a letter first, at most 64 characters. Write 'unit'.")]
    public void What_is_wrong_is_shown_at_its_part(string marked, string code, string message) =>
        Sampled.ShouldFail(marked, VersionReader.ReadVersionedId, code, message);

    private static SemanticVersion Version(string text) => SemanticVersion.Parse(text).ShouldNotBeNull();
}
