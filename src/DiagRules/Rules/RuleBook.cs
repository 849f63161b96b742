using DiagRules.Model;
using NRules;

namespace DiagRules.Rules;

/// <summary>All lines of a pack on one chassis, compiled once into a rule network. Immutable and thread-safe after construction.</summary>
internal sealed class RuleBook
{
    private readonly ISessionFactory _factory;

    public RuleBook(Pack pack, string? chassis)
    {
        Pack = pack;
        Lines = RuleLines.Of(pack, chassis);
        IsConcluded = new bool[pack.Nodes.Length];
        foreach (var line in Lines.Where(line => line.Node >= 0))
        {
            IsConcluded[line.Node] = true;
        }

        IsWatched = new bool[pack.Nodes.Length];
        Branches = SplitAll();
        _factory = NetworkCompiler.Compile(Branches, new Strata(Lines, pack.Nodes.Length));
    }

    public Pack Pack { get; }

    public IReadOnlyList<RuleLine> Lines { get; }

    public IReadOnlyList<Branch> Branches { get; }

    /// <summary>By node: whether any line may settle it. Tests on the others are part of the gates.</summary>
    public bool[] IsConcluded { get; }

    /// <summary>By node: whether any line waits for it.</summary>
    public bool[] IsWatched { get; }

    public ISession CreateSession() => _factory.CreateSession();

    private List<Branch> SplitAll()
    {
        var splitter = new ConditionSplitter(Pack, IsConcluded);
        var branches = new List<Branch>();
        foreach (var line in Lines)
        {
            foreach (var (literals, gate) in splitter.Split(line.When))
            {
                var branch = new Branch(line, literals, gate) { Index = branches.Count };
                branches.Add(branch);
                line.Branches.Add(branch);
                foreach (var literal in literals)
                {
                    IsWatched[literal.Node] = true;
                }
            }
        }

        return branches;
    }
}
