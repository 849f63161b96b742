namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>In which form contributions to a node enter.</summary>
internal enum Gathering : byte
{
    /// <summary>The node has a prior or a table of its own.</summary>
    None,

    /// <summary>The probability of each run of grades; two contributions make the later one.</summary>
    Latest,

    /// <summary>The states "before the grade seen" and "at it"; later ones are left out.</summary>
    Reach,

    /// <summary>The probability of "at most" each run of grades; two contributions multiply.</summary>
    AtMost,
}

/// <summary>What the states of a variable stand for.</summary>
/// <param name="Node">The node.</param>
/// <param name="Form">In which form contributions to it enter.</param>
/// <param name="Runs">First grade of each state; "before" and "at it" where only a grade seen is reached.</param>
/// <param name="IsByGrade">Whether the states are the grades of the node, so that it can be read at one.</param>
internal sealed record VariableStates(int Node, Gathering Form, int[] Runs, bool IsByGrade)
{
    public int Count => Runs.Length;
}

/// <summary>A variable while a tape is drawn up: a node with its grades, or runs of them.</summary>
internal sealed class TapeVariable(int number, VariableStates states)
{
    public int Number { get; } = number;

    public VariableStates Shape { get; } = states;

    public int Node => Shape.Node;

    public Gathering Form => Shape.Form;

    public int States => Shape.Count;

    /// <summary>Whether contributions may be missing: until then tables about it hold the latest of only some contributions, and cannot be read at a grade.</summary>
    public bool IsGathering { get; set; }

    /// <summary>Whether it is summed out.</summary>
    public bool IsGone { get; set; }

    /// <summary>Variables among the node's parents.</summary>
    public List<TapeVariable> Parents { get; } = [];

    /// <summary>Variables the node is a parent of.</summary>
    public List<TapeVariable> Children { get; } = [];

    /// <summary>Values not used yet that have this variable as an axis.</summary>
    public List<TapeValue> Uses { get; } = [];
}
