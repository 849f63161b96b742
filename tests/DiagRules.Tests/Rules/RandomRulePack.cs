using System.Collections.Immutable;
using CsCheck;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;

namespace DiagRules.Tests.Rules;

/// <summary>Makes random packs of rules, and random things to observe on them. Findings depend on earlier ones only, never on cause 0, which a rule decides.</summary>
internal static class RandomRulePack
{
    private const int ReadingCount = 3;
    private const int FindingCount = 7;
    private const int CauseCount = 2;
    private static readonly Unit Volt = UnitTable.TryGet("V", out var volt) ? volt : throw new InvalidOperationException();

    /// <summary>A pack; the seed picks one of them.</summary>
    public static Gen<Pack> Packs { get; } = Gen.ULong.Select(seed => Make(new Random(unchecked((int)seed))));

    /// <summary>Something to observe on such a pack, or a withdrawal (<see langword="null"/> value).</summary>
    public static Gen<(string Id, Observation? Observation)[]> Steps { get; } = Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.Int[1, 25])
        .Select((seed, count) =>
        {
            var random = new Random(seed);
            return Enumerable.Range(0, count).Select(_ => Step(random)).ToArray();
        });

    private static (string Id, Observation? Observation) Step(Random random)
    {
        var isReading = random.Next(2) == 0;
        var id = isReading ? $"r{random.Next(ReadingCount)}" : random.Next(6) == 0 ? $"c{random.Next(CauseCount)}" : $"f{random.Next(FindingCount)}";
        if (random.Next(4) == 0)
        {
            return (id, null);
        }

        ObservedValue value = isReading
            ? new Measured(new Quantity(random.Next(20) == 0 ? double.PositiveInfinity : random.Next(0, 11), Volt))
            : random.Next(8) == 0 ? new CannotTell()
            : new Seen(new GradeSet((byte)random.Next(1, id[0] == 'c' ? 4 : 8)));
        double? trust = random.Next(3) switch { 0 => null, 1 => 0.9, _ => 0.6 };
        return (id, new Observation(id, value) { Trust = trust });
    }

    private static Pack Make(Random random)
    {
        var readings = Enumerable.Range(0, ReadingCount).Select(i => new Reading
        {
            Id = $"r{i}",
            Index = i,
            Title = $"Reading {i}",
            Unit = Volt,
            Accuracy = i == 0 ? new Accuracy(0, 0.5) : null,
        }).ToImmutableArray();
        var maker = new ConditionMaker(random, readings);
        var findings = new List<Finding>();
        var rules = new List<Rule>();
        for (var i = 0; i < FindingCount; i++)
        {
            var node = CauseCount + i;
            findings.Add(new Finding
            {
                Id = $"f{i}",
                Index = i,
                Node = node,
                Title = $"Finding {i}",
                Grades = ["g0", "g1", "g2"],
                Reads = random.Next(3) == 0 ? [.. Enumerable.Range(0, random.Next(1, 3)).Select(grade => new ReadGrade(grade, maker.Make(node, 2, from: 1)))] : [],
            });
            for (var k = random.Next(3); k > 0; k--)
            {
                rules.Add(Rule(rules.Count, maker.Make(node, 2, from: 1)) with { Settles = [new NodeGrades(node, GradeSet.Of(random.Next(3)))] });
            }
        }

        var all = CauseCount + FindingCount;
        rules.Add(Rule(rules.Count, maker.Make(all, 2, from: CauseCount)) with { RulesOut = [0] });
        for (var k = 0; k < 3; k++)
        {
            rules.Add(Rule(rules.Count, maker.Make(all, 3)) with { Advise = "Mind it." });
        }

        var causes = Enumerable.Range(0, CauseCount).Select(i => new Cause
        {
            Id = $"c{i}",
            Index = i,
            Node = i,
            Title = $"Cause {i}",
            Grades = Cause.AbsentPresent,
            Share = 1,
        }).ToImmutableArray();
        return new Pack
        {
            Id = "random",
            Version = "1.0.0",
            Title = "Random rules",
            Readings = readings,
            Findings = [.. findings],
            Causes = causes,
            Nodes = [.. causes, .. findings],
            Rules = [.. rules],
        };
    }

    private static Rule Rule(int index, Condition when) => new() { Id = $"rule-{index}", Index = index, Title = $"Rule {index}", When = when };

    private sealed class ConditionMaker(Random random, ImmutableArray<Reading> readings)
    {
        /// <summary>A condition on readings and on nodes from <paramref name="from"/> to below <paramref name="below"/>.</summary>
        public Condition Make(int below, int depth, int from = 0)
        {
            if (depth == 0 || random.Next(4) == 0)
            {
                return Leaf(below, from);
            }

            return random.Next(3) switch
            {
                0 => new Negation(Make(below, depth - 1, from), "not", default),
                1 => new AllOf([Make(below, depth - 1, from), Make(below, depth - 1, from)], "and", default),
                _ => new AnyOf([Make(below, depth - 1, from), Make(below, depth - 1, from)], "or", default),
            };
        }

        private Condition Leaf(int below, int from)
        {
            if (below <= from || random.Next(3) == 0)
            {
                var reading = readings[random.Next(readings.Length)];
                return random.Next(4) == 0
                    ? new KnownReading(reading.Index, random.Next(2) == 0, "known", default)
                    : new Comparison(
                        new ReadingTerm(reading, TermType.Of(reading.Unit), default),
                        (Comparator)random.Next(4),
                        new LiteralTerm(random.Next(1, 10), TermType.Of(reading.Unit), default),
                        "compare",
                        default);
            }

            var node = random.Next(from, below);
            var grades = node < CauseCount ? 2 : 3;
            return random.Next(3) == 0
                ? new KnownGrade(node, random.Next(2) == 0, "known", default)
                : new GradeTest(node, new GradeSet((byte)random.Next(1, (1 << grades) - 1)), "is", default);
        }
    }
}
