using DiagRules.Model;

namespace DiagRules.Packs.Conditions;

/// <summary>What messages say about an entry that stands where it cannot.</summary>
internal static class WrongKind
{
    /// <param name="entry">The entry.</param>
    /// <param name="allowed">What may stand there, as half a sentence.</param>
    public static string Message(Entry entry, string allowed) => entry is Effect
        ? $"'{entry.Id}' is an effect, which nobody observes; make it a finding if it is to be tested ({allowed})."
        : $"'{entry.Id}' is {EntryKinds.Name(entry)}; {allowed}.";
}
