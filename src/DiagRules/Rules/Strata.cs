namespace DiagRules.Rules;

/// <summary>
/// The order of dependence: a line comes after every line that may settle what it waits for. Firing in this order makes negation
/// ("unknown") safe (stratified negation; Apt, Blair, Walker, Towards a Theory of Declarative Knowledge, 1988).
/// </summary>
internal sealed class Strata
{
    private readonly int[] _nodeLevels;
    private readonly ILookup<int, RuleLine> _makers;
    private readonly HashSet<int> _open = [];

    /// <exception cref="EngineException">Lines depend on each other in a circle; the loader refuses such packs with their circle.</exception>
    public Strata(IEnumerable<RuleLine> lines, int nodes)
    {
        _makers = lines.Where(line => line.Node >= 0).ToLookup(line => line.Node);
        _nodeLevels = new int[nodes];
        Array.Fill(_nodeLevels, -1);
    }

    /// <summary>0 for a branch that waits for nothing concluded, else one more than the highest it waits for.</summary>
    public int LevelOf(Branch branch) => branch.Literals.Count == 0 ? 0 : 1 + branch.Literals.Max(literal => LevelOf(literal.Node));

    private int LevelOf(int node)
    {
        if (_nodeLevels[node] >= 0)
        {
            return _nodeLevels[node];
        }

        if (!_open.Add(node))
        {
            throw new EngineException("Rules depend on each other in a circle; validate the pack to see it.");
        }

        _nodeLevels[node] = _makers[node].SelectMany(line => line.Branches).Select(LevelOf).DefaultIfEmpty(0).Max();
        _open.Remove(node);
        return _nodeLevels[node];
    }
}
