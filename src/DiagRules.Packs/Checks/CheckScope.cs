using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>What the checks of a whole pack look at, and how they report.</summary>
internal sealed class CheckScope(Draft draft, Head head)
{
    private ILookup<Declared, Reference>? _by;
    private ILookup<int, (Declared Parent, ShownGrades Shown)>? _parents;

    public Draft Draft { get; } = draft;

    public Head Head { get; } = head;

    /// <summary>For each child by node, who shows it what.</summary>
    public ILookup<int, (Declared Parent, ShownGrades Shown)> Parents => _parents ??= Of<Graded>(Section.Causes, Section.Preconditions, Section.Effects, Section.Findings)
        .SelectMany(parent => parent.Entry.Shows.Select(shown => (parent.Declared, shown)))
        .ToLookup(link => link.shown.Child, link => (link.Declared, link.shown));

    /// <summary>What each entry refers to.</summary>
    public ILookup<Declared, Reference> By => _by ??= Draft.References.ToLookup(reference => reference.From);

    /// <summary>The first place where an entry refers to another.</summary>
    public SourcePlace PlaceOf(Declared from, Declared to) =>
        By[from].Where(reference => reference.To == to).Select(reference => reference.Place).Order().FirstOrDefault(from.Place);

    /// <summary>The entries of sections that were made, each with its declaration, in order.</summary>
    public IEnumerable<(Declared Declared, T Entry)> Of<T>(params string[] sections)
        where T : Entry =>
        sections.SelectMany(section => Draft.Of(section)).Where(declared => declared.Entry is T).Select(declared => (declared, (T)declared.Entry!));

    /// <summary>Where a key of an entry is written, or its id.</summary>
    public static SourcePlace PlaceOf(Declared declared, string key) => declared.Body.Find(key)?.Key.Place ?? declared.Place;

    /// <summary>Where the value of a key is written, or its id.</summary>
    public static SourcePlace ValueOf(Declared declared, string key) => declared.Body.Find(key)?.Value.Place ?? declared.Place;

    public void Error(ProblemDescriptor descriptor, SourcePlace place, string message) => Draft.Problems.Add(descriptor, place, message);

    /// <summary>Reports a warning about entries, unless something worse was said of one of them; any of them may accept it, and so may the pack.</summary>
    public void Warn(ProblemDescriptor descriptor, SourcePlace place, string message, params ReadOnlySpan<Declared> about)
    {
        var reason = Head.Accepts.GetValueOrDefault(descriptor.Code);
        foreach (var declared in about)
        {
            if (declared.IsDamaged)
            {
                return;
            }

            reason = declared.Accepts.GetValueOrDefault(descriptor.Code) ?? reason;
        }

        Draft.Problems.Add(new Problem(descriptor, message, place) { Accepted = reason });
    }
}
