namespace DiagRules.Reasoning.Inference;

/// <summary>Weighs the causes of a complaint: which one is behind it, and how sure is that.</summary>
/// <remarks>
/// <para>
/// With shares, exactly one cause <c>Z</c> is <em>primary</em>: <c>P(Z = i) = pi_i = share_i / (sum of shares + unlisted)</c>, and <c>Z = 0</c> stands for
/// something not listed. Given <c>Z = i</c>, cause <c>i</c> is present and every other cause <c>j</c> is present too with probability <c>c * pi_j</c>
/// (coexistence <c>c</c>). Under <c>Z = 0</c> each observation is as likely as on any complaint. The confidence of a cause is <c>P(Z = i | e)</c>.
/// </para>
/// <para>
/// With absolute probabilities there is no primary cause: causes are independent, a confidence is <c>P(X_i = present | e)</c>, and they need not add up to 1.
/// </para>
/// <para>
/// Both come from one network in which cause <c>i</c> has the prior <c>q_i = c * pi_i</c> (or the absolute probability), since
/// <c>P(Z = i, e) = P_q(X_i = present, e) / c</c>. The mathematics is in <c>docs/concepts/inference.md</c>. Immutable and thread-safe.
/// </para>
/// </remarks>
public sealed partial class CauseModel
{
    private readonly int[] _causes;
    private readonly int[] _positions;
    private readonly double[] _pi;
    private readonly double[] _priors;
    private readonly double[]?[] _marginals;

    private CauseModel(InferenceEngine engine, int[] causes, double[] pi, double unlisted, double coexistence, bool hasPrimary)
    {
        Engine = engine;
        _causes = causes;
        Causes = Array.AsReadOnly(causes);
        _pi = pi;
        PriorOfUnlisted = unlisted;
        Coexistence = coexistence;
        HasPrimary = hasPrimary;
        _positions = new int[Network.Count];
        _priors = [.. Network.Priors];
        _marginals = new double[Network.Count][];
        Array.Fill(_positions, -1);
        for (var i = 0; i < causes.Length; i++)
        {
            var q = coexistence * pi[i];
            _positions[causes[i]] = i;
            _priors[Network.Offsets[causes[i]]] = 1 - q;
            _priors[Network.Offsets[causes[i]] + 1] = q;
        }
    }

    /// <summary>The network of causes, effects and findings. The priors its causes were built with are not used.</summary>
    public Network Network => Engine.Network;

    /// <summary>Answers questions about the network itself; shared by all models made with <see cref="WithShares"/>.</summary>
    public InferenceEngine Engine { get; }

    /// <summary>Node numbers of the causes, ascending. Lists of answers follow this order.</summary>
    public IReadOnlyList<int> Causes { get; }

    /// <summary>Whether causes have shares, so that one of them (or something not listed) is primary.</summary>
    public bool HasPrimary { get; }

    /// <summary><c>pi_0</c>, how often something not listed is behind a complaint; 0 with absolute probabilities.</summary>
    public double PriorOfUnlisted { get; }

    /// <summary><c>c</c>, how readily a second cause coexists; 1 with absolute probabilities.</summary>
    public double Coexistence { get; }

    /// <summary>A model with shares.</summary>
    /// <param name="network">The network. Every cause is one of its roots, with the grades absent and present.</param>
    /// <param name="shares">Share of each cause by node number, 0 or more, at least one above 0; relative frequency among complaints.</param>
    /// <param name="unlisted">Share of everything that is not listed, 0 or more.</param>
    /// <param name="coexistence">How readily a second cause coexists, above 0 and at most 1.</param>
    /// <param name="limits">How much inference may use; <see cref="InferenceLimits.Default"/> if null.</param>
    /// <exception cref="ArgumentException">A cause is no root with two grades, or a number is out of its range.</exception>
    public static CauseModel FromShares(
        Network network, IReadOnlyDictionary<int, double> shares, double unlisted, double coexistence, InferenceLimits? limits = null)
    {
        var causes = CausesOf(network, shares);
        if (!(coexistence > 0 && coexistence <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(coexistence), coexistence, "Expected a coexistence above 0 and at most 1.");
        }

        return FromShares(new InferenceEngine(network, limits), causes, shares, unlisted, coexistence);
    }

