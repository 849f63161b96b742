using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>The three ways a session looks at what is known. Belongs to one session.</summary>
internal sealed class Views
{
    private readonly PackIndex _index;
    private readonly double[] _trust;

    public Views(PackIndex index)
    {
        _index = index;
        Strict = Make();
        Lenient = Make();
        Weighed = Make();
        _trust = new double[index.Pack.Readings.Length];

        FactsView Make() => new(index.Pack.Readings.Length, index.Pack.Nodes.Length, index.Parameters);
    }

    public Pack Pack => _index.Pack;

    public int PatternNode => _index.PatternNode;

    /// <summary>Doubtful observations are unknown.</summary>
    public FactsView Strict { get; }

    /// <summary>Doubtful observations are taken at their word.</summary>
    public FactsView Lenient { get; }

    /// <summary>As lenient, but as the machine was before a check altered it.</summary>
    public FactsView Weighed { get; }

    /// <summary>How far a reading is believed; of a derived one the least of what it rests on.</summary>
    public double TrustOf(int reading) => _trust[reading];

    /// <summary>Takes over what was observed. Concluded findings follow after the rules have run.</summary>
    public void Read(ObservedState state)
    {
        Strict.Clear();
        Lenient.Clear();
        Weighed.Clear();
        foreach (var reading in _index.Pack.Readings)
        {
            _trust[reading.Index] = 1;
            if (state.Readings[reading.Index] is { } observed)
            {
                _trust[reading.Index] = observed.Trust;
                Set(Lenient, reading, observed);
                if (observed.Trust >= Observation.RuleThreshold)
                {
                    Set(Strict, reading, observed);
                }
            }

            if (state.WeighedReadings[reading.Index] is { } weighed)
            {
                Set(Weighed, reading, weighed);
            }
        }

        foreach (var derived in _index.DerivedInOrder)
        {
            Derive(Strict, derived);
            Derive(Lenient, derived);
            Derive(Weighed, derived);
            _trust[derived.Index] = Dependence.ReadingsIn(derived.From!).Select(reading => _trust[reading.Index]).DefaultIfEmpty(1).Min();
        }

        for (var node = 0; node < state.Nodes.Length; node++)
        {
            Lenient.Known[node] = state.Nodes[node]?.Grades ?? GradeSet.None;
            Strict.Known[node] = state.Nodes[node] is { Trust: >= Observation.RuleThreshold } seen ? seen.Grades : GradeSet.None;
            Weighed.Known[node] = state.WeighedNodes[node]?.Grades ?? GradeSet.None;
        }
    }

    private static void Set(FactsView view, Reading reading, ReadingObservation observed)
    {
        view.Readings[reading.Index] = observed.Si;
        view.Uncertainties[reading.Index] = reading.Accuracy is { } accuracy && double.IsFinite(observed.Si)
            ? accuracy.StandardUncertainty(observed.Si)
            : 0;
    }

    private static void Derive(FactsView view, Reading derived)
    {
        // A measured value that is not plausible is a slip of the pen; a derived one comes of a slip, or of a calculation that is wrong.
        var value = derived.From!.Evaluate(view).Value;
        view.Readings[derived.Index] = double.IsFinite(value) && derived.Plausible?.Contains(value) != false ? value : double.NaN;
    }
}
