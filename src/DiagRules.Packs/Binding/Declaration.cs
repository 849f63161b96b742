using System.Collections.Immutable;
using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Layers;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Makes the ids of a pack known: copies templates, puts members written out over their copies, refuses doubles, numbers what is left.</summary>
internal sealed class Declaration(Draft draft)
{
    private readonly SetExpansion _expansion = new(draft.Sets, draft.Problems);
    private readonly Dictionary<string, Candidate> _candidates = new(StringComparer.Ordinal);

    /// <summary>Declares all entries.</summary>
    /// <param name="pack">The pack, its bases merged in.</param>
    public void Declare(Layered pack)
    {
        foreach (var section in Section.All)
        {
            foreach (var entry in pack.Sections.GetValueOrDefault(section, []))
            {
                if (!Take(section, entry))
                {
                    return;
                }
            }
        }

        foreach (var (id, place) in pack.Removed)
        {
            draft.Removed[id] = place;
        }

        TakeAway(pack.RemovedCopies);
        BuiltInPattern.Put(_candidates, draft.Problems);
        foreach (var section in Section.All)
        {
            DeclareSection(section);
        }

        NumberNodes();
    }

    /// <summary>Takes in an entry and its copies; <see langword="false"/> when that exceeds the limit.</summary>
    private bool Take(string section, MapPair entry)
    {
        if (entry.Value is not MapNode)
        {
            return true;
        }

        if (_candidates.Count + _expansion.Count(entry) > draft.Limits.Entries)
        {
            draft.Problems.Add(
                ProblemCatalogue.LimitExceeded,
                entry.Key.Place,
                $"'{entry.Key.Value}' brings the pack to more than {draft.Limits.Entries} entries, copies of sets included (setting "
                + $"'{nameof(PackLimits.Entries)}').");
            return false;
        }

        foreach (var (id, copy) in _expansion.Expand(entry))
        {
            Add(id, new Candidate(section, copy.Key, (MapNode)copy.Value));
        }

        return true;
    }

    private void Add(string id, Candidate candidate)
    {
        if (!_candidates.TryGetValue(id, out var present))
        {
            _candidates.Add(id, candidate);
        }
        else if (present.Section == candidate.Section && present.IsCopy != candidate.IsCopy)
        {
            _candidates[id] = present.IsCopy ? candidate.Over(present, draft.Problems) : present.Over(candidate, draft.Problems);
        }
        else
        {
            DoubleIds.Report(id, (present.Section, present.Key), (candidate.Section, candidate.Key), draft.Problems);
        }
    }

    /// <summary>A layer may take away one copy of a template.</summary>
    private void TakeAway(IReadOnlyDictionary<string, (string Section, ScalarNode Key)> removed)
    {
        foreach (var (id, (section, key)) in removed)
        {
            if (_candidates.TryGetValue(id, out var present) && present is { IsCopy: true } && present.Section == section)
            {
                _candidates.Remove(id);
                draft.Removed[id] = key.Place;
                continue;
            }

            var near = Spelling.DidYouMean(id, _candidates.Where(candidate => candidate.Value.Section == section).Select(candidate => candidate.Key));
            draft.Problems.Add(ProblemCatalogue.NothingToRemove, key.Place, $"'{id}: remove' finds no {Section.Noun(section)} '{id}' to take away.{near}");
        }
    }

    private void DeclareSection(string section)
    {
        var entries = _candidates
            .Where(candidate => candidate.Value.Section == section)
            .OrderBy(candidate => candidate.Key, StringComparer.Ordinal)
            .Select(candidate => Declare(candidate.Key, candidate.Value))
            .ToImmutableArray();
        for (var i = 0; i < entries.Length; i++)
        {
            entries[i].Index = i;
        }

        draft.Sections[section] = entries;
    }

    private Declared Declare(string id, Candidate candidate)
    {
        var declared = new Declared(candidate.Section, id, candidate.Key.Place, candidate.Body);
        var isBuiltIn = id == Model.Finding.Pattern && candidate.Section == Section.Findings;
        declared.IsDamaged = IdWords.Read(new PlacedText(id, candidate.Key.Place), IdKind.Id, draft.Problems, isBuiltIn) is null;
        draft.TryAdd(declared);
        new RequiredKeys(draft.Problems).Check(id, declared.Place, declared.Body, declared.Shape);
        return declared;
    }

    /// <summary>Causes, preconditions, effects, findings, each in order of ids; preconditions continue the numbers of causes.</summary>
    private void NumberNodes()
    {
        var node = 0;
        foreach (var section in (string[])[Section.Causes, Section.Preconditions, Section.Effects, Section.Findings])
        {
            foreach (var declared in draft.Of(section))
            {
                declared.Node = node++;
                declared.Index = section == Section.Preconditions ? declared.Node : declared.Index;
            }
        }
    }

    /// <summary>What is written under an id, so far.</summary>
    internal sealed record Candidate(string Section, ScalarNode Key, MapNode Body)
    {
        public bool IsCopy => Key.Copy is not null;

        /// <summary>This one key by key over a copy.</summary>
        public Candidate Over(Candidate copy, ProblemSink problems)
        {
            var shape = FileShapes.EntryOf(Section);
            return this with { Body = new LayerMerge(null, null, problems).Map(copy.Body, Body, key => shape.Find(key)?.Form, Section) };
        }
    }
}
