using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Loading;

/// <summary>Limits on packs from people one does not know: each has a message that names its setting, and just below it all is well.</summary>
public class LimitTests
{
    private const string Sets = "sets: { side: { left: left, right: right } }\n";

    [Fact]
    public void File_LargerThanItsLimit_IsRefused() =>
        Refused(PackText.Of("# " + new string('x', 100)), limits => limits.FileBytes = 100, "'pack.yaml' is larger than 100 bytes, the limit of a file (setting 'FileBytes').");

    [Fact]
    public void Pack_LargerThanItsLimit_IsRefused() =>
        Refused(
            PackText.Of("").With("z.yaml", "access:\n  a: { title: x }\n"), limits => limits.PackBytes = 70, "'z.yaml' brings the pack to 79 bytes; the limit of a pack is 70 bytes (setting 'PackBytes').");

    [Fact]
    public void Copies_CountAsEntries()
    {
        var pack = PackText.WithHead(PackText.Head + Sets + "access:\n  a-$side: { title: x }\n  b-$side: { title: x }\n");

        Refused(pack, limits => limits.Entries = 3, "'b-$side' brings the pack to more than 3 entries, copies of sets included (setting 'Entries').");
        Loads(pack, limits => limits.Entries = 4);
    }

    [Fact]
    public void ManySetsInOneId_AreCountedBeforeTheyAreCopied()
    {
        var members = string.Join(", ", Enumerable.Range(0, 64).Select(i => $"m{i}: m{i}"));
        var sets = string.Join(", ", "abcdefgh".Select(set => $"{set}: {{ {members} }}"));

        Refused(
            PackText.WithHead($"{PackText.Head}sets: {{ {sets} }}\naccess:\n  x-$a-$b-$c-$d-$e-$f-$g-$h: {{ title: x }}\n"),
            _ => { },
            "'x-$a-$b-$c-$d-$e-$f-$g-$h' brings the pack to more than 10000 entries, copies of sets included (setting 'Entries').");
    }

    [Fact]
    public void ManySetsInOneItemOfAList_AreCountedBeforeTheyAreWrittenOut()
    {
        var members = string.Join(", ", Enumerable.Range(0, 30).Select(i => $"m{i}: m{i}"));

        Refused(
            PackText.WithHead($"{PackText.Head}sets: {{ a: {{ {members} }}, b: {{ {members} }}, c: {{ {members} }} }}\naccess:\n  x: {{ title: x, needs: [y-$a-$b-$c] }}\n"),
            _ => { },
            "'y-$a-$b-$c' stands for more than 10000 ids (setting 'Entries').");
    }

    [Fact]
    public void Members_MoreThanTheirLimit_AreRefused() =>
        Refused(PackText.WithHead(PackText.Head + Sets), limits => limits.SetMembers = 1, "'side' has 2 members; the limit is 1 (setting 'SetMembers').");

    [Fact]
    public void Nesting_StopsTheReader()
    {
        var brackets = new string('[', 100_000);

        Refused(PackText.Of($"x-host: {brackets}"), _ => { }, "'33' maps and lists stand inside each other here; the limit is 32 (setting 'Nesting').");
    }

    [Fact]
    public void Grades_MoreThanTheHostAllows_AreRefused() =>
        Refused(PackText.Of("findings:\n  a: { title: x, grades: [b, c, d] }\n"), limits => limits.Grades = 2, "'a' has 3 grades; the limit is 2 (setting 'Grades').");

    [Fact]
    public void TableParents_MoreThanTheirLimit_AreRefused() =>
        Refused(Table(), limits => limits.TableParents = 1, "'n' has a table over 2 parents; the limit is 1 (setting 'TableParents').");

    [Fact]
    public void TableCombinations_MoreThanTheirLimit_AreRefused() =>
        Refused(Table(), limits => limits.TableCombinations = 3, "'n' has a table over 4 combinations of grades; the limit is 3 (setting 'TableCombinations').");

    [Fact]
    public void TableWithinTheLimits_Loads() => Loads(Table(), limits => (limits.TableParents, limits.TableCombinations) = (2, 4));

    [Fact]
    public void ConditionLength_IsTheHostsToSet() =>
        Code(PackText.Of("findings:\n  a: { title: x, grades: [b, c] }\nrules:\n  r: { when: a is c, advise: x }\n"), limits => limits.ConditionLength = 5).ShouldBe("DR7001");

    [Fact]
    public void ConditionDepth_IsTheHostsToSet() =>
        Code(PackText.Of("findings:\n  a: { title: x, grades: [b, c] }\nrules:\n  r: { when: not not not a is c, advise: x }\n"), limits => limits.ConditionDepth = 2).ShouldBe("DR7001");

    [Fact]
    public void LimitsChangedAfterwards_HaveNoEffect()
    {
        var options = new PackLoaderOptions();
        var loader = new PackLoader(options);

        options.Limits.FileBytes = 1;

        loader.Load(PackText.Of("").Files).Pack.ShouldNotBeNull();
    }

    private static PackText Table() => PackText.Of(
        "effects:\n  a: { grades: [no, yes] }\n  b: { grades: [no, yes] }\nfindings:\n  n: { title: x, grades: [low, high], given: [a, b], table: [{ otherwise: { high: 0.1 } }] }\n");

    private static void Refused(PackText pack, Action<PackLimits> change, string message)
    {
        var problem = Load(pack, change).Problems.ShouldHaveSingleItem();
        (problem.Code, problem.Message).ShouldBe(("DR7001", message));
    }

    private static string Code(PackText pack, Action<PackLimits> change) => Load(pack, change).Problems.ShouldHaveSingleItem().Code;

    private static void Loads(PackText pack, Action<PackLimits> change) => Load(pack, change).Pack.ShouldNotBeNull();

    private static PackLoadResult Load(PackText pack, Action<PackLimits> change)
    {
        var options = new PackLoaderOptions();
        change(options.Limits);
        return pack.Load(options);
    }
}
