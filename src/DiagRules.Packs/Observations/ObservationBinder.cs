using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Observations;

/// <summary>Reads an id and a value at their places, for recorded cases and for hosts alike.</summary>
/// <param name="find">The entry with an id, or <see langword="null"/>.</param>
/// <param name="ids">All ids, for "did you mean".</param>
internal sealed class ObservationBinder(Func<string, Entry?> find, Func<IEnumerable<string>> ids)
{
    private const string Observed = "readings, findings, causes and preconditions are observed, and repairs are tried";

    private static readonly Dictionary<string, TriedResult> Results = new(StringComparer.Ordinal)
    {
        ["no-change"] = TriedResult.NoChange,
        ["for-a-while"] = TriedResult.ForAWhile,
        ["cured"] = TriedResult.Cured,
    };

    /// <summary>The observation, or <see langword="null"/> after reporting. A value that is not plausible is reported and comes out all the same.</summary>
    public Observation? Read(PlacedText id, PlacedText value, ProblemSink problems)
    {
        var read = Find(id, problems) switch
        {
            null => null,
            Repair repair => ReadResult(repair, value, problems),
            Cause cause when CanBeRestored(cause) && Results.ContainsKey(value.Value) => ReadResult(cause, value, problems),
            Reading reading => ReadReading(reading, id, value, problems),
            Graded graded when graded is not Effect => ReadGrades(graded, value, problems),
            var other => ReportWrongKind(id, other, problems),
        };
        return read is null ? null : new Observation(id.Value, read);
    }

    /// <summary><c>tried: repair</c> and <c>result: ...</c>, or <see langword="null"/> after reporting.</summary>
    public Observation? ReadTried(PlacedText repair, PlacedText result, ProblemSink problems)
    {
        switch (Find(repair, problems))
        {
            case null:
                return null;
            case { } entry when entry is Repair || (entry is Cause cause && CanBeRestored(cause)):
                return ReadResult(entry, result, problems) is { } tried ? new Observation(repair.Value, tried) : null;
            case var other:
                Add(problems, ProblemCatalogue.WrongSection, repair, WrongKind.Message(other, "'tried' takes a repair, or a precondition with 'restore'"));
                return null;
        }
    }

    /// <summary>Where <c>restore</c> is a repair by the precondition's own id, rather than a remark beside a repair it names.</summary>
    private static bool CanBeRestored(Cause cause) => cause.Precondition?.Restore is not null && cause.Repairs.All(cure => cure.Repair == cause.Id);

    private Entry? Find(PlacedText id, ProblemSink problems)
    {
        var entry = find(id.Value);
        if (entry is null)
        {
            Add(problems, ProblemCatalogue.NoSuchId, id, $"No reading, finding, cause or repair '{Excerpt.Of(id.Value)}'.{Spelling.DidYouMean(id.Value, ids())}");
        }

        return entry;
    }

    private static Tried? ReadResult(Entry repair, PlacedText value, ProblemSink problems)
    {
        if (Results.TryGetValue(value.Value, out var result))
        {
            return new Tried(result);
        }

        Add(
            problems,
            ProblemCatalogue.ValueDoesNotFit,
            value,
            $"'{repair.Id}' is {EntryKinds.Name(repair)} that was tried, and '{Excerpt.Of(value.Value)}' is not what can come of it; " +
            $"it takes {Wording.Or(Results.Keys)}.{Spelling.DidYouMean(value.Value, Results.Keys)}");
        return null;
    }

