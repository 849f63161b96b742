namespace DiagRules.Charts.Drawing;

/// <summary>Draws the tree behind a chart, the likeliest places first, each planned as a session would plan it.</summary>
internal sealed class ChartDraftsman(DiagnosisSession session, ChartOptions options, CancellationToken cancellationToken)
{
    /// <summary>What is less likely than a rounding is not expected at all.</summary>
    private const double Impossible = 1e-12;

    private readonly PriorityQueue<Place, (double Unlikely, int Order)> _open = new();
    private int _order;

    /// <summary>The root of the tree.</summary>
    public Place Draw()
    {
        var planner = new PlacePlanner(session);
        var root = new Place(new ChartPath { Record = [.. session.Record], Told = planner.ToldAtFirst() }, 1, 1);
        _open.Enqueue(root, (-1, _order++));
        for (var planned = 0; planned < options.Places && _open.TryDequeue(out var place, out _); planned++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            planner.Plan(place);
            foreach (var way in place.Ways)
            {
                Follow(way);
            }
        }

        return root;
    }

    private void Follow(Way way)
    {
        if (way.Next is { } next && next.Reached > Impossible && next.Reached >= options.Probability && next.Depth <= options.Depth)
        {
            _open.Enqueue(next, (-next.Reached, _order++));
        }
    }
}
