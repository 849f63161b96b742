namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>An unchangeable copy of evidence that takes room for the observed nodes only.</summary>
internal sealed class PackedEvidence
{
    private readonly (int Node, double[] Likelihoods)[] _observations;

    private PackedEvidence((int Node, double[] Likelihoods)[] observations) => _observations = observations;

    public static PackedEvidence Of(Evidence evidence)
    {
        var count = 0;
        for (var node = 0; node < evidence.Network.Count; node++)
        {
            count += evidence.StateOf(node).Kind == StateKind.None ? 0 : 1;
        }

        var observations = new (int, double[])[count];
        for (var node = evidence.Network.Count - 1; node >= 0; node--)
        {
            if (evidence.StateOf(node).Kind != StateKind.None)
            {
                observations[--count] = (node, evidence.LikelihoodsOf(node).ToArray());
            }
        }

        return new PackedEvidence(observations);
    }

    /// <summary>Evidence with the same posteriors; factors common to all grades of a node are not kept.</summary>
    public Evidence Unpack(Network network)
    {
        var evidence = new Evidence(network);
        foreach (var (node, likelihoods) in _observations)
        {
            evidence.Observe(node, likelihoods);
        }

        return evidence;
    }
}
