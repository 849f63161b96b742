using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>
/// What the parts of a condition leave possible for each reading and finding. It takes each reading by itself, so it finds some
/// conditions that can never hold and none that can.
/// </summary>
internal sealed class Room
{
    private readonly Dictionary<int, Stretch> _readings;
    private readonly Dictionary<int, GradeSet> _grades;
    private readonly Dictionary<Declared, bool> _known;
    private readonly Dictionary<Declared, Condition> _by;
    private readonly CheckScope _scope;
    private readonly IFacts _parameters;

    public Room(CheckScope scope, string? chassis)
    {
        (_scope, _parameters) = (scope, new ParameterFacts(scope.Draft, chassis));
        (_readings, _grades, _known, _by) = ([], [], [], []);
    }

    private Room(Room other)
    {
        (_scope, _parameters) = (other._scope, other._parameters);
        (_readings, _grades, _known, _by) = (new(other._readings), new(other._grades), new(other._known), new(other._by));
    }

    /// <summary>The part that left nothing over, and the one before it that it does not meet; set when something did.</summary>
    public (Condition Part, Condition? Before)? Decider { get; private set; }

    /// <summary>Takes in that a condition holds, or that it does not.</summary>
    /// <returns><see langword="false"/> when nothing is left over.</returns>
    public bool Take(Condition condition, bool holds) => (condition, holds) switch
    {
        (AllOf all, true) => TakeAll(all.Parts, true),
        (AnyOf any, false) => TakeAll(any.Parts, false),
        (AllOf all, false) => TakeOne(all.Parts, false),
        (AnyOf any, true) => TakeOne(any.Parts, true),
        (Negation negation, _) => Take(negation.Part, !holds),
        (Comparison comparison, _) => Take(comparison, holds),
        (GradeTest test, _) => TakeGrades(test, holds),
        (KnownGrade known, _) => TakeKnown(_scope.Draft.Node(known.Node), known.WantsKnown == holds, known, null),
        (KnownReading known, _) => TakeKnown(_scope.Draft.Of(Section.Readings)[known.Reading], known.WantsKnown == holds, known, null),
        (Constant constant, _) => constant.Value == Truth.Unknown || (constant.Value == Truth.True) == holds,
        _ => true,
    };

    private bool TakeAll(IReadOnlyList<Condition> parts, bool hold) =>
        parts.Where(part => !IsChoice(part, hold)).All(part => Take(part, hold)) && parts.Where(part => IsChoice(part, hold)).All(part => Take(part, hold));

    private static bool IsChoice(Condition part, bool holds) => part switch
    {
        AnyOf => holds,
        AllOf => !holds,
        Negation negation => IsChoice(negation.Part, !holds),
        _ => false,
    };

    /// <summary>Whether one part is possible; which of them stays open.</summary>
    private bool TakeOne(IReadOnlyList<Condition> parts, bool hold)
    {
        Room? last = null;
        foreach (var part in parts)
        {
            var room = new Room(this);
            if (room.Take(part, hold))
            {
                return true;
            }

            last ??= room;
        }

        Decider = last?.Decider;
        return false;
    }

    private bool Take(Comparison comparison, bool holds)
    {
        var (left, right) = (Constant(comparison.Left), Constant(comparison.Right));
        if (left is not null && right is not null)
        {
            return comparison.Holds(left.Value, right.Value) == holds || Refuse(comparison, null);
        }

        return (comparison.Left, comparison.Right) switch
        {
            (ReadingTerm reading, _) when right is { } limit => Narrow(reading, comparison.Comparator, limit, holds, comparison),
            (_, ReadingTerm reading) when left is { } limit => Narrow(reading, Turned(comparison.Comparator), limit, holds, comparison),
            _ => true,
        };
    }

    private double? Constant(Term term)
    {
        if (Mention.In(term, _scope.Draft).Any(mention => mention.To.Section == Section.Readings))
        {
            return null;
        }

        var value = term.Evaluate(_parameters).Value;
        return double.IsFinite(value) ? value : null;
    }

    private bool Narrow(ReadingTerm term, Comparator comparator, double limit, bool holds, Comparison by)
    {
        var declared = _scope.Draft.Of(Section.Readings)[term.Reading.Index];
        var stretch = _readings.TryGetValue(term.Reading.Index, out var known) ? known : Stretch.Of(term.Reading);
        var before = _by.GetValueOrDefault(declared);
        stretch = (comparator, holds) switch
        {
            (Comparator.Less, true) or (Comparator.GreaterOrEqual, false) => stretch.AtMost(limit, isOut: true),
            (Comparator.LessOrEqual, true) or (Comparator.Greater, false) => stretch.AtMost(limit, isOut: false),
            (Comparator.Greater, true) or (Comparator.LessOrEqual, false) => stretch.AtLeast(limit, isOut: true),
            (Comparator.GreaterOrEqual, true) or (Comparator.Less, false) => stretch.AtLeast(limit, isOut: false),
            (Comparator.Equal, true) or (Comparator.NotEqual, false) => stretch.AtLeast(limit, isOut: false).AtMost(limit, isOut: false),
            _ => stretch,
        };
        _readings[term.Reading.Index] = stretch;
        _by[declared] = by;
        return stretch.IsEmpty ? Refuse(by, before) : TakeKnown(declared, true, by, before);
    }

    private bool TakeGrades(GradeTest test, bool holds)
    {
        var declared = _scope.Draft.Node(test.Node);
        var all = declared.Grades.Length;
        var left = _grades.GetValueOrDefault(test.Node, GradeSet.All(all)) & (holds ? test.Grades : test.Grades.ComplementIn(all));
        var before = _by.GetValueOrDefault(declared);
        _grades[test.Node] = left;
        _by[declared] = test;
        return left.IsEmpty ? Refuse(test, before) : TakeKnown(declared, true, test, before);
    }

    private bool TakeKnown(Declared declared, bool isKnown, Condition by, Condition? before)
    {
        if (_known.TryGetValue(declared, out var known) && known != isKnown)
        {
            return Refuse(by, before ?? _by.GetValueOrDefault(declared));
        }

        _known[declared] = isKnown;
        _by[declared] = by;
        return true;
    }

    private bool Refuse(Condition part, Condition? before)
    {
        Decider = (part, before == part ? null : before);
        return false;
    }

    private static Comparator Turned(Comparator comparator) => comparator switch
    {
        Comparator.Less => Comparator.Greater,
        Comparator.LessOrEqual => Comparator.GreaterOrEqual,
        Comparator.Greater => Comparator.Less,
        Comparator.GreaterOrEqual => Comparator.LessOrEqual,
        _ => comparator,
    };

    /// <summary>A stretch of values, each end in it or out of it.</summary>
    private readonly record struct Stretch(double Least, bool IsLeastOut, double Most, bool IsMostOut)
    {
        public bool IsEmpty => Least > Most || (Least == Most && (IsLeastOut || IsMostOut));

        public static Stretch Of(Reading reading) => reading.Plausible is { } range
            ? new(range.Least.Si, false, range.Most.Si, false)
            : new(double.NegativeInfinity, true, double.PositiveInfinity, true);

        public Stretch AtMost(double limit, bool isOut) => limit < Most || (limit == Most && isOut) ? this with { Most = limit, IsMostOut = isOut } : this;

        public Stretch AtLeast(double limit, bool isOut) => limit > Least || (limit == Least && isOut) ? this with { Least = limit, IsLeastOut = isOut } : this;
    }
}
