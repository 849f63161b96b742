namespace DiagRules.Charts.Drawing;

/// <summary>
/// Draws the tree behind a chart, each place planned as a session would plan it; first those where most jobs could be ended: the probability of coming
/// there times the confidence of the cause that leads there. A chart that is cut short then ends as many jobs as it can.
/// </summary>
internal sealed class ChartDraftsman(DiagnosisSession session, ChartOptions options, CancellationToken cancellationToken)
{
    /// <summary>What is less likely than a rounding is not expected at all.</summary>
    private const double Impossible = 1e-12;

    private readonly PriorityQueue<Place, (double Unpromising, int Order)> _open = new();
    private int _order;

    /// <summary>The root of the tree.</summary>
    public Place Draw()
    {
        var planner = new PlacePlanner(session);
        var root = new Place(new ChartPath { Record = [.. session.Record], Told = planner.ToldAtFirst() }, 1, 1);
        _open.Enqueue(root, (-1, _order++));
        var planned = 0;
        while (planned < options.Places && _open.TryDequeue(out var place, out _))
        {
            cancellationToken.ThrowIfCancellationRequested();
            planner.Plan(place);
            planned += place.Step!.IsSameCheck ? 0 : 1;
            foreach (var way in place.Ways)
            {
                Follow(way);
            }
        }

        return root;
    }

    private void Follow(Way way)
    {
        if (way.Next is { } next && next.Reached > Impossible && next.Reached >= options.Probability && next.Path.Steps.Length < options.Depth)
        {
            _open.Enqueue(next, (-next.Promise, _order++));
        }
    }
}
