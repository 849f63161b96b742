using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>
/// Looks for values at which two conditions both certainly hold. It tries values around the limits that the two name; what it finds is
/// true, but it does not find everything.
/// </summary>
internal sealed class Witness(CheckScope scope)
{
    private const int MostTrials = 4_096;
    private const double Beside = 0.1;

    // A pack of many pairs is not searched for ever; what is found first is told.
    private long _budget = 2_000_000;

    /// <summary>The values as a message puts them, or <see langword="null"/> when none were found.</summary>
    public string? Find(Condition one, Condition other)
    {
        var comparisons = ConditionUse.Comparisons(one).Concat(ConditionUse.Comparisons(other)).ToList();
        var readings = comparisons.SelectMany(comparison => comparison.Bases).Distinct().Order().ToArray();
        var nodes = Mention.In(one, scope.Draft).Concat(Mention.In(other, scope.Draft)).Where(mention => mention.To.IsGraded).Select(mention => mention.To.Node).Distinct().Order().ToArray();
        double[][] choices =
        [
            .. readings.Select(reading => Values(reading, [.. Near(reading, comparisons).SelectMany(Limits).Distinct().Order()])),
            .. nodes.Select(node => Enumerable.Range(-1, scope.Draft.Node(node).Grades.Length + 1).Select(grade => (double)grade).ToArray()),
        ];
        var trials = choices.Aggregate(1L, (count, values) => Math.Min(count * values.Length, MostTrials + 1L));
        var facts = new Trial(scope.Draft);
        for (var trial = 0; trial < Math.Min(trials, MostTrials) && _budget-- > 0; trial++)
        {
            facts.Set(readings, nodes, choices, trial);
            if (one.Evaluate(facts) == Truth.True && other.Evaluate(facts) == Truth.True)
            {
                return facts.Describe(readings, nodes);
            }
        }

        return null;
    }

    /// <summary>
    /// The comparisons whose limits are worth trying for a reading: those that look at it, and where others are worked out from it all of
    /// them, since a difference is small where its two sides are alike.
    /// </summary>
    private static List<Comparison> Near(int reading, List<Comparison> comparisons)
    {
        var own = comparisons.Where(comparison => comparison.Bases.Contains(reading)).ToList();
        return own.TrueForAll(comparison => comparison.Bases.Length == 1) ? own : comparisons;
    }

    private IEnumerable<double> Limits(Comparison comparison)
    {
        var facts = new ParameterFacts(scope.Draft, scope.Draft.Chassis.IsEmpty ? null : scope.Draft.Chassis[0]);
        return new[] { comparison.Left, comparison.Right }.Select(term => term.Evaluate(facts).Value).Where(double.IsFinite);
    }

    private double[] Values(int reading, double[] limits)
    {
        var entry = (Reading)scope.Draft.Of(Section.Readings)[reading].Entry!;
        var between = limits.Zip(limits.Skip(1), (lower, upper) => (lower + upper) / 2);
        return
        [
            .. limits.SelectMany(limit => new[] { limit * (1 - Beside), limit, limit * (1 + Beside) }).Concat(between)
                .Where(value => entry.Plausible?.Contains(value) != false).Distinct().Order().DefaultIfEmpty(0),
        ];
    }

    /// <summary>One set of values.</summary>
    private sealed class Trial(Draft draft) : IFacts
    {
        private readonly Dictionary<int, double> _readings = [];
        private readonly Dictionary<int, GradeSet> _grades = [];
        private readonly ParameterFacts _parameters = new(draft, draft.Chassis.IsEmpty ? null : draft.Chassis[0]);

        public void Set(int[] readings, int[] nodes, double[][] choices, int trial)
        {
            for (var i = 0; i < choices.Length; i++)
            {
                var value = choices[i][trial % choices[i].Length];
                trial /= choices[i].Length;
                if (i < readings.Length)
                {
                    _readings[readings[i]] = value;
                }
                else
                {
                    _grades[nodes[i - readings.Length]] = value < 0 ? GradeSet.None : GradeSet.Of((int)value);
                }
            }
        }

        public double Reading(int reading) => _readings.TryGetValue(reading, out var value) ? value
            : Entry(reading)?.From is { } from ? from.Evaluate(this).Value
            : double.NaN;

        public double Uncertainty(int reading) => Entry(reading)?.Accuracy?.StandardUncertainty(Reading(reading)) ?? 0;

        public GradeSet Grades(int node) => _grades.GetValueOrDefault(node);

        public double Parameter(int parameter) => _parameters.Parameter(parameter);

        public string Describe(int[] readings, int[] nodes)
        {
            var measured = readings.Select(reading => $"{Entry(reading)!.Id} {Quantity.FromSi(_readings[reading], Entry(reading)!.Unit)}");
            var seen = nodes.Select(draft.Node).Select(node => $"{node.Id} {(_grades[node.Node].IsEmpty ? "unknown" : node.Grades[_grades[node.Node].First])}");
            return string.Join(", ", measured.Concat(seen));
        }

        private Reading? Entry(int reading) => draft.Of(Section.Readings)[reading].Entry as Reading;
    }
}
