namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Finds roots that can have one grade only, by their prior and what was seen of them.</summary>
internal static class RootSupport
{
    /// <summary>The only possible grade of a root, or -1 if there are several or none.</summary>
    public static int OnlyGrade(Network network, int node, Evidence evidence, ReadOnlySpan<double> priors)
    {
        var prior = priors.Slice(network.Offsets[node], network.Nodes[node].Grades);
        var isSeen = evidence.StateOf(node).Kind != StateKind.None;
        var likelihoods = isSeen ? evidence.LikelihoodsOf(node) : default;
        var only = -1;
        for (var grade = 0; grade < prior.Length; grade++)
        {
            if (prior[grade] > 0 && (!isSeen || likelihoods[grade] > 0))
            {
                if (only >= 0)
                {
                    return -1;
                }

                only = grade;
            }
        }

        return only;
    }

    /// <summary>A root that bears on nothing else is as its prior and its own likelihoods say.</summary>
    public static void ReadAlone(Network network, int node, Evidence evidence, ReadOnlySpan<double> priors, Span<double> posterior)
    {
        priors.Slice(network.Offsets[node], posterior.Length).CopyTo(posterior);
        if (evidence.StateOf(node).Kind == StateKind.None)
        {
            return;
        }

        var sum = 0.0;
        for (var grade = 0; grade < posterior.Length; grade++)
        {
            sum += posterior[grade] *= evidence.LikelihoodsOf(node)[grade];
        }

        foreach (ref var probability in posterior)
        {
            probability /= sum;
        }
    }
}
