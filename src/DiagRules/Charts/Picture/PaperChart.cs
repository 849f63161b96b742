using DiagRules.Results;

namespace DiagRules.Charts.Picture;

/// <summary>One of the smaller charts that a large one is cut into: the boxes that are drawn together, from a first one on.</summary>
internal sealed class PaperChart(TroubleshootingChart chart, int first)
{
    private readonly Dictionary<int, (int From, int Branch)> _ways = [];
    private readonly Dictionary<string, ChartStep> _steps = chart.Steps.ToDictionary(step => step.Id, StringComparer.Ordinal);

    /// <summary>Number of its first box.</summary>
    public int First => first;

    /// <summary>Numbers of its boxes.</summary>
    public IEnumerable<int> Boxes => _ways.Keys.Prepend(first);

    /// <summary>Draws a box where a branch leads, or takes that back.</summary>
    public void Add(int box, int from, int branch) => _ways.Add(box, (from, branch));

    public void Remove(int box) => _ways.Remove(box);

    /// <summary>The chart as it is laid out.</summary>
    /// <param name="chartOf">Number of the chart that holds a box; a wide guess as long as nobody knows.</param>
    public Tile Lay(Func<int, int> chartOf) => Lay(first, null, chartOf);

    private Tile Lay(int number, (ChartBox Box, ChartBranch Branch)? into, Func<int, int> chartOf)
    {
        var box = chart.Boxes[number - 1];
        var right = new List<Tile>();
        Tile? below = null;
        string? onwards = null;
        for (var i = 0; i < box.Branches.Length; i++)
        {
            var branch = box.Branches[i];
            var isDrawn = branch.Next is { } next && _ways.TryGetValue(next, out var way) && way == (number, i);
            if (isDrawn)
            {
                var tile = Lay(branch.Next!.Value, (box, branch), chartOf);
                _ = box.Kind == StepKind.Repair ? below = tile : Added(right, tile);
            }
            else if (branch.End != ChartEnd.Cured)
            {
                var words = Elsewhere(branch, chartOf);
                if (box.Kind == StepKind.Repair)
                {
                    onwards = $"Complaint stays ({Words.Percent(branch.Probability)}): {char.ToLowerInvariant(words[0])}{words[1..]}";
                }
                else
                {
                    right.Add(new Tile(BoxPicture.OfWords((box, branch), words, branch.End is null), [], null));
                }
            }
        }

        return new Tile(BoxPicture.OfBox(box, _steps.GetValueOrDefault(box.Step), into, onwards), right, below);
    }

    private static Tile Added(List<Tile> tiles, Tile tile)
    {
        tiles.Add(tile);
        return tile;
    }

    private string Elsewhere(ChartBranch branch, Func<int, int> chartOf)
    {
        if (branch.End is { } end)
        {
            return ChartWords.End(end);
        }

        var box = chart.Boxes[branch.Next!.Value - 1];
        var there = chartOf(box.Number);
        return there == chartOf(first) && Boxes.Contains(box.Number)
            ? $"Go on at box {box.Number} of this chart."
            : $"Go on at chart {there}, box {box.Number}: {ChartWords.Stopped(ChartWords.Heading(box))}";
    }
}
