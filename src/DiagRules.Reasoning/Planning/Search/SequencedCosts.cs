namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Costs where accesses may exclude each other: what an opening costs depends on what was opened last.</summary>
internal sealed class SequencedCosts(CompiledSituation compiled) : StepCosts(compiled)
{
    internal override Bits AfterCheck(Bits contents, int check, out double cost)
    {
        var step = Compiled.Checks[check];
        // Validation has made sure that what a step needs can be open together.
        Compiled.Openings.TryOpen(contents, step.Needs, out var opening, out var after);
        cost = step.Cost + opening;
        return step.Gate >= 0 ? after.With(step.Gate) : after;
    }

    internal override Bits AfterRepair(Bits contents, int repair, out double cost)
    {
        var step = Compiled.Repairs[repair];
        cost = step.Cost;
        foreach (var gate in step.Gates)
        {
            if (contents.Contains(gate))
            {
                continue;
            }

            if (CheckOf(gate) < 0)
            {
                cost = double.PositiveInfinity;
                return contents;
            }

            contents = AfterCheck(contents, CheckOf(gate), out var checking);
            cost += checking;
        }

        Compiled.Openings.TryOpen(contents, step.Needs, out var opening, out var after);
        cost += opening;
        return after;
    }

    internal override double LeastRepairCost(Bits contents, int repair)
    {
        var step = Compiled.Repairs[repair];
        Compiled.Openings.TryOpen(contents, step.Needs, out var opening, out _);
        var cost = step.Cost + opening;
        foreach (var gate in step.Gates)
        {
            if (!contents.Contains(gate) && !Compiled.GatesThatMayFall.Contains(gate))
            {
                cost += CheckOf(gate) < 0 ? double.PositiveInfinity : Compiled.Checks[CheckOf(gate)].Cost;
            }
        }

        return cost;
    }
}
