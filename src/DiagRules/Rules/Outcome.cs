namespace DiagRules.Rules;

/// <summary>Advice, hazards or deferrals that hold. A fact of the rule network, so equality is identity.</summary>
internal sealed class Outcome(RuleLine line)
{
    public RuleLine Line { get; } = line;
}
