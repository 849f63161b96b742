using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>
/// Which cautions somebody has read in full. Each is written out once, when it first matters, and called by name afterwards; one that
/// went away and comes back is written out again.
/// </summary>
internal sealed class HazardSheet(Pack pack)
{
    private HashSet<string> _read = new(StringComparer.Ordinal);

    /// <summary>Cautions of the machine as it stands: what rules and likely causes bring up, not what belongs to a step.</summary>
    public IReadOnlyList<HazardNotice> OfTheMachine(Diagnosis diagnosis) =>
        [.. diagnosis.Hazards.Where(hazard => hazard.From.Any(id => pack.Find(id) is Rule or Cause))];

    /// <summary>Cautions of one step and of the access it opens.</summary>
    public static IReadOnlyList<HazardNotice> OfStep(Diagnosis diagnosis, NextStep step) =>
        [.. diagnosis.Hazards.Where(hazard => step.Hazards.Contains(hazard.Hazard, StringComparer.Ordinal))];

    /// <summary>Whether a caution stands in full further up.</summary>
    public bool IsRead(HazardNotice hazard) => _read.Contains(hazard.Hazard);

    /// <summary>Writes cautions: those not read yet in full, the others by name.</summary>
    public void Write(Page page, int indent, IReadOnlyList<HazardNotice> hazards)
    {
        var known = hazards.Where(IsRead).ToList();
        foreach (var hazard in hazards.Where(hazard => _read.Add(hazard.Hazard)))
        {
            HazardText.Write(page, indent, hazard);
        }

        if (known.Count > 0)
        {
            page.Item(indent, "Mind", HazardText.LabelWidth, HazardText.Names(known) + " (in full above)");
        }
    }

    /// <summary>Forgets cautions that no longer matter, so that they are written out in full should they come back.</summary>
    public void KeepOnly(Diagnosis diagnosis) =>
        _read = [.. _read.Where(id => diagnosis.Hazards.Any(hazard => hazard.Hazard == id))];
}
