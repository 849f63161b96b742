namespace DiagRules.Reasoning.Inference;

/// <summary>Which kinds of plan an engine may use; both give the same answers.</summary>
[Flags]
internal enum PlanKinds
{
    /// <summary>Trees of tables, see <see cref="Elimination.Plan"/>.</summary>
    Buckets = 1,

    /// <summary>Programs of sums and products, see <see cref="Tapes.Tape"/>. Questions they cannot answer still go to the other kind.</summary>
    Tapes = 2,

    /// <summary>Whichever is cheaper.</summary>
    Both = Buckets | Tapes,
}
