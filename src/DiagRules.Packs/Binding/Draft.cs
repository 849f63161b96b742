using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>A pack in the making: its ids and what they turn into, and everything that reading one entry needs of the others.</summary>
internal sealed class Draft
{
    private readonly Dictionary<string, Declared> _byId;
    private HashSet<string> _chassis = [];
    private Declared[]? _nodes;
    private IReadOnlyList<string?>? _differing;

    public Draft(PackLimits limits, ProblemSink problems)
        : this(limits, problems, new(StringComparer.Ordinal), new(problems))
    {
    }

    private Draft(PackLimits limits, ProblemSink problems, Dictionary<string, Declared> byId, Currencies money)
    {
        Limits = limits;
        Problems = problems;
        _byId = byId;
        Money = money;
    }

    public PackLimits Limits { get; }

    public ProblemSink Problems { get; }

    public MemberSets Sets { get; set; } = MemberSets.None;

    /// <summary>Chassis codes in the order of <c>pack.yaml</c>.</summary>
    public ImmutableArray<string> Chassis
    {
        get;
        set
        {
            field = value;
            _chassis = value.ToHashSet(StringComparer.Ordinal);
        }
    } = [];

    /// <summary>Whether a chassis is declared.</summary>
    public bool HasChassis(string code) => _chassis.Contains(code);

    /// <summary>
    /// Chassis on which parameters differ, with one on which they do not; a single <see langword="null"/> where none are declared.
    /// Known when the parameters are bound.
    /// </summary>
    public IReadOnlyList<string?> DifferingChassis => _differing ??= FindDifferingChassis();

    public Currencies Money { get; }

    public ImmutableArray<CalculationLibrary> Calculations { get; set; } = [];

    /// <summary>Whether a library that the pack names was not found; what it calls and is not there may be in that one.</summary>
    public bool LacksLibrary { get; set; }

    /// <summary>Probability words by the pack that wrote them: a word means what it means there, also after layering.</summary>
    public Dictionary<string, ProbabilityWords> Words { get; private init; } = new(StringComparer.Ordinal);

    public ImmutableSortedDictionary<string, string> Systems { get; set; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Entries by section, in ordinal order of ids.</summary>
    public Dictionary<string, ImmutableArray<Declared>> Sections { get; private init; } = new(StringComparer.Ordinal);

    /// <summary>Ids that a layer took away, with the place; what still refers to them is reported there.</summary>
    public Dictionary<string, SourcePlace> Removed { get; } = new(StringComparer.Ordinal);

    /// <summary>Places that refer to what was taken away.</summary>
    public List<(string Id, SourcePlace Place)> Dangling { get; } = [];

    /// <summary>Every mention of an entry by another.</summary>
    public List<Reference> References { get; } = [];

    /// <summary>The same pack, with problems going elsewhere: those of recorded cases do not refuse it.</summary>
    public Draft For(ProblemSink problems) => new(Limits, problems, _byId, Money)
    {
        Sets = Sets,
        Chassis = Chassis,
        Calculations = Calculations,
        Words = Words,
        Systems = Systems,
        Sections = Sections,
    };

    public IEnumerable<string> Ids => _byId.Keys;

    public ImmutableArray<Declared> Of(string section) => Sections.TryGetValue(section, out var entries) ? entries : [];

    public Declared? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>Adds an id, unless it is there already.</summary>
    public bool TryAdd(Declared declared) => _byId.TryAdd(declared.Id, declared);

    /// <summary>The graded entry with this position among them.</summary>
    public Declared Node(int node)
    {
        _nodes ??= [.. All.Where(declared => declared.IsGraded).OrderBy(declared => declared.Node)];
        return _nodes[node];
    }

    public ProbabilityWords WordsOf(string pack) => Words.GetValueOrDefault(pack, ProbabilityWords.Default);

    /// <summary>Everything declared, section by section.</summary>
    public IEnumerable<Declared> All => Section.All.SelectMany(section => Of(section));

    private List<string?> FindDifferingChassis()
    {
        var differing = Of(Section.Parameters).Select(parameter => parameter.Entry).OfType<Parameter>().SelectMany(parameter => parameter.ByChassis.Keys).ToHashSet(StringComparer.Ordinal);
        var alike = Chassis.FirstOrDefault(chassis => !differing.Contains(chassis));
        return Chassis.IsEmpty ? [null] : [.. Chassis.Where(differing.Contains), .. alike is null ? [] : new[] { alike }];
    }
}

/// <summary>One entry mentions another.</summary>
/// <param name="From">The entry that mentions.</param>
/// <param name="To">The entry mentioned.</param>
/// <param name="Place">Where.</param>
internal readonly record struct Reference(Declared From, Declared To, SourcePlace Place);
