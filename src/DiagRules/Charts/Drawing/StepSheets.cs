using System.Collections.Immutable;
using DiagRules.Model;

namespace DiagRules.Charts.Drawing;

/// <summary>Collects how each step of a chart is done, access first, in the order of the boxes.</summary>
internal sealed class StepSheets(Pack pack)
{
    private readonly List<(WorkStep Work, List<int> Boxes)> _steps = [];

    public ImmutableArray<ChartStep> Write(IEnumerable<FoldedBox> boxes)
    {
        foreach (var box in boxes.Where(box => !box.Step.IsSameCheck))
        {
            foreach (var access in box.Step.Opens.Select(pack.Find<Access>).OfType<Access>())
            {
                Note(access, box.Number);
            }

            if (box.Step.Work is { } work)
            {
                Note(work, box.Number);
            }
        }

        return [.. _steps.Select(step => Write(step.Work, step.Boxes))];
    }

    private void Note(WorkStep work, int box)
    {
        var known = _steps.Find(step => ReferenceEquals(step.Work, work));
        if (known.Boxes is null)
        {
            _steps.Add(known = (work, []));
        }

        known.Boxes.Add(box);
    }

    private ChartStep Write(WorkStep work, List<int> boxes) => new()
    {
        Id = work.Id,
        Title = work.Title,
        Boxes = [.. boxes],
        Tools = work.Tools,
        Instructions = work.Instructions,
        Hazards = [.. work.Hazards.OrderByDescending(id => pack.Find<Hazard>(id)?.SignalWord).ThenBy(id => id, StringComparer.Ordinal)],
        Parts = work is Repair { Parts: var parts } ? parts : [],
        Fasteners = work is Repair { Fasteners: var fasteners } ? [.. fasteners.Select(Write)] : [],
        Proofs = work is Repair { VerifyBy: var proofs } ? [.. proofs.Select(Write)] : [],
    };

    private static string Write(Fastener fastener)
    {
        var size = fastener.AcrossFlats is { } flats ? $", {flats} across flats" : "";
        return fastener.At + size + (fastener.Torque is { } torque ? $", tighten to {torque}" : "");
    }

    private ChartProof Write(Verification proof)
    {
        var check = pack.FindCheck(proof.Check);
        var findings = proof.Findings.IsEmpty && check is not null ? check.Gives : proof.Findings;
        var wanted = findings.Select(pack.Find<Finding>).OfType<Finding>().Select(finding => $"{finding.Title.TrimEnd('?', '.')}: {finding.Grades[0].Replace('-', ' ')}");
        return new ChartProof((check?.Title ?? proof.Check).TrimEnd('.'), proof.Times, [.. wanted]);
    }
}
