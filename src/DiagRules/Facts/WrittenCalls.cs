using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Rules;

namespace DiagRules.Facts;

/// <summary>Finds the calls of calculations in a pack.</summary>
internal static class WrittenCalls
{
    /// <summary>All that count on a chassis, in the order of the entries.</summary>
    public static IEnumerable<WrittenCall> Of(Pack pack, string? chassis)
    {
        IEnumerable<Entry> entries = [.. pack.Readings, .. pack.Findings, .. pack.Causes, .. pack.Rules, .. pack.Checks];
        return entries.Where(entry => entry.IsOn(chassis)).SelectMany(Of);
    }

    private static IEnumerable<WrittenCall> Of(Entry entry) => entry switch
    {
        Reading { From: { } from } => Dependence.CallsIn(from).Select(call => new WrittenCall(entry.Id, IsReading: true, call)),
        Finding finding => In(entry, BandConditions.ReadsOf(finding).Select(read => read.When)),
        Cause { Precondition: { } precondition } => In(entry, [precondition.Must]),
        Rule rule => In(entry, [rule.When]),
        Check { SkipIf: { } skipIf } => In(entry, [skipIf]),
        _ => [],
    };

    private static IEnumerable<WrittenCall> In(Entry entry, IEnumerable<Condition> conditions) =>
        conditions.SelectMany(Dependence.CallsIn).Select(call => new WrittenCall(entry.Id, IsReading: false, call));
}
