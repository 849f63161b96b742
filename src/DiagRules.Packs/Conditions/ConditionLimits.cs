namespace DiagRules.Packs.Conditions;

/// <summary>How large the condition of an untrusted pack may be. Immutable.</summary>
/// <param name="Length">Characters.</param>
/// <param name="Depth">Brackets, calls, <c>not</c> and <c>any</c> within each other.</param>
/// <param name="Size">
/// Parts it may have after <c>any</c> and <c>every</c> are written out for all members, and the parts a term may have after derived
/// readings are written out as what they derive from: short texts can stand for very much.
/// </param>
/// <param name="Chain">Operations within each other in a term, derived readings written out.</param>
internal sealed record ConditionLimits(int Length = 4_000, int Depth = 64, int Size = 4_096, int Chain = 512)
{
    public static readonly ConditionLimits Default = new();
}
