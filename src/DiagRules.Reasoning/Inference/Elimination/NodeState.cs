namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>In what manner a node is observed, which decides the shape of a plan.</summary>
internal enum StateKind : byte
{
    /// <summary>Not at all, or all grades are as likely.</summary>
    None,

    /// <summary>One of the grades 0..Grade, with the same likelihood each: the contributions of its parents separate.</summary>
    AtMost,

    /// <summary>The grade itself, a later one than the first.</summary>
    Exactly,

    /// <summary>A likelihood per grade.</summary>
    Soft,
}

/// <summary>An observation, brought to its simplest form.</summary>
/// <param name="Kind">The manner.</param>
/// <param name="Grade">The grade, for <see cref="StateKind.AtMost"/> and <see cref="StateKind.Exactly"/>.</param>
/// <param name="Scale">The factor taken out of the likelihoods; 0 where nothing was ever said.</param>
internal readonly record struct NodeState(StateKind Kind, short Grade, double Scale)
{
    /// <summary>Whether the grade is known for certain.</summary>
    public bool IsCertain => Kind == StateKind.Exactly || (Kind == StateKind.AtMost && Grade == 0);

    /// <summary>Natural logarithm of the factor taken out of the likelihoods.</summary>
    public double LogScale => Scale is 0 or 1 ? 0 : Math.Log(Scale);

    /// <summary>Recognises what likelihoods amount to, and takes a common factor out of them in place.</summary>
    public static NodeState Simplified(Span<double> likelihoods)
    {
        var last = likelihoods.LastIndexOfAnyExcept(0.0);
        var shared = likelihoods[last];
        if (!likelihoods[..last].ContainsAnyExcept(shared))
        {
            likelihoods[..(last + 1)].Fill(1);
            return new NodeState(last == likelihoods.Length - 1 ? StateKind.None : StateKind.AtMost, (short)last, shared);
        }

        if (!likelihoods[..last].ContainsAnyExcept(0.0))
        {
            likelihoods[last] = 1;
            return new NodeState(StateKind.Exactly, (short)last, shared);
        }

        return new NodeState(StateKind.Soft, 0, TakeOutPowerOfTwo(likelihoods));
    }

    /// <summary>A power of two, because dividing by it rounds nothing.</summary>
    private static double TakeOutPowerOfTwo(Span<double> likelihoods)
    {
        var largest = 0.0;
        foreach (var likelihood in likelihoods)
        {
            largest = Math.Max(largest, likelihood);
        }

        var exponent = Math.ILogB(largest);
        for (var i = 0; i < likelihoods.Length; i++)
        {
            likelihoods[i] = Math.ScaleB(likelihoods[i], -exponent);
        }

        return Math.ScaleB(1, exponent);
    }
}
