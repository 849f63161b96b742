using CsCheck;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>What holds for every text, right or wrong.</summary>
public sealed class ConditionPropertyTests
{
    private static readonly string[] Pieces =
    [
        "pump-fuse", "fuse-feed", "brushes-worn", "fuse-rating", "motor-supply", "$side", "ram-$side-wet", "nobody-knows", "is", "not", "and", "or", "known", "unknown",
        "any", "every", "worse", "better", "blown", "silent", "(", ")", "<", "<=", ">", ">=", "=", "!=", "+", "-", "*", "/", ",", ":", "12", "12,5", "3 V", "5 A", "7 degC", "V",
        "min", "abs", "locked-rotor-current", "supply", "%", "!", "\"", "\u00B0", "\U0001F600", "1e999", ".5", "0x1F", "1:30", "$", "$$", "-", "--", "\n", "\u0000",
    ];

    private static Gen<string> Garbage =>
        from pieces in Gen.OneOf(Pieces).Array[0, 30]
        from glue in Gen.OneOf(" ", "", "  ")
        select string.Join(glue, pieces);

    [Fact]
    public void What_is_printed_is_read_back_the_same() => ConditionGenerator.Conditions.Sample(
        sample => Parsed.ShapeOf(sample.Text).ShouldBe(sample.Shape),
        iter: 2_000,
        threads: 1);

    [Fact]
    public void Whatever_is_written_is_either_read_or_reported()
    {
        var machine = new TestMachine();
        Gen.OneOf(Garbage, Gen.String[0, 60]).Sample(
            text =>
            {
                var parsed = Parsed.From(new Marked(text, 0, 0).Placed, machine);
                (parsed.Condition is null).ShouldBe(parsed.Problems.Count > 0, text);
                foreach (var problem in parsed.Problems)
                {
                    problem.Message.ShouldNotBeNullOrWhiteSpace();
                    problem.Place.Column.ShouldBeInRange(11, 11 + text.Length);
                    (problem.Place.Column + problem.Place.Length).ShouldBeLessThanOrEqualTo(11 + text.Length);
                }
            },
            iter: 10_000,
            threads: 1);
    }

    [Fact]
    public void Terms_and_mentioned_ids_never_throw_either()
    {
        var machine = new TestMachine();
        Gen.OneOf(Garbage, Gen.String[0, 60]).Sample(
            text =>
            {
                var problems = new ProblemSink();
                var placed = new Marked(text, 0, 0).Placed;
                var term = new ConditionParser(machine, problems).ReadTerm(placed);
                (term is null).ShouldBe(problems.Count > 0, text);
                MentionedIds.In(placed).ShouldAllBe(id => id.Value.Length > 0);
            },
            iter: 10_000,
            threads: 1);
    }

    [Fact]
    public void Mentioned_ids_are_all_that_a_readable_condition_looks_up() => ConditionGenerator.Conditions.Sample(
        sample =>
        {
            var machine = new LookedUp();
            new ConditionParser(machine, new ProblemSink()).ReadCondition(new Marked(sample.Text, 0, 0).Placed).ShouldNotBeNull();
            MentionedIds.In(new Marked(sample.Text, 0, 0).Placed).Select(id => id.Value).ToHashSet().SetEquals(machine.Found).ShouldBeTrue();
        },
        iter: 500,
        threads: 1);

    [Fact]
    public void Mentioned_ids_stand_at_their_places()
    {
        var text = Marked.Parse("known fuse-feed and pump-sound is silent or worse and [|fuse-load|] > abs(low-volts) * 2 V/strokes and any $side (ram-$side-wet is drips)");

        var ids = MentionedIds.In(text.Placed);

        ids.Select(id => id.Value).ShouldBe(["fuse-feed", "pump-sound", "fuse-load", "low-volts", "strokes", "ram-$side-wet"]);
        ids[2].At(0, 9).ShouldBe(text.Place);
    }

    /// <summary>Remembers which ids were asked for and found.</summary>
    private sealed class LookedUp : ISymbols
    {
        private readonly TestMachine _machine = new();

        public HashSet<string> Found { get; } = [];

        public IEnumerable<string> Ids => _machine.Ids;

        public IEnumerable<string> Sets => _machine.Sets;

        public IReadOnlyDictionary<string, string> Copied => _machine.Copied;

        public IReadOnlyList<Model.Calculations.CalculationLibrary> Calculations => _machine.Calculations;

        public Model.Entry? Find(string id)
        {
            var entry = _machine.Find(id);
            if (entry is not null)
            {
                Found.Add(id);
            }

            return entry;
        }

        public System.Collections.Immutable.ImmutableArray<string>? Members(string set) => _machine.Members(set);
    }
}