    private static ObservedValue? ReadReading(Reading reading, PlacedText id, PlacedText value, ProblemSink problems)
    {
        if (reading.From is not null)
        {
            var bases = Bases.Of(reading.From);
            Add(
                problems,
                ProblemCatalogue.ValueDoesNotFit,
                id,
                $"'{reading.Id}' is worked out from other readings and not observed itself; " +
                $"{(bases.Count == 0 ? "leave it out" : "give " + Wording.And(bases))}.");
            return null;
        }

        switch (value.Value)
        {
            case ReservedWords.CannotTell:
                return new CannotTell();
            case ReservedWords.OverRange:
                return new Measured(new Quantity(double.PositiveInfinity, reading.Unit));
            case ReservedWords.UnderRange:
                return new Measured(new Quantity(double.NegativeInfinity, reading.Unit));
            default:
                return ReadQuantity(reading, value, problems) is { } quantity ? new Measured(quantity) : null;
        }
    }

    private static Quantity? ReadQuantity(Reading reading, PlacedText value, ProblemSink problems)
    {
        var expected = TermType.Of(reading.Unit);
        if (value.Value.Length == 0 || char.IsLetter(value.Value[0]))
        {
            Add(
                problems,
                ProblemCatalogue.ValueDoesNotFit,
                value,
                $"'{reading.Id}' is a reading, and '{Excerpt.Of(value.Value)}' is not a value of it; " +
                $"it takes {Measure.Describe(expected)} such as '{Measure.Example(expected)}', 'over-range', 'under-range' or 'cannot-tell'.");
            return null;
        }

        if (QuantityReader.Read(value, problems) is not { } quantity)
        {
            return null;
        }

        var found = TermType.Of(quantity.Unit);
        if (found.Dimension == expected.Dimension && found.IsPoint == expected.IsPoint)
        {
            ReportIfImplausible(reading, quantity, value, problems);
            return quantity;
        }

        var isBare = found.Dimension.IsNone;
        Add(
            problems,
            isBare ? ProblemCatalogue.UnitMissing : ProblemCatalogue.ValueDoesNotFit,
            value,
            isBare
                ? $"'{Excerpt.Of(value.Value)}' has no unit; " +
                  $"'{reading.Id}' is {Measure.Describe(expected)}, so write '{Measure.Example(expected, Excerpt.Of(value.Value))}' if that is what was read."
                : $"'{reading.Id}' is {Measure.Describe(expected)}, and '{Excerpt.Of(value.Value)}' is {Measure.Describe(found)}; " +
                  $"it takes a value such as '{Measure.Example(expected)}'.");
        return null;
    }

    private static void ReportIfImplausible(Reading reading, Quantity quantity, PlacedText value, ProblemSink problems)
    {
        if (!reading.IsPlausible(quantity))
        {
            Add(
                problems,
                ProblemCatalogue.ValueDoesNotFit,
                value,
                $"'{Excerpt.Of(value.Value)}' is outside what is plausible for '{reading.Id}' ({reading.Plausible}); " +
                "it is taken for a slip of the pen (unit, decimal point), kept on record and used for nothing.");
        }
    }

    private static ObservedValue? ReadGrades(Graded graded, PlacedText value, ProblemSink problems)
    {
        if (value.Value == ReservedWords.CannotTell)
        {
            return new CannotTell();
        }

        if (value.Value.Length > 0 && char.IsLetter(value.Value[0]))
        {
            return OpenGradesReader.Read(value, graded, problems) is { } grades ? new Seen(grades) : null;
        }

        Add(
            problems,
            ProblemCatalogue.ValueDoesNotFit,
            value,
            $"'{graded.Id}' is {EntryKinds.Name(graded)}, and '{Excerpt.Of(value.Value)}' is not a grade; " +
            $"it takes {Wording.Or(graded.Grades.Append(ReservedWords.CannotTell))}.");
        return null;
    }

    private static ObservedValue? ReportWrongKind(PlacedText id, Entry entry, ProblemSink problems)
    {
        Add(problems, ProblemCatalogue.WrongSection, id, WrongKind.Message(entry, Observed));
        return null;
    }

    private static void Add(ProblemSink problems, ProblemDescriptor descriptor, PlacedText at, string message) =>
        problems.Add(descriptor, at.At(0, at.Value.Length), message);
}
