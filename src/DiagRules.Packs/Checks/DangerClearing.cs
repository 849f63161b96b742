using System.Text.RegularExpressions;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>Work with a hazard of the word <c>danger</c> should need an access state that takes the danger away.</summary>
/// <remarks>
/// Whether a state clears a hazard is judged by words: its title or steps share one of five letters or more with what the hazard says
/// under <c>clears</c>. That is a hint for the author, not a proof of safety.
/// </remarks>
internal sealed partial class DangerClearing(CheckScope scope)
{
    private const int Stem = 5;

    private readonly Dictionary<string, HashSet<string>> _stems = new(StringComparer.Ordinal);

    public void Run()
    {
        foreach (var (declared, step) in scope.Of<WorkStep>(Section.Checks, Section.Access, Section.Repairs))
        {
            Check(declared, step.Hazards, step.Needs);
        }

        foreach (var finding in scope.Draft.Of(Section.Findings).Where(finding => finding.IsAsked))
        {
            Check(finding, Named(finding, Section.Hazards), Named(finding, Section.Access));
        }
    }

    private IReadOnlyList<string> Named(Declared finding, string section) =>
        [.. scope.By[finding].Where(reference => reference.To.Section == section).Select(reference => reference.To.Id)];

    private void Check(Declared declared, IReadOnlyList<string> hazards, IReadOnlyList<string> needs)
    {
        foreach (var id in hazards)
        {
            if (scope.Draft.Find(id) is not { Entry: Hazard { SignalWord: SignalWord.Danger } hazard } named || Opened(declared, needs).Any(access => Clears(access, hazard)))
            {
                continue;
            }

            var candidates = scope.Of<Access>(Section.Access).Where(access => Clears(access.Entry, hazard)).Select(access => access.Entry.Id).ToList();
            scope.Warn(
                ProblemCatalogue.DangerNotCleared,
                scope.PlaceOf(declared, named),
                $"'{declared.Id}' has the danger '{id}' and needs no access state that clears it "
                + $"({hazard.Clears ?? "nothing is said to clear it"}); "
                + $"{(candidates.Count == 0 ? "add an access state that does" : $"{Wording.Or(candidates)} could")}, or accept it with a reason.",
                declared);
        }
    }

    /// <summary>The states that are open when the work is done: those needed, those these need, and the work itself where it is one.</summary>
    private Dictionary<string, Access>.ValueCollection Opened(Declared declared, IReadOnlyList<string> needs)
    {
        var opened = new Dictionary<string, Access>(StringComparer.Ordinal);
        var open = new Stack<string>(needs);
        if (declared.Entry is Access itself)
        {
            opened.Add(itself.Id, itself);
        }

        while (open.TryPop(out var id))
        {
            if (scope.Draft.Find(id)?.Entry is Access access && opened.TryAdd(id, access))
            {
                foreach (var needed in access.Needs)
                {
                    open.Push(needed);
                }
            }
        }

        return opened.Values;
    }

    private bool Clears(Access access, Hazard hazard) =>
        hazard.Clears is { } clears && Stems(string.Join(' ', access.Instructions.Prepend(access.Title))).Overlaps(Stems(clears));

    private HashSet<string> Stems(string text)
    {
        if (!_stems.TryGetValue(text, out var stems))
        {
            stems = [.. Words().Matches(text).Select(word => word.Value.ToLowerInvariant()[..Stem])];
            _stems.Add(text, stems);
        }

        return stems;
    }

    [GeneratedRegex(@"\p{L}{5,}")]
    private static partial Regex Words();
}
