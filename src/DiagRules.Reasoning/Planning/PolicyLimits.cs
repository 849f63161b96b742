namespace DiagRules.Reasoning.Planning;

/// <summary>How far a policy tree is drawn. What is least likely is cut first.</summary>
public sealed class PolicyLimits
{
    /// <summary>The most steps one after the other.</summary>
    /// <value>Default 20; at least 1.</value>
    public int Depth { get; set; } = 20;

    /// <summary>The most nodes in all.</summary>
    /// <value>Default 200; at least 1.</value>
    public int Nodes { get; set; } = 200;

    /// <summary>Nodes that are reached with a lower probability are not followed.</summary>
    /// <value>Default 0.001; 0..1.</value>
    public double Probability { get; set; } = 0.001;
}
