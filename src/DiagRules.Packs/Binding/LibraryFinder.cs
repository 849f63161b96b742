using System.Collections.Immutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Finds the calculation libraries a pack names.</summary>
internal sealed class LibraryFinder(IReadOnlyList<CalculationLibrary> libraries, ProblemSink problems)
{
    /// <summary>Whether any was not found so far.</summary>
    public bool IsAnyMissing { get; private set; }

    /// <summary>The newest library of each name that fits, in ordinal order of names.</summary>
    public ImmutableArray<CalculationLibrary> Find(IEnumerable<ScalarNode> texts) =>
    [
        .. texts.Select(text => VersionReader.ReadVersionedId(text.Text, problems) is { } wanted ? Find(wanted) : null)
            .OfType<CalculationLibrary>()
            .DistinctBy(library => library.Name)
            .OrderBy(library => library.Name, StringComparer.Ordinal),
    ];

    private CalculationLibrary? Find(VersionedId wanted)
    {
        var named = libraries.Where(library => library.Name == wanted.Id).OrderByDescending(library => library.Version).ToList();
        var found = named.Find(library => wanted.Range.Contains(SemanticVersion.From(library.Version)));
        if (found is null)
        {
            IsAnyMissing = true;
            problems.Add(ProblemCatalogue.PluginMissing, wanted.Place, Message(wanted, named));
        }

        return found;
    }

    private string Message(VersionedId wanted, List<CalculationLibrary> named)
    {
        if (named.Count > 0)
        {
            return $"'{wanted.Id}' is asked for in version {wanted.Range}; the host has {string.Join(", ", named.Select(library => library.Version))}.";
        }

        var names = libraries.Select(library => library.Name).Distinct().ToList();
        return $"No calculation library '{wanted.Id}' ({wanted.Range} is asked for); the host has {(names.Count == 0 ? "none" : Wording.And(names))}.{Spelling.DidYouMean(wanted.Id, names)}";
    }
}
