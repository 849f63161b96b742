namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>A parent and how many grades it has.</summary>
internal readonly record struct ParentAxis(int Node, int Grades);

/// <summary>The numbers of one node, and the tables made from them once and shared by every plan.</summary>
/// <remarks>
/// All tables are sums and products of probabilities: nothing is ever subtracted, so nothing cancels. The usual way to write
/// <c>P(child = g) = prod F(g) - prod F(g-1)</c> is replaced by following the latest grade so far through the contributions one by one.
/// </remarks>
internal sealed class NodeModel
{
    private double[]? _dense;
    private double[][]? _chain;
    private double[][]?[]? _reach;

    private NodeModel(NodeKind kind, int grades, ParentAxis[] parents)
    {
        Kind = kind;
        Grades = grades;
        Parents = parents;
        ParentList = Array.AsReadOnly(Array.ConvertAll(parents, parent => parent.Node));
        DenseCells = parents.Aggregate((double)grades, (product, parent) => product * parent.Grades);
    }

    private NodeModel(double[] background, ParentAxis[] parents, double[][] masses)
        : this(NodeKind.Graded, background.Length, parents)
    {
        Background = background;
        Masses = masses;
        BackgroundAtMost = Cumulated(background, Grades);
        AtMost = Array.ConvertAll(masses, m => Cumulated(m, Grades));
    }

    public NodeKind Kind { get; }

    public int Grades { get; }

    public ParentAxis[] Parents { get; }

    public IReadOnlyList<int> ParentList { get; }

    public double[]? Prior { get; private init; }

    /// <summary>Size of the table over the node and all its parents.</summary>
    public double DenseCells { get; }

    /// <summary>P(background = g) by g.</summary>
    public double[] Background { get; } = [];

    /// <summary>P(contribution of parent k = g | the parent's grade p) at <c>[k][p * Grades + g]</c>.</summary>
    public double[][] Masses { get; } = [];

    /// <summary>P(background &lt;= g) by g.</summary>
    public double[] BackgroundAtMost { get; } = [];

    /// <summary>P(contribution of parent k &lt;= g | the parent's grade p) at <c>[k][p * Grades + g]</c>.</summary>
    public double[][] AtMost { get; } = [];

    public static NodeModel Root(double[] prior) => new(NodeKind.Root, prior.Length, []) { Prior = prior };

    public static NodeModel Graded(double[] background, ParentAxis[] parents, double[][] masses) => new(background, parents, masses);

    public static NodeModel Table(int grades, ParentAxis[] parents, double[] gradeMajor) => new(NodeKind.Table, grades, parents) { _dense = gradeMajor };

    /// <summary>P(node | parents): the node's grade is the slowest axis, then the parents in order.</summary>
    public double[] Dense() => Volatile.Read(ref _dense) ?? Publish(ref _dense, Expand(Parents.Length));

    /// <summary>
    /// The same distribution as a chain of small tables over "latest grade so far": the first joins the background with two parents (axes: so far, parent,
    /// parent), each later one takes in one parent more (axes: so far, parent, now). The last "now" is the node itself.
    /// </summary>
    public double[][] Chain() => Volatile.Read(ref _chain) ?? Publish(ref _chain, Links(Expand(2), ChainLink));

    /// <summary>
    /// P(node = g | parents), g > 0, as a chain over two states, "still before g" and "g reached"; later than g is left out. Axes as in <see cref="Chain"/>.
    /// </summary>
    public double[][] Reach(int g)
    {
        var all = Volatile.Read(ref _reach) ?? Publish(ref _reach, new double[Grades][][]);
        return Volatile.Read(ref all[g]) ?? Publish(ref all[g], ReachLinks(g));
    }

    /// <summary>The first thread to finish a table sets it for all.</summary>
    private static T Publish<T>(ref T? field, T made)
        where T : class
        => Interlocked.CompareExchange(ref field, made, null) ?? made;

    private static double[] Cumulated(double[] masses, int grades)
    {
        var atMost = new double[masses.Length];
        for (var row = 0; row < masses.Length; row += grades)
        {
            var sum = 0.0;
            for (var g = 0; g < grades; g++)
            {
                atMost[row + g] = Math.Min(sum += masses[row + g], 1);
            }

            atMost[row + grades - 1] = 1;
        }

        return atMost;
    }

    /// <summary>The distribution of the latest grade among the background and the first <paramref name="parents"/> contributions.</summary>
    private double[] Expand(int parents)
    {
        var table = Background;
        var cells = 1;
        for (var k = 0; k < parents; k++)
        {
            table = WithParent(table, cells, k);
            cells *= Parents[k].Grades;
        }

        return table;
    }

    private double[] WithParent(double[] table, int cells, int k)
    {
        var count = Parents[k].Grades;
        var wider = new double[table.Length * count];
        for (var cell = 0; cell < cells; cell++)
        {
            for (var p = 0; p < count; p++)
            {
                var before = 0.0;
                for (var g = 0; g < Grades; g++)
                {
                    var soFar = table[(g * cells) + cell];
                    wider[(((g * cells) + cell) * count) + p] = (soFar * AtMost[k][(p * Grades) + g]) + (before * Masses[k][(p * Grades) + g]);
                    before += soFar;
                }
            }
        }

        return wider;
    }

    private double[][] Links(double[] first, Func<int, double[]> link)
    {
        var links = new double[Parents.Length - 1][];
        links[0] = first;
        for (var k = 2; k < Parents.Length; k++)
        {
            links[k - 1] = link(k);
        }

        return links;
    }

    private double[][] ReachLinks(int g) => Links(ReachStart(Expand(2), g), k => ReachLink(k, g));

    private double[] ChainLink(int k)
    {
        var count = Parents[k].Grades;
        var link = new double[Grades * count * Grades];
        for (var soFar = 0; soFar < Grades; soFar++)
        {
            for (var p = 0; p < count; p++)
            {
                var row = ((soFar * count) + p) * Grades;
                link[row + soFar] = AtMost[k][(p * Grades) + soFar];
                for (var now = soFar + 1; now < Grades; now++)
                {
                    link[row + now] = Masses[k][(p * Grades) + now];
                }
            }
        }

        return link;
    }

    private double[] ReachStart(double[] latest, int g)
    {
        var cells = latest.Length / Grades;
        var start = new double[2 * cells];
        for (var cell = 0; cell < cells; cell++)
        {
            for (var s = 0; s < g; s++)
            {
                start[cell] += latest[(s * cells) + cell];
            }

            start[cells + cell] = latest[(g * cells) + cell];
        }

        return start;
    }

    private double[] ReachLink(int k, int g)
    {
        var count = Parents[k].Grades;
        var link = new double[2 * count * 2];
        for (var p = 0; p < count; p++)
        {
            link[p * 2] = AtMost[k][(p * Grades) + g - 1];
            link[(p * 2) + 1] = Masses[k][(p * Grades) + g];
            link[((count + p) * 2) + 1] = AtMost[k][(p * Grades) + g];
        }

        return link;
    }
}
