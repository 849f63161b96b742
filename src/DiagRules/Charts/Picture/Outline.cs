namespace DiagRules.Charts.Picture;

/// <summary>
/// What rows a group of boxes takes up, slot by slot: even slots are columns of boxes, odd ones the gaps between them, in which lines run. Within a slot
/// everything from the topmost to the lowest counts as taken.
/// </summary>
internal sealed class Outline
{
    private readonly List<(double Top, double Bottom)> _slots = [];

    /// <summary>Number of slots, empty ones in between included.</summary>
    public int Slots => _slots.Count;

    /// <summary>The lowest row taken.</summary>
    public double Bottom => _slots.Max(slot => slot.Bottom);

    /// <summary>Takes rows of one slot.</summary>
    public void Take(int slot, double top, double bottom)
    {
        while (_slots.Count <= slot)
        {
            _slots.Add((double.PositiveInfinity, double.NegativeInfinity));
        }

        _slots[slot] = (Math.Min(_slots[slot].Top, top), Math.Max(_slots[slot].Bottom, bottom));
    }

    /// <summary>Takes all rows of another outline, moved to the right and down.</summary>
    public void Take(Outline other, int right, double down)
    {
        for (var slot = 0; slot < other.Slots; slot++)
        {
            Take(slot + right, other._slots[slot].Top + down, other._slots[slot].Bottom + down);
        }
    }

    /// <summary>How far down another outline must move to lie below this one in every slot.</summary>
    public double RoomFor(Outline other, double gap)
    {
        double down = 0;
        for (var slot = 0; slot < Math.Min(Slots, other.Slots); slot++)
        {
            var distance = _slots[slot].Bottom + gap - other._slots[slot].Top;
            down = double.IsFinite(distance) ? Math.Max(down, distance) : down;
        }

        return down;
    }
}
