using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

/// <summary>A network of graded nodes: roots with priors, and children whose grade depends on their parents.</summary>
/// <remarks>
/// Nodes are numbered from 0 in the order in which they were added, so a parent always has a smaller number than its children and there can be no circle.
/// Grades are numbered from 0, the healthy one first. Built by <see cref="NetworkBuilder"/>; immutable and thread-safe.
/// </remarks>
public sealed class Network
{
    private readonly string[] _names;

    internal Network(string[] names, NodeModel[] nodes)
    {
        _names = names;
        Nodes = nodes;
        Offsets = new int[nodes.Length + 1];
        for (var i = 0; i < nodes.Length; i++)
        {
            Offsets[i + 1] = Offsets[i] + nodes[i].Grades;
        }

        Priors = new double[Offsets[^1]];
        HasChildren = new bool[nodes.Length];
        for (var i = 0; i < nodes.Length; i++)
        {
            nodes[i].Prior?.CopyTo(Priors, Offsets[i]);
            foreach (var parent in nodes[i].Parents)
            {
                HasChildren[parent.Node] = true;
            }
        }
    }

    /// <summary>Number of nodes.</summary>
    public int Count => Nodes.Length;

    internal NodeModel[] Nodes { get; }

    /// <summary>
    /// Where the grades of each node begin in an array that holds the grades of all nodes one after the other; one entry more than there are nodes.
    /// </summary>
    internal int[] Offsets { get; }

    /// <summary>Priors of the roots in that layout; zero elsewhere.</summary>
    internal double[] Priors { get; }

    internal bool[] HasChildren { get; }

    /// <summary>The name a node was added with.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such node.</exception>
    public string NameOf(int node) => _names[Checked(node)];

    /// <summary>Number of grades of a node, 2 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such node.</exception>
    public int GradesOf(int node) => Nodes[Checked(node)].Grades;

    /// <summary>How a node gets its grade.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such node.</exception>
    public NodeKind KindOf(int node) => Nodes[Checked(node)].Kind;

    /// <summary>Parents of a node: for a graded node in ascending order, for a table in the order of its axes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such node.</exception>
    public IReadOnlyList<int> ParentsOf(int node) => Nodes[Checked(node)].ParentList;

    internal int Checked(int node)
    {
        if ((uint)node >= (uint)Nodes.Length)
        {
            throw new ArgumentOutOfRangeException(nameof(node), node, $"The network has nodes 0 to {Nodes.Length - 1}.");
        }

        return node;
    }
}
