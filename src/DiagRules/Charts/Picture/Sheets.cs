namespace DiagRules.Charts.Picture;

/// <summary>
/// Cuts a chart into pieces that fit a sheet, the likeliest ways kept together, and puts each on the first sheet that has room for it; they are numbered
/// as they stand.
/// </summary>
internal sealed class Sheets
{
    /// <summary>A4 across, in CSS pixels.</summary>
    public const double Width = 1123, Height = 794;
    public const double Margin = 36;
    public const double FooterHeight = 20;
    private const int MostColumns = 4;
    private const double ChartGap = 18;
    private const int WideGuess = 88;

    private readonly TroubleshootingChart _chart;
    private readonly List<PaperChart> _papers = [];
    private readonly Dictionary<int, PaperChart> _paperOf = [];
    private readonly double _room;

    /// <summary>Cuts and lays out.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="headHeight">What the head of a sheet takes up, the first one's included.</param>
    public Sheets(TroubleshootingChart chart, Func<int, double> headHeight)
    {
        _chart = chart;
        _room = Height - (2 * Margin) - FooterHeight - headHeight(0) - PlacedChart.HeadingHeight;
        Cut();
        Pages = Lay(headHeight);
    }

    /// <summary>The sheets.</summary>
    public IReadOnlyList<Sheet> Pages { get; }

    private void Cut()
    {
        var heads = new SortedSet<int> { 1 };
        while (heads.Count > 0)
        {
            var first = heads.Min;
            heads.Remove(first);
            var paper = new PaperChart(_chart, first);
            _papers.Add(paper);
            _paperOf.Add(first, paper);
            heads.ExceptWith(Grow(paper, heads));
        }
    }

    /// <summary>Adds box after box, the likeliest first, as long as the chart fits; what does not fit becomes the head of another.</summary>
    private List<int> Grow(PaperChart paper, SortedSet<int> heads)
    {
        var taken = new List<int>();
        var open = new PriorityQueue<(int Box, int From, int Branch), (double, int)>();
        Offer(open, paper.First);
        while (open.TryDequeue(out var candidate, out _))
        {
            if (_paperOf.ContainsKey(candidate.Box))
            {
                continue;
            }

            paper.Add(candidate.Box, candidate.From, candidate.Branch);
            var tile = paper.Lay(_ => WideGuess);
            if (tile.Columns > MostColumns || tile.Height > _room)
            {
                paper.Remove(candidate.Box);
                heads.Add(candidate.Box);
                continue;
            }

            _paperOf.Add(candidate.Box, paper);
            taken.Add(candidate.Box);
            Offer(open, candidate.Box);
        }

        return taken;
    }

    private void Offer(PriorityQueue<(int Box, int From, int Branch), (double, int)> open, int from)
    {
        var box = _chart.Boxes[from - 1];
        for (var i = 0; i < box.Branches.Length; i++)
        {
            if (box.Branches[i].Next is { } next)
            {
                open.Enqueue((next, from, i), (-_chart.Boxes[next - 1].Reached, next));
            }
        }
    }

    private List<Sheet> Lay(Func<int, double> headHeight)
    {
        var sheets = new List<Sheet> { new(headHeight(0)) };
        foreach (var paper in _papers)
        {
            var placed = new PlacedChart(paper, paper.Lay(_ => WideGuess), CameFrom(paper));
            if (!sheets.Exists(sheet => sheet.TryPlace(placed, ChartGap)))
            {
                sheets.Add(new Sheet(headHeight(sheets.Count)));
                sheets[^1].Place(placed);
            }
        }

        Number(sheets);
        return sheets;
    }

    /// <summary>Numbers the charts, and lays them out once more with the numbers they name; a shorter number never makes a box taller.</summary>
    private void Number(List<Sheet> sheets)
    {
        List<PlacedChart> placed = [.. sheets.SelectMany(sheet => sheet.Charts)];
        var numbers = placed.Select((chart, place) => (chart.Paper, Number: place + 1)).ToDictionary(pair => pair.Paper, pair => pair.Number);
        foreach (var chart in placed)
        {
            chart.Number = numbers[chart.Paper];
            chart.Tile = chart.Paper.Lay(box => numbers[_paperOf[box]]);
        }
    }

    /// <summary>Boxes of other charts that send one here.</summary>
    private List<int> CameFrom(PaperChart paper)
    {
        var inside = paper.Boxes.ToHashSet();
        return [.. _chart.Boxes
            .Where(box => !inside.Contains(box.Number) && box.Branches.Any(branch => branch.Next is { } next && next == paper.First))
            .Select(box => box.Number)];
    }
}

/// <summary>One of the smaller charts where it stands on its sheet.</summary>
internal sealed class PlacedChart(PaperChart paper, Tile tile, IReadOnlyList<int> from)
{
    public const double HeadingHeight = 20;

    public PaperChart Paper => paper;

    /// <summary>Boxes that send one here.</summary>
    public IReadOnlyList<int> From => from;

    /// <summary>Its number, from 1.</summary>
    public int Number { get; set; }

    /// <summary>Its layout.</summary>
    public Tile Tile { get; set; } = tile;

    public double X { get; set; }

    public double Y { get; set; }

    public double Height => Tile.Height + HeadingHeight;
}

/// <summary>A sheet of paper: charts side by side in rows, as long as there is room.</summary>
internal sealed class Sheet(double headHeight)
{
    private readonly List<PlacedChart> _charts = [];
    private double _rowTop = Sheets.Margin + headHeight;
    private double _rowBottom = Sheets.Margin + headHeight;
    private double _right = Sheets.Margin;

    public IReadOnlyList<PlacedChart> Charts => _charts;

    /// <summary>Height; more than a sheet's only where a single box is taller.</summary>
    public double Height => Math.Max(Sheets.Height, _rowBottom + Sheets.FooterHeight + Sheets.Margin);

    private static double Bottom => Sheets.Height - Sheets.Margin - Sheets.FooterHeight;

    public bool TryPlace(PlacedChart chart, double gap)
    {
        var isFirst = _charts.Count == 0;
        var x = isFirst ? Sheets.Margin : _right + gap;
        if (x + chart.Tile.Width <= Sheets.Width - Sheets.Margin && _rowTop + chart.Height <= Bottom)
        {
            Put(chart, x);
            return true;
        }

        var top = _rowBottom + gap;
        if (isFirst || top + chart.Height > Bottom)
        {
            return false;
        }

        _rowTop = top;
        Put(chart, Sheets.Margin);
        return true;
    }

    /// <summary>Puts a chart on an empty sheet, whatever its size.</summary>
    public void Place(PlacedChart chart) => Put(chart, Sheets.Margin);

    private void Put(PlacedChart chart, double x)
    {
        (chart.X, chart.Y) = (x, _rowTop);
        _charts.Add(chart);
        _right = x + chart.Tile.Width;
        _rowBottom = Math.Max(_rowBottom, _rowTop + chart.Height);
    }
}
