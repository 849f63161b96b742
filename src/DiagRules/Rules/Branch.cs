using DiagRules.Model.Conditions;

namespace DiagRules.Rules;

/// <summary>
/// One way in which a condition becomes certainly true: a gate over readings and plainly observed findings, and literals over
/// concluded ones.
/// </summary>
internal sealed class Branch(RuleLine line, IReadOnlyList<Literal> literals, Condition? gate)
{
    public RuleLine Line { get; } = line;

    public IReadOnlyList<Literal> Literals { get; } = literals;

    /// <summary>Certainly true for the gate to be open; <see langword="null"/> when it always is.</summary>
    public Condition? Gate { get; } = gate;

    /// <summary>Position among all branches of the rule book.</summary>
    public int Index { get; set; }

    /// <summary>Whether a gate is that of this branch.</summary>
    public bool Owns(GuardedGate gate) => gate.Branch == this;

    public bool IsOpen(IFacts facts) => Gate is null || Gate.Evaluate(facts) == Truth.True;
}
