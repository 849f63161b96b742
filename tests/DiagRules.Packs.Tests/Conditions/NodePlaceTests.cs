using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>Each part of a condition knows its own text and where it stands.</summary>
public sealed class NodePlaceTests
{
    [Fact]
    public void Every_part_carries_its_own_text_and_place()
    {
        var all = Parsed.Sound("not (pump-fuse is blown) and 11 V <= fuse-feed < 14 V").ShouldBeOfType<AllOf>();

        ShouldStand(all, "not (pump-fuse is blown) and 11 V <= fuse-feed < 14 V", 0);
        var not = all.Parts[0].ShouldBeOfType<Negation>();
        ShouldStand(not, "not (pump-fuse is blown)", 0);
        ShouldStand(not.Part, "pump-fuse is blown", 5);
        var chain = all.Parts[1].ShouldBeOfType<AllOf>();
        ShouldStand(chain, "11 V <= fuse-feed < 14 V", 29);
        ShouldStand(chain.Parts[0], "11 V <= fuse-feed", 29);
        ShouldStand(chain.Parts[1], "fuse-feed < 14 V", 37);
    }

    [Fact]
    public void Terms_carry_their_place()
    {
        var comparison = Parsed.Sound("abs(fuse-feed - 1 V) > 3 V").ShouldBeOfType<Comparison>();

        comparison.Left.Place.ShouldBe(Place(0, 20));
        var difference = comparison.Left.ShouldBeOfType<CallTerm>().Arguments[0].ShouldBeOfType<ArithmeticTerm>();
        difference.Place.ShouldBe(Place(4, 15));
        difference.Right.Place.ShouldBe(Place(16, 3));
        comparison.Right.Place.ShouldBe(Place(23, 3));
    }

    [Fact]
    public void Parts_copied_for_a_member_name_it_and_read_with_it()
    {
        var any = Parsed.Sound("any $side (ram-$side-wet is drips)").ShouldBeOfType<AnyOf>();

        any.Text.ShouldBe("any $side (ram-$side-wet is drips)");
        any.Place.ShouldBe(Place(0, 34));
        any.Parts[1].Text.ShouldBe("ram-right-wet is drips");
        any.Parts[1].Place.ShouldBe(Place(11, 22) with { Member = "right" });
    }

    [Fact]
    public void Members_of_nested_sets_are_named_from_the_outside_in()
    {
        var any = Parsed.Sound("any $side (any $axle (jack-$side-$axle is stuck))").ShouldBeOfType<AnyOf>();

        var inner = any.Parts[1].ShouldBeOfType<AnyOf>();
        inner.Text.ShouldBe("any $axle (jack-right-$axle is stuck)");
        inner.Parts[0].Place.Member.ShouldBe("right, front");
    }

    [Fact]
    public void A_problem_in_a_folded_text_is_placed_by_its_own_line_and_column()
    {
        // As YAML folds:   when: >
        //                    pump-fuse is blown
        //                    and fuse-feed > 3 A
        const string Text = "pump-fuse is blown and fuse-feed > 3 A";
        var map = new (int, int)[Text.Length];
        for (var i = 0; i < Text.Length; i++)
        {
            map[i] = i < 19 ? (4, 9 + i) : (5, 9 + i - 19);
        }

        var placed = new PlacedText(Text, new SourcePlace("p", "f.yaml", 4, 9), IsQuoted: true) { Map = map };

        var problem = Parsed.From(placed).Problems.ShouldHaveSingleItem();
        problem.Place.ShouldBe(new SourcePlace("p", "f.yaml", 5, 25, 3));
    }

    private static void ShouldStand(Condition condition, string text, int offset)
    {
        condition.Text.ShouldBe(text);
        condition.Place.ShouldBe(Place(offset, text.Length));
    }

    private static SourcePlace Place(int offset, int length)
    {
        var start = Marked.Parse("x").Place;
        return start with { Column = start.Column + offset, Length = length };
    }
}
