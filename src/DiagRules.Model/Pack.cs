using System.Collections.Immutable;
using DiagRules.Model.Calculations;
using DiagRules.Model.Cases;
using DiagRules.Model.Problems;

namespace DiagRules.Model;

/// <summary>
/// A rule pack as it was read: the knowledge about one machine, with the place of every entry. Immutable and thread-safe.
/// </summary>
/// <remarks>Made by <c>PackLoader</c>; entries refer to each other by id or by position, checked when the pack was loaded.</remarks>
public sealed class Pack
{
    /// <summary>Cost of giving the whole job to a specialist when a pack says nothing: a day's work, in minutes' worth.</summary>
    public const double DefaultSpecialistMinutes = 480;

    /// <summary>Share of what no listed cause explains when a pack says nothing: 5 % of all.</summary>
    public const double DefaultUnlistedFraction = 0.05;

    private readonly Lazy<ImmutableDictionary<string, Entry>> _byId;

    /// <summary>Makes an empty pack; the loader fills it.</summary>
    public Pack() => _byId = new(IndexEntries);

    /// <summary>Id of the pack.</summary>
    public required string Id { get; init; }

    /// <summary>Semantic version as written.</summary>
    public required string Version { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Where <c>pack:</c> is written.</summary>
    public SourcePlace Place { get; init; }

    /// <summary>Chassis codes a host may ask for; empty when the pack makes no difference.</summary>
    public ImmutableArray<string> Chassis { get; init; } = [];

    /// <summary>Language of the texts, a BCP 47 tag; <c>en</c> unless stated.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Money for an hour of labour, or <see langword="null"/> when costs are minutes' worth only.</summary>
    public double? LabourPerHour { get; init; }

    /// <summary>Currency of <see cref="LabourPerHour"/> and of all expenses, or <see langword="null"/>.</summary>
    public string? Currency { get; init; }

    /// <summary>What it costs to give the whole job to a specialist.</summary>
    public Expense SpecialistCost { get; init; } = new(DefaultSpecialistMinutes, 0);

    /// <summary>Share of what no listed cause explains; <see langword="null"/> means 5 % of all.</summary>
    public double? Unlisted { get; init; }

    /// <summary>How much less likely than on its own a further cause is beside the primary one, 0..1.</summary>
    public double Coexistence { get; init; } = 0.05;

    /// <summary>How far observers are believed; 1 for those not listed.</summary>
    public ImmutableDictionary<Skill, double> Trust { get; init; } = ImmutableDictionary<Skill, double>.Empty;

    /// <summary>What a replay of the cases must reach, by measure.</summary>
    public ImmutableDictionary<string, double> Acceptance { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Warnings about the pack as a whole that it accepts: code and reason.</summary>
    public ImmutableDictionary<string, string> Accepts { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Keys of the host's own in <c>pack.yaml</c>, <c>x-...</c>, with what stands under them.</summary>
    public ImmutableDictionary<string, HostValue> HostKeys { get; init; } = HostValue.None;

    /// <summary>Title of each system word.</summary>
    public ImmutableDictionary<string, string> Systems { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Calculation libraries its conditions call.</summary>
    public ImmutableArray<CalculationLibrary> Calculations { get; init; } = [];

    /// <summary>Measured and derived numbers.</summary>
    public ImmutableArray<Reading> Readings { get; init; } = [];

    /// <summary>Graded states that can be observed.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Graded states inside the machine.</summary>
    public ImmutableArray<Effect> Effects { get; init; } = [];

    /// <summary>Causes, then preconditions.</summary>
    public ImmutableArray<Cause> Causes { get; init; } = [];

    /// <summary>
    /// All graded entries by node: causes and preconditions first (so a cause's node is its <see cref="Entry.Index"/>), then
    /// effects and findings.
    /// </summary>
    public ImmutableArray<Graded> Nodes { get; init; } = [];

    /// <summary>Specification values.</summary>
    public ImmutableArray<Parameter> Parameters { get; init; } = [];

    /// <summary>How jobs begin.</summary>
    public ImmutableArray<Complaint> Complaints { get; init; } = [];

    /// <summary>Forward-chaining rules.</summary>
    public ImmutableArray<Rule> Rules { get; init; } = [];

    /// <summary>What can be found out; questions of findings that no check gives are among them.</summary>
    public ImmutableArray<Check> Checks { get; init; } = [];

    /// <summary>States to be reached before a step.</summary>
    public ImmutableArray<Access> Access { get; init; } = [];

    /// <summary>What can hurt.</summary>
    public ImmutableArray<Hazard> Hazards { get; init; } = [];

    /// <summary>What puts causes right; the <c>restore</c> of preconditions without a repair of their own is among them.</summary>
    public ImmutableArray<Repair> Repairs { get; init; } = [];

    /// <summary>Recorded cases that could be read.</summary>
    public ImmutableArray<RecordedCase> Cases { get; init; } = [];

    /// <summary>All entries that have an id of their own: not the implied checks and repairs. In no particular order.</summary>
    public IEnumerable<Entry> Entries => _byId.Value.Values;

    /// <summary>The entry with this id, or <see langword="null"/>. Implied checks and repairs are found in their own lists only.</summary>
    public Entry? Find(string id) => _byId.Value.GetValueOrDefault(id);

    /// <summary>The entry with this id if it is of this kind, or <see langword="null"/>.</summary>
    public T? Find<T>(string id)
        where T : Entry => Find(id) as T;

    /// <summary>The check with this id, a question included, or <see langword="null"/>.</summary>
    public Check? FindCheck(string id) => Find<Check>(id) ?? Checks.FirstOrDefault(check => check.IsQuestion && check.Id == id);

    /// <summary>The repair with this id, a restoring of a precondition included, or <see langword="null"/>.</summary>
    public Repair? FindRepair(string id) => Find<Repair>(id) ?? Repairs.FirstOrDefault(repair => repair.IsRestore && repair.Id == id);

    /// <summary>What an expense is worth in minutes.</summary>
    /// <param name="expense">The expense.</param>
    /// <param name="labourPerHour">The host's own labour rate; the pack's when <see langword="null"/>.</param>
    public double MinutesWorth(Expense expense, double? labourPerHour = null)
    {
        var rate = labourPerHour ?? LabourPerHour;
        return expense.MinutesWorth + (expense.Money == 0 || rate is null or 0 ? 0 : expense.Money / rate.Value * 60);
    }

    private ImmutableDictionary<string, Entry> IndexEntries()
    {
        var all = Readings.Cast<Entry>()
            .Concat(Nodes).Concat(Parameters).Concat(Complaints).Concat(Rules)
            .Concat(Checks.Where(check => !check.IsQuestion)).Concat(Access).Concat(Hazards)
            .Concat(Repairs.Where(repair => !repair.IsRestore));
        return all.ToImmutableDictionary(entry => entry.Id, StringComparer.Ordinal);
    }
}
