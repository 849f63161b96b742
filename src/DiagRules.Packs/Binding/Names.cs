using DiagRules.Model.Problems;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Finds what an id written somewhere names, members put in, and remembers who named it.</summary>
internal sealed class Names(Draft draft)
{
    private readonly SetExpansion _expansion = new(draft.Sets, draft.Problems);

    /// <summary>The one entry that a text names, or <see langword="null"/> with the problem reported.</summary>
    /// <param name="text">The text.</param>
    /// <param name="from">The entry it stands in; <see langword="null"/> in recorded cases.</param>
    /// <param name="target">What may be named.</param>
    public Declared? One(ScalarNode text, Declared? from, Target target)
    {
        var id = Put(text);
        foreach (var set in MemberSets.Mentioned(id))
        {
            if (_expansion.Knows(set, text))
            {
                draft.Problems.Add(
                    ProblemCatalogue.SetNeedsMember,
                    text.Place,
                    $"'{text.Value}' stands for all members of '${set}', and here one {target.Noun} is named; write out the member.");
            }

            return null;
        }

        return Resolve(id, text, from, target);
    }

    /// <summary>What a text in a list or as a key names: <c>$set</c> stands for all members there.</summary>
    public IEnumerable<Declared> All(ScalarNode text, Declared? from, Target target) =>
        Ids(text).Select(id => Resolve(id, text, from, target)).OfType<Declared>();

    /// <summary>The ids that a text in a list or as a key stands for.</summary>
    public IEnumerable<string> Ids(ScalarNode text)
    {
        var id = Put(text);
        var mentioned = MemberSets.Mentioned(id);
        if (mentioned.Count == 0)
        {
            return [id];
        }

        if (_expansion.Count(mentioned) > draft.Limits.Entries)
        {
            draft.Problems.Add(
                ProblemCatalogue.LimitExceeded,
                text.Place,
                $"'{Excerpt.Of(text.Value)}' stands for more than {draft.Limits.Entries} ids (setting '{nameof(PackLimits.Entries)}').");
            return [];
        }

        return mentioned.All(set => _expansion.Knows(set, text))
            ? _expansion.Copies(mentioned).Select(copy => Substitution.Apply(new PlacedText(id, default), copy.Members.GetValueOrDefault).Value)
            : [];
    }

    /// <summary>The text with the members of its own copy put in.</summary>
    private static string Put(ScalarNode text) =>
        text.Copy is { } copy ? Substitution.Apply(text.Text, copy.Members.GetValueOrDefault).Value : text.Value;

    private Declared? Resolve(string id, ScalarNode text, Declared? from, Target target)
    {
        if (ReservedWords.IsYamlConstant(id))
        {
            // Refused wherever a word is expected, before anyone asks what it names.
            return null;
        }

        var named = draft.Find(id);
        if (named is null && draft.Removed.ContainsKey(id))
        {
            draft.Dangling.Add((id, text.Place));
            return null;
        }

        if (named is null)
        {
            draft.Problems.Add(ProblemCatalogue.NoSuchId, text.Place, $"No {target.Noun} '{Excerpt.Of(id)}'.{Spelling.DidYouMean(id, Candidates(target))}");
            return null;
        }

        if (!target.Fits(named))
        {
            draft.Problems.Add(
                ProblemCatalogue.WrongSection,
                text.Place,
                $"'{id}' is {Wording.An(named.Noun)}, and here {Wording.An(target.Noun)} is expected.{Spelling.DidYouMean(id, Candidates(target))}");
            return null;
        }

        if (from is not null)
        {
            draft.References.Add(new Reference(from, named, text.Place));
        }

        return named;
    }

    private IEnumerable<string> Candidates(Target target) => draft.All.Where(target.Fits).Select(declared => declared.Id);
}
