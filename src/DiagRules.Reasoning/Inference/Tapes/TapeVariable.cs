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

/// <summary>A variable of a tape: a node with its grades, or runs of them.</summary>
internal sealed class TapeVariable(int number, int node, Gathering form, int[] runs, int grades)
{
    public int Number { get; } = number;

    public int Node { get; } = node;

    public int States => Runs.Length;

    /// <summary>Whether its states are the grades of the node, so that it can be read at one.</summary>
    public bool IsByGrade { get; } = form is Gathering.None or Gathering.Latest && runs.Length == grades;

    public Gathering Form { get; } = form;

    /// <summary>First grade of each state.</summary>
    public int[] Runs { get; } = runs;

    /// <summary>Whether contributions may be missing: until then tables about it hold the latest of only some contributions, and cannot be read at a grade.</summary>
    public bool IsGathering { get; set; }

    /// <summary>Variables among the node's parents.</summary>
    public List<TapeVariable> Parents { get; } = [];

    public List<TapeVariable> Children { get; } = [];

    /// <summary>Values not used yet that have this variable as an axis.</summary>
    public List<TapeValue> Uses { get; } = [];

    public bool IsGone { get; set; }
}
