using System.Globalization;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;

namespace DiagRules.Facts;

/// <summary>Says what is wrong with an observation a host hands over.</summary>
internal static class ObservationCheck
{
    /// <summary>The problem that refuses it, or <see langword="null"/> when it can go on record.</summary>
    public static Problem? Refusal(Pack pack, string? chassis, Observation observation)
    {
        if (observation.Trust is { } trust && !(trust >= 0 && trust <= 1))
        {
            return Fault(ProblemCatalogue.NotAProbability, $"Trust of '{observation.Id}' is {trust.ToString(CultureInfo.InvariantCulture)}; 0..1 is expected.");
        }

        if (observation.Value is Tried)
        {
            return pack.FindRepair(observation.Id) is null
                ? Fault(ProblemCatalogue.NoSuchId, $"No repair '{observation.Id}' in pack '{pack.Id}'.")
                : null;
        }

        var entry = pack.Find(observation.Id);
        if (entry is null)
        {
            return Fault(ProblemCatalogue.NoSuchId, $"Nothing called '{observation.Id}' in pack '{pack.Id}'.");
        }

        if (!entry.IsOn(chassis))
        {
            return Fault(ProblemCatalogue.MissingOnChassis, $"'{entry.Id}' is not there on chassis '{chassis}'; it is for {string.Join(", ", entry.Only)}.");
        }

        return (observation.Value, entry) switch
        {
            (CannotTell, Reading { From: null } or Finding or Cause) => null,
            (_, Reading { From: not null }) => Fault(ProblemCatalogue.WrongSection, $"'{entry.Id}' derives from other readings; give those instead."),
            (Measured measured, Reading reading) => Refusal(reading, measured),
            (Seen seen, Finding or Cause) => Refusal((Graded)entry, seen),
            (_, Effect) => Fault(ProblemCatalogue.WrongSection, $"'{entry.Id}' is an effect inside the machine, which nobody observes directly."),
            (_, Reading reading) => Fault(ProblemCatalogue.ValueDoesNotFit, $"'{reading.Id}' takes a number in {reading.Unit}."),
            (_, Graded graded) => Fault(ProblemCatalogue.ValueDoesNotFit, $"'{graded.Id}' takes one of: {string.Join(", ", graded.Grades)}."),
            _ => Fault(ProblemCatalogue.WrongSection, $"'{entry.Id}' is nothing that is observed; expected a reading, a finding or a cause."),
        };
    }

    /// <summary>The problem with an implausible value, which stays on record and is used for nothing; else <see langword="null"/>.</summary>
    public static Problem? SetAside(Pack pack, Observation observation) =>
        observation.Value is Measured measured
        && pack.Find<Reading>(observation.Id) is { Plausible: { } plausible } reading
        && double.IsFinite(measured.Quantity.Value)
        && !plausible.Contains(measured.Quantity.Si)
            ? Fault(
                ProblemCatalogue.ValueDoesNotFit,
                $"'{reading.Id}' of {measured.Quantity} lies outside the plausible {plausible}; a slip of the pen? It is kept on record and used for nothing.")
            : null;

    private static Problem? Refusal(Reading reading, Measured measured)
    {
        var unit = measured.Quantity.Unit;
        if (unit.Dimension != reading.Unit.Dimension || unit.IsPoint != reading.Unit.IsPoint)
        {
            return Fault(ProblemCatalogue.UnitsDoNotMatch, $"'{reading.Id}' is measured in {reading.Unit}, not in {unit}.");
        }

        return double.IsNaN(measured.Quantity.Value)
            ? Fault(ProblemCatalogue.ValueDoesNotFit, $"'{reading.Id}' takes a number in {reading.Unit}, not 'NaN'.")
            : null;
    }

    private static Problem? Refusal(Graded graded, Seen seen) =>
        seen.Grades.IsEmpty || !seen.Grades.IsSubsetOf(GradeSet.All(graded.Grades.Length))
            ? Fault(ProblemCatalogue.NoSuchGrade, $"'{graded.Id}' takes one of: {string.Join(", ", graded.Grades)}.")
            : null;

    private static Problem Fault(ProblemDescriptor descriptor, string message) => new(descriptor, message, default);
}
