namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Counts work instead of time, so that the same situation gets the same plan on every machine.</summary>
internal sealed class WorkMeter(long budget, CancellationToken cancellation)
{
    private const long CancellationInterval = 1 << 16;

    private long _nextCancellation = CancellationInterval;

    internal long Spent { get; private set; }

    /// <summary>The spending at which the search in progress gives up.</summary>
    internal long Limit { get; set; } = budget;

    internal bool IsExhausted => Spent >= Limit;

    internal void Spend(int work)
    {
        Spent += work;
        if (Spent >= _nextCancellation)
        {
            _nextCancellation = Spent + CancellationInterval;
            cancellation.ThrowIfCancellationRequested();
        }
    }
}
