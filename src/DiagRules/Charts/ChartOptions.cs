namespace DiagRules.Charts;

/// <summary>How far a troubleshooting chart is drawn. What is least likely is cut first. The defaults are good for paper.</summary>
public sealed class ChartOptions
{
    /// <summary>Most steps one after the other; further findings of one check count as one step.</summary>
    /// <value>Default 12; at least 1.</value>
    public int Depth { get; set; } = 12;

    /// <summary>Most places that are planned, each as a session would plan it; the work grows with them. Further findings of one check are not counted.</summary>
    /// <value>Default 150; at least 1.</value>
    public int Places { get; set; } = 150;

    /// <summary>Places that are reached with a lower probability are not drawn.</summary>
    /// <value>Default 0.01; 0..1.</value>
    public double Probability { get; set; } = 0.01;

    internal void ThrowIfOutOfRange()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Depth, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Places, 1);
        if (!(Probability is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(Probability), Probability, "The least probability of a place must lie within 0..1.");
        }
    }
}
