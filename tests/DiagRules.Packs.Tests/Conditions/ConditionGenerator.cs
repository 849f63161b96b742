using CsCheck;

namespace DiagRules.Packs.Tests.Conditions;

/// <summary>A condition as a text and as the shape it must be read as.</summary>
internal sealed record Sample(string Text, string Shape);

/// <summary>Random conditions over the test machine, right in words and units.</summary>
internal static class ConditionGenerator
{
    private static readonly string[] Volts = ["fuse-feed", "fuse-load", "fuse-drop", "low-volts"];
    private static readonly string[] Numbers = ["strokes"];

    private static readonly (string Id, string[] Grades)[] Findings =
    [
        ("pump-fuse", ["whole", "blown"]),
        ("pump-sound", ["runs-freely", "runs-slowly", "stalled", "clicks-only", "silent"]),
        ("brushes-worn", ["absent", "present"]),
        ("ram-left-wet", ["dry", "damp", "drips"]),
    ];

    /// <summary>Conditions of a few levels.</summary>
    public static Gen<Sample> Conditions { get; } = Condition(4);

    /// <summary>Conditions without <c>known</c> and <c>unknown</c>.</summary>
    public static Gen<Sample> WithoutKnown { get; } = Condition(4, withKnown: false);

    private static Gen<Sample> Condition(int depth, bool withKnown = true)
    {
        var leaf = withKnown ? Gen.OneOf(GradeTest, Comparison(2), Chain, Known) : Gen.OneOf(GradeTest, Comparison(2), Chain);
        if (depth == 0)
        {
            return leaf;
        }

        var inner = Condition(depth - 1, withKnown);
        var not = inner.Select(part => new Sample($"not ({part.Text})", $"(not {part.Shape})"));
        return Gen.Frequency((3, leaf), (1, not), (1, Join(inner, "and")), (1, Join(inner, "or")));
    }

    private static Gen<Sample> Join(Gen<Sample> inner, string word) => inner.Array[2, 3].Select(parts => new Sample(
        string.Join($" {word} ", parts.Select(part => $"({part.Text})")),
        $"({word} {string.Join(' ', parts.Select(part => part.Shape))})"));

    private static Gen<Sample> GradeTest =>
        from finding in Gen.OneOf(Findings)
        from grade in Gen.Int[0, finding.Grades.Length - 1]
        from form in Gen.Int[0, 4]
        select form switch
        {
            0 => Grades(finding, $"is {finding.Grades[grade]}", index => index == grade),
            1 => Grades(finding, $"is not {finding.Grades[grade]}", index => index != grade),
            2 => Grades(finding, $"is {finding.Grades[grade]} or worse", index => index >= grade),
            3 => Grades(finding, $"is {finding.Grades[grade]} or better", index => index <= grade),
            _ => Grades(finding, $"is {finding.Grades[grade]} or {finding.Grades[0]}", index => index == grade || index == 0),
        };

    private static Sample Grades((string Id, string[] Grades) finding, string test, Func<int, bool> holds) => new(
        $"{finding.Id} {test}",
        $"(is {finding.Id} {string.Join('|', finding.Grades.Where((_, index) => holds(index)))})");

    private static Gen<Sample> Known =>
        from word in Gen.OneOf("known", "unknown")
        from id in Gen.OneOf("fuse-feed", "strokes", "pump-fuse", "brushes-worn")
        select new Sample($"{word} {id}", $"({word} {id})");

    private static Gen<Sample> Comparison(int depth) =>
        from sign in Gen.OneOf("<", "<=", ">", ">=")
        from left in Voltage(depth)
        from right in Voltage(depth)
        select new Sample($"{left.Text} {sign} {right.Text}", $"({sign} {left.Shape} {right.Shape})");

    private static Gen<Sample> Chain =>
        from sign in Gen.OneOf("<", ">")
        from orEqual in Gen.OneOf("", "=")
        from a in Voltage(1)
        from b in Voltage(1)
        from c in Voltage(1)
        select new Sample(
            $"{a.Text} {sign} {b.Text} {sign}{orEqual} {c.Text}",
            $"(and ({sign} {a.Shape} {b.Shape}) ({sign}{orEqual} {b.Shape} {c.Shape}))");

    private static Gen<Sample> Voltage(int depth)
    {
        var literal = Gen.Int[-20, 20].Select(value => new Sample($"{value} V", $"{value}V"));
        var leaf = Gen.OneOf(literal, Gen.OneOf(Volts).Select(id => new Sample(id, id)));
        if (depth == 0)
        {
            return leaf;
        }

        var inner = Voltage(depth - 1);
        var sum = from sign in Gen.OneOf('+', '-')
                  from left in inner
                  from right in inner
                  select new Sample($"({left.Text}) {sign} ({right.Text})", $"({sign} {left.Shape} {right.Shape})");
        var scaled = from sign in Gen.OneOf('*', '/')
                     from left in inner
                     from right in Number
                     select new Sample($"({left.Text}) {sign} {right.Text}", $"({sign} {left.Shape} {right.Shape})");
        var negated = inner.Select(part => new Sample($"-({part.Text})", $"(- {part.Shape})"));
        var call = from name in Gen.OneOf("min", "max", "mean")
                   from values in inner.Array[1, 3]
                   select new Sample(
                       $"{name}({string.Join(", ", values.Select(value => value.Text))})",
                       $"({name} {string.Join(' ', values.Select(value => value.Shape))})");
        return Gen.Frequency((3, leaf), (1, sum), (1, scaled), (1, negated), (1, call));
    }

    private static Gen<Sample> Number => Gen.OneOf(
        Gen.Int[1, 9].Select(value => new Sample($"{value}", $"{value}")),
        Gen.OneOf(Numbers).Select(id => new Sample(id, id)));
}
