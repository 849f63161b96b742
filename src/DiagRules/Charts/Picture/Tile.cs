namespace DiagRules.Charts.Picture;

/// <summary>
/// A box with what follows it: after a check to the right, one below the other; after a repair below it. Followers move up until they meet what is above
/// them, but lines keep the gap between two columns to themselves as long as they are in it: so boxes cannot overlap and lines cannot cross or touch.
/// </summary>
internal sealed class Tile
{
    public const double ColumnGap = 27;
    private const double RowGap = 9;
    private const double DownGap = 14;
    private const string Line = "#222";

    private readonly BoxPicture _picture;
    private readonly List<(Tile Tile, double Top)> _right = [];
    private readonly Tile? _below;
    private readonly Outline _outline = new();

    public Tile(BoxPicture picture, IReadOnlyList<Tile> right, Tile? below)
    {
        _picture = picture;
        _below = below;
        _outline.Take(0, 0, picture.Height);
        if (below is not null)
        {
            _outline.Take(below._outline, 0, picture.Height + DownGap);
        }

        Stack(right);
    }

    /// <summary>Columns it takes up.</summary>
    public int Columns => (_outline.Slots + 1) / 2;

    /// <summary>Its height with all that follows.</summary>
    public double Height => _outline.Bottom;

    /// <summary>Its width with all that follows.</summary>
    public double Width => (Columns * BoxPicture.Width) + ((Columns - 1) * ColumnGap);

    private double Inlet => _picture.Inlet;

    public void Draw(SvgCanvas canvas, double x, double y)
    {
        _picture.Draw(canvas, x, y);
        if (_below is not null)
        {
            DrawBelow(canvas, _below, x, y + _picture.Height);
        }

        if (_right.Count > 0)
        {
            DrawRight(canvas, x + BoxPicture.Width, y);
        }
    }

    private void Stack(IReadOnlyList<Tile> right)
    {
        var followers = new Outline();
        foreach (var tile in right)
        {
            var top = followers.RoomFor(tile._outline, RowGap);
            _right.Add((tile, top));
            followers.Take(tile._outline, 0, top);
        }

        if (right.Count > 0)
        {
            _outline.Take(followers, 2, 0);
            var (highest, lowest) = Trunk();
            _outline.Take(1, highest, lowest);
        }
    }

    /// <summary>How far up and down the line behind the box reaches.</summary>
    private (double Highest, double Lowest) Trunk()
    {
        var inlets = _right.Select(follower => follower.Top + follower.Tile.Inlet).ToList();
        return (Math.Min(_picture.Outlet, inlets.Min()), Math.Max(_picture.Outlet, inlets.Max()));
    }

    private static void DrawBelow(SvgCanvas canvas, Tile below, double x, double top)
    {
        var middle = Lettering.Number(x + 24);
        canvas.Path($"M{middle} {Lettering.Number(top)}v{Lettering.Number(DownGap - 5)}", "none", Line, 1.3);
        canvas.Path($"M{middle} {Lettering.Number(top + DownGap)}l-4 -7h8z", Line);
        below.Draw(canvas, x, top + DownGap);
    }

    private void DrawRight(SvgCanvas canvas, double edge, double y)
    {
        var trunk = edge + (ColumnGap / 2) - 3;
        var (highest, lowest) = Trunk();
        canvas.Path($"M{Lettering.Number(edge)} {Lettering.Number(y + _picture.Outlet)}H{Lettering.Number(trunk)}", "none", Line, 1.3);
        canvas.Path($"M{Lettering.Number(trunk)} {Lettering.Number(y + highest)}V{Lettering.Number(y + lowest)}", "none", Line, 1.3);
        foreach (var (tile, top) in _right)
        {
            var inlet = Lettering.Number(y + top + tile.Inlet);
            canvas.Path($"M{Lettering.Number(trunk)} {inlet}H{Lettering.Number(edge + ColumnGap - 5)}", "none", Line, 1.3);
            canvas.Path($"M{Lettering.Number(edge + ColumnGap)} {inlet}l-7 -4v8z", Line);
            tile.Draw(canvas, edge + ColumnGap, y + top);
        }
    }
}
