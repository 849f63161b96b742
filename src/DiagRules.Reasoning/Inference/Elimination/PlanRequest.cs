namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>How a plan treats a node.</summary>
internal enum NodeShape : byte
{
    /// <summary>A variable nothing was seen of; left out where no observation and no question hangs on it.</summary>
    Free,

    /// <summary>Known for certain: its tables are cut at the grade, which may change from question to question.</summary>
    Fixed,

    /// <summary>Known to be at most some grade: one factor per parent, and no table at all.</summary>
    Split,

    /// <summary>A variable with a likelihood per grade.</summary>
    Soft,
}

/// <summary>The shape of a question: all that its plan depends on, packed into words that serve as the key of the plan cache.</summary>
internal sealed class PlanRequest
{
    private const int BitsPerNode = 4;
    private const int NodesPerWord = 64 / BitsPerNode;
    private const ulong ShapeMask = 3;
    private const ulong TargetBit = 4;
    private const ulong MaximiseBit = 8;

    private readonly ulong[] _words;

    public PlanRequest(int nodes) => _words = new ulong[(nodes + NodesPerWord - 1) / NodesPerWord];

    public ReadOnlySpan<ulong> Key => _words;

    public void Clear() => Array.Clear(_words);

    public NodeShape ShapeOf(int node) => (NodeShape)(Bits(node) & ShapeMask);

    /// <summary>Whether the answer must hold this node's posterior, seen or not.</summary>
    public bool IsTarget(int node) => (Bits(node) & TargetBit) != 0;

    /// <summary>Whether the node is maximised over rather than summed out.</summary>
    public bool IsMaximised(int node) => (Bits(node) & MaximiseBit) != 0;

    public void SetShape(int node, NodeShape shape)
    {
        ref var word = ref _words[node / NodesPerWord];
        var shift = node % NodesPerWord * BitsPerNode;
        word = (word & ~(ShapeMask << shift)) | ((ulong)shape << shift);
    }

    public void SetTarget(int node) => Set(node, TargetBit);

    public void SetMaximised(int node) => Set(node, MaximiseBit | TargetBit);

    private ulong Bits(int node) => _words[node / NodesPerWord] >> (node % NodesPerWord * BitsPerNode);

    private void Set(int node, ulong bits) => _words[node / NodesPerWord] |= bits << (node % NodesPerWord * BitsPerNode);
}