    /// <summary>A model with absolute probabilities.</summary>
    /// <param name="network">The network. Every cause is one of its roots, with the grades absent and present.</param>
    /// <param name="probabilities">Probability of each cause by node number, 0..1.</param>
    /// <param name="limits">How much inference may use; <see cref="InferenceLimits.Default"/> if null.</param>
    /// <exception cref="ArgumentException">A cause is no root with two grades, or a number is no probability.</exception>
    public static CauseModel FromProbabilities(Network network, IReadOnlyDictionary<int, double> probabilities, InferenceLimits? limits = null)
    {
        var causes = CausesOf(network, probabilities);
        foreach (var cause in causes)
        {
            Distribution.RequireProbability(probabilities[cause], $"the probability of '{network.NameOf(cause)}'", nameof(probabilities));
        }

        var pi = Array.ConvertAll(causes, cause => probabilities[cause]);
        return new CauseModel(new InferenceEngine(network, limits), causes, pi, unlisted: 0, coexistence: 1, hasPrimary: false);
    }

    /// <summary>The same network and causes under other shares, as a complaint with shares of its own asks for. Plans are shared with this model.</summary>
    /// <param name="shares">Share by node number; a cause not listed here has none.</param>
    /// <param name="unlisted">Share of everything that is not listed, on the scale of <paramref name="shares"/>.</param>
    /// <exception cref="InvalidOperationException">This model has absolute probabilities.</exception>
    /// <exception cref="ArgumentException">A node is no cause of this model, or a number is out of its range.</exception>
    public CauseModel WithShares(IReadOnlyDictionary<int, double> shares, double unlisted)
    {
        ArgumentNullException.ThrowIfNull(shares);
        if (!HasPrimary)
        {
            throw new InvalidOperationException("This model has absolute probabilities; shares belong to a model made by 'FromShares'.");
        }

        foreach (var cause in shares.Keys)
        {
            PositionOf(cause);
        }

        return FromShares(Engine, _causes, shares, unlisted, Coexistence);
    }

    /// <summary><c>pi_i</c>, how often a cause is behind a complaint; its absolute probability if there are no shares.</summary>
    /// <exception cref="ArgumentException">The node is no cause of this model.</exception>
    public double PriorOf(int cause) => _pi[PositionOf(cause)];

    /// <summary>Evidence with nothing known yet.</summary>
    public CauseEvidence NewEvidence() => new(this);

    internal int PositionOf(int cause)
    {
        var position = _positions[Network.Checked(cause)];
        return position >= 0 ? position : throw new ArgumentException(
            $"'{Network.NameOf(cause)}' is no cause of this model; expected one of its {_causes.Length} causes.",
            nameof(cause));
    }

    private static CauseModel FromShares(InferenceEngine engine, int[] causes, IReadOnlyDictionary<int, double> shares, double unlisted, double coexistence)
    {
        var weights = Array.ConvertAll(causes, cause => shares.GetValueOrDefault(cause));
        foreach (var (i, share) in weights.Index())
        {
            RequireShare(share, $"the share of '{engine.Network.NameOf(causes[i])}'", nameof(shares));
        }

        RequireShare(unlisted, "the share of what is not listed", nameof(unlisted));
        if (weights.Sum() is var sum && sum == 0)
        {
            throw new ArgumentException("Every share is 0; expected at least one cause with a share above 0.", nameof(shares));
        }

        var total = sum + unlisted;
        return new CauseModel(engine, causes, Array.ConvertAll(weights, share => share / total), unlisted / total, coexistence, hasPrimary: true);
    }

    private static int[] CausesOf(Network network, IReadOnlyDictionary<int, double> numbers)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(numbers);
        foreach (var cause in numbers.Keys)
        {
            if (network.KindOf(cause) != NodeKind.Root || network.GradesOf(cause) != 2)
            {
                throw new ArgumentException(
                    $"'{network.NameOf(cause)}' has {network.GradesOf(cause)} grades and {network.ParentsOf(cause).Count} parents; "
                        + "expected a cause: the grades absent and present, and no parents.",
                    nameof(numbers));
            }
        }

        return [.. numbers.Keys.Order()];
    }

    private static void RequireShare(double share, string subject, string parameter)
    {
        if (!(share >= 0 && double.IsFinite(share)))
        {
            throw new ArgumentException($"Found {Distribution.Text(share)} for {subject}; expected a finite number of 0 or more.", parameter);
        }
    }
}
