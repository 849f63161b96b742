using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>What the words of one condition mean: the pack's entries, and the members that sets stand for at the moment.</summary>
internal sealed class BindingScope
{
    private readonly ISymbols _symbols;
    private readonly ConditionSource _source;
    private readonly ConditionLimits _limits;
    private readonly List<(string Set, string Member)> _members = [];
    private int _size;

    public BindingScope(ISymbols symbols, ConditionSource source, ConditionLimits limits)
    {
        _symbols = symbols;
        _source = source;
        _limits = limits;
    }

    public ISymbols Symbols => _symbols;

    public ConditionLimits Limits => _limits;

    /// <summary>Whether the condition became so large that the rest of it is left unread.</summary>
    public bool IsTooLarge => _size > _limits.Size;

    /// <summary>The place of a part, with the members it was copied for.</summary>
    public SourcePlace Place(int start, int end)
    {
        var place = _source.Place(start, end);
        return Member is { } member ? place with { Member = place.Member is null ? member : $"{place.Member}, {member}" } : place;
    }

    /// <summary>The text of a part, members put in.</summary>
    public string Text(int start, int end) => SetNames.Replace(_source.Text(start, end), MemberOf);

    public string Text(TermSyntax term) => Text(term.Start, term.End);

    public void Report(ProblemDescriptor descriptor, int start, int end, string message)
    {
        var place = Place(start, end);
        _source.Report(descriptor, start, end, message, place.Member);
    }

    /// <summary><c> Did you mean ...?</c>, or nothing.</summary>
    public string DidYouMean(string word, IEnumerable<string> candidates) => _source.HasProposals ? Spelling.DidYouMean(word, candidates) : "";

    /// <summary>Counts one more part of the condition as written out; <see langword="false"/> when that is too much.</summary>
    public bool Count(int start, int end)
    {
        _size++;
        if (_size == _limits.Size + 1)
        {
            Report(
                ProblemCatalogue.LimitExceeded,
                start,
                end,
                $"Written out for all members the condition has more than {_limits.Size} parts; split it into findings of its own (setting 'ConditionSize').");
        }

        return !IsTooLarge;
    }

    /// <summary>Does something for one member of a set.</summary>
    public T For<T>(string set, string member, Func<T> read)
    {
        _members.Add((set, member));
        var result = read();
        _members.RemoveAt(_members.Count - 1);
        return result;
    }

    /// <summary>The members of the set that <c>any $side</c> names, or <see langword="null"/> after reporting that there is none.</summary>
    public ImmutableArray<string>? MembersOf(NameSyntax set)
    {
        var members = _symbols.Members(set.Text[1..]);
        if (members is null)
        {
            ReportNoSet(set.Text, set.Text[1..], set.Start);
        }

        return members;
    }

    /// <summary>
    /// The id that a word stands for, members put in; <see langword="null"/> after reporting a set that is not there or that stands for
    /// several members here.
    /// </summary>
    public string? IdOf(NameSyntax name)
    {
        if (!name.Text.Contains('$', StringComparison.Ordinal))
        {
            return name.Text;
        }

        foreach (var set in SetNames.In(name.Text))
        {
            if (MemberOf(set) is not null)
            {
                continue;
            }

            if (_symbols.Members(set) is not { } members)
            {
                ReportNoSet(name.Text, set, name.Start);
            }
            else
            {
                Report(
                    ProblemCatalogue.SetNeedsMember,
                    name.Start,
                    name.End,
                    $"'{name.Text}' stands for {Wording.And(members)} at once, and a test looks at one; use 'any ${set} ( ... )' or 'every ${set} ( ... )'.");
            }

            return null;
        }

        return SetNames.Replace(name.Text, MemberOf);
    }

    /// <summary>The entry that a word names, or <see langword="null"/> after reporting that there is none.</summary>
    public Entry? Entry(NameSyntax name)
    {
        var id = IdOf(name);
        if (id is null)
        {
            return null;
        }

        var entry = _symbols.Find(id);
        if (entry is null && !_symbols.IsRefused(id, Place(name.Start, name.End)))
        {
            UnknownNames.Report(this, name, id);
        }

        return entry;
    }

    private string? Member => _members.Count == 0 ? null : string.Join(", ", _members.Select(bound => bound.Member));

    private string? MemberOf(string set)
    {
        for (var i = _members.Count - 1; i >= 0; i--)
        {
            if (_members[i].Set == set)
            {
                return _members[i].Member;
            }
        }

        return _symbols.Copied.GetValueOrDefault(set);
    }

    private void ReportNoSet(string text, string set, int start)
    {
        var sets = _symbols.Sets.Order(StringComparer.Ordinal).Select(name => $"${name}").ToList();
        Report(
            ProblemCatalogue.NoSuchSet,
            start,
            start + text.Length,
            sets.Count == 0
                ? $"'${set}' names no set; the pack has no 'sets'."
                : $"'${set}' names no set; the pack has {Wording.And(sets)}.");
    }
}
