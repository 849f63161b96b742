using System.Numerics;

namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Costs where nothing that was opened closes again: a step then costs itself plus whatever of a fixed set is not open yet.
/// </summary>
/// <remarks>
/// The set is what it takes from the start. An access that was closed at the start is opened after what it needs, so once it is open all of that is.
/// A gate is an element like an access; it costs its check.
/// </remarks>
internal sealed class MaskCosts : StepCosts
{
    private readonly double[] _elementCosts;
    private readonly ulong[] _checkMasks;
    private readonly ulong[] _repairMasks;

    internal MaskCosts(CompiledSituation compiled)
        : base(compiled)
    {
        var start = compiled.OpenAtStart();
        _elementCosts = [.. compiled.Accesses.Select(a => a.Cost), .. compiled.CheckOfGate.Select(c => c < 0 ? double.PositiveInfinity : compiled.Checks[c].Cost)];
        _checkMasks = [.. compiled.Checks.Select(c => Opening(start, c.Needs))];
        _repairMasks = [.. compiled.Repairs.Select(r => Opening(start, r.Needs))];
    }

    /// <summary>Whether this way of reckoning holds for a situation.</summary>
    internal static bool Applies(CompiledSituation compiled) =>
        !compiled.Openings.HasExclusions && compiled.AccessCount + compiled.CheckOfGate.Length <= 64;

    internal override Bits AfterCheck(Bits contents, int check, out double cost)
    {
        var step = Compiled.Checks[check];
        cost = step.Cost + Sum(_checkMasks[check] & ~contents.Mask);
        return contents.With(_checkMasks[check] | Bit(step.Gate));
    }

    internal override Bits AfterRepair(Bits contents, int repair, out double cost)
    {
        var missing = Missing(repair, contents);
        cost = Cost(repair, missing);
        return contents.With(missing);
    }

    internal override double LeastRepairCost(Bits contents, int repair)
    {
        var mask = _repairMasks[repair];
        foreach (var gate in Compiled.Repairs[repair].Gates)
        {
            mask |= Compiled.GatesThatMayFall.Contains(gate) ? 0 : GateMask(gate, contents.Mask);
        }

        return Compiled.Repairs[repair].Cost + Sum(mask & ~contents.Mask);
    }

    /// <summary>What is to be opened for a repair, the gates that are shut and what their checks need included.</summary>
    internal ulong Missing(int repair, Bits contents)
    {
        var mask = _repairMasks[repair];
        foreach (var gate in Compiled.Repairs[repair].Gates)
        {
            mask |= GateMask(gate, contents.Mask);
        }

        return mask & ~contents.Mask;
    }

    /// <summary>What a repair costs with this much to open.</summary>
    internal double Cost(int repair, ulong missing) => Compiled.Repairs[repair].Cost + Sum(missing);

    private ulong GateMask(int gate, ulong open)
    {
        var isOpen = (open >> gate & 1) != 0;
        return isOpen ? 0 : Bit(gate) | (CheckOf(gate) < 0 ? 0 : _checkMasks[CheckOf(gate)]);
    }

    private static ulong Bit(int gate) => gate < 0 ? 0 : 1UL << gate;

    private ulong Opening(Bits start, int[] needs)
    {
        Compiled.Openings.TryOpen(start, needs, out _, out var after);
        return after.Mask & ~start.Mask;
    }

    private double Sum(ulong elements)
    {
        var sum = 0.0;
        for (; elements != 0; elements &= elements - 1)
        {
            sum += _elementCosts[BitOperations.TrailingZeroCount(elements)];
        }

        return sum;
    }
}
