using System.Globalization;
using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Saving;

/// <summary>Writes the value of an observation as packs and people write it, so that it reads back as the same value.</summary>
internal static class ObservationText
{
    public static string Write(Pack pack, Observation observation) => observation.Value switch
    {
        CannotTell => "cannot-tell",
        Measured { Quantity.Value: double.PositiveInfinity } => "over-range",
        Measured { Quantity.Value: double.NegativeInfinity } => "under-range",
        Measured measured when measured.Quantity.Unit.Symbol == Model.Quantities.Unit.Number.Symbol => Number(measured.Quantity.Value),
        Measured measured => $"{Number(measured.Quantity.Value)} {measured.Quantity.Unit.Symbol}",
        Seen seen => Words.Grades((Graded)pack.Find(observation.Id)!, seen.Grades),
        Tried { Result: TriedResult.NoChange } => "no-change",
        Tried { Result: TriedResult.ForAWhile } => "for-a-while",
        _ => "cured",
    };

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
