namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>All that a tape depends on, packed into words that serve as its key: the role of each node, and where runs of equal likelihoods begin.</summary>
internal sealed class TapeRequest
{
    /// <summary>A node of more grades has no runs and enters with all its grades.</summary>
    public const int MostGradesInRuns = 14;

    private const int BitsPerNode = 16;
    private const int NodesPerWord = 64 / BitsPerNode;
    private const int RoleBits = 3;
    private const ulong RoleMask = (1 << RoleBits) - 1;
    private const ulong NodeMask = (1 << BitsPerNode) - 1;

    private readonly ulong[] _words;

    /// <summary>One word more than the nodes need, so that no key is as long as one of a <see cref="Elimination.PlanRequest"/>.</summary>
    public TapeRequest(int nodes) => _words = new ulong[((nodes + NodesPerWord - 1) / NodesPerWord) + 1];

    public ReadOnlySpan<ulong> Key => _words;

    public void Clear() => Array.Clear(_words);

    public NodeRole RoleOf(int node) => (NodeRole)(Bits(node) & RoleMask);

    public void SetRole(int node, NodeRole role) => Set(node, (ulong)role);

    /// <summary>Sets the role to <see cref="NodeRole.Falling"/> or <see cref="NodeRole.Soft"/>, with the runs of these likelihoods.</summary>
    public void SetRuns(int node, ReadOnlySpan<double> likelihoods)
    {
        ulong starts = 0;
        var role = NodeRole.Falling;
        for (var grade = 1; grade < likelihoods.Length; grade++)
        {
            starts |= likelihoods[grade] == likelihoods[grade - 1] ? 0 : 1UL << (grade - 1);
            role = likelihoods[grade] > likelihoods[grade - 1] ? NodeRole.Soft : role;
        }

        Set(node, (ulong)role | (starts << RoleBits));
    }

    /// <summary>First grade of each run, ascending from 0.</summary>
    public int[] RunsOf(int node)
    {
        var starts = Bits(node) >> RoleBits;
        var runs = new int[1 + System.Numerics.BitOperations.PopCount(starts)];
        for (int grade = 1, next = 1; next < runs.Length; grade++)
        {
            if ((starts >> (grade - 1) & 1) == 1)
            {
                runs[next++] = grade;
            }
        }

        return runs;
    }

    private ulong Bits(int node) => _words[node / NodesPerWord] >> (node % NodesPerWord * BitsPerNode) & NodeMask;

    private void Set(int node, ulong bits)
    {
        ref var word = ref _words[node / NodesPerWord];
        var shift = node % NodesPerWord * BitsPerNode;
        word = (word & ~(NodeMask << shift)) | (bits << shift);
    }
}
