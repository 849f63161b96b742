using DiagRules.Model;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;

namespace DiagRules.Facts;

/// <summary>
/// Says why something is unknown though all it rests on is known: a calculation has no answer or failed, or a derived reading comes out
/// where it is not plausible. Conditions are judged without reasons, since they are judged often; here the few calls are asked again.
/// </summary>
internal static class UnknownNotes
{
    /// <summary>The notes, in the order of the pack, each once.</summary>
    public static IEnumerable<string> Of(PackIndex index, FactsView view)
    {
        var unanswered = index.Calls
            .Where(written => !written.IsReading || IsUnknown(index.Pack.Find<Reading>(written.Entry)!, view))
            .Select(written => written.Call.FailureWith(view) is { } failure ? Note(written, failure) : null)
            .OfType<string>();
        return unanswered.Concat(index.DerivedInOrder.Select(derived => NotPlausible(derived, view)).OfType<string>()).Distinct();
    }

    private static bool IsUnknown(Reading reading, FactsView view) => double.IsNaN(view.Readings[reading.Index]);

    private static string Note(WrittenCall written, CalculationFailure failure)
    {
        var subject = written.IsReading ? $"'{written.Entry}' is unknown" : $"A condition of '{written.Entry}' stays open";
        var verb = failure.Result.IsFailure ? "failed" : "cannot be computed";
        var code = failure.Result.IsFailure ? $" ({ProblemCatalogue.CalculationFailed.Code})" : "";
        var given = failure.Arguments.IsEmpty ? "" : $" with {failure.Given}";
        return $"{subject}: '{failure.Calculation.Name}'{given} {verb}, because {failure.Result.Reason!.TrimEnd('.')}{code}.";
    }

    private static string? NotPlausible(Reading derived, FactsView view)
    {
        if (derived.Plausible is not { } plausible || !IsUnknown(derived, view))
        {
            return null;
        }

        var value = derived.From!.Evaluate(view).Value;
        return double.IsFinite(value)
            ? $"'{derived.Id}' comes to {Quantity.FromSi(value, derived.Unit).Rounded()}, outside the plausible {plausible}; it counts as unknown."
            : null;
    }
}
