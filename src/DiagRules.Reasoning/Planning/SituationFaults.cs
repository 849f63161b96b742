using System.Globalization;
using DiagRules.Reasoning.Planning.Search;

namespace DiagRules.Reasoning.Planning;

/// <summary>Finds everything that keeps a situation from being planned, in one pass.</summary>
internal sealed class SituationFaults
{
    /// <summary>How far probabilities may be off 1 before it is a fault rather than rounding.</summary>
    internal const double SumTolerance = 1e-6;

    private readonly Situation _situation;
    private readonly List<string> _faults = [];

    private SituationFaults(Situation situation) => _situation = situation;

    internal static void ThrowIfAny(Situation situation)
    {
        ArgumentNullException.ThrowIfNull(situation);
        var faults = Find(situation);
        if (faults.Count > 0)
        {
            throw new ArgumentException("The situation cannot be planned:\n- " + string.Join("\n- ", faults), nameof(situation));
        }
    }

    internal static IReadOnlyList<string> Find(Situation situation)
    {
        var search = new SituationFaults(situation);
        search.Hypotheses();
        search.Accesses();
        search.Checks();
        search.Repairs();
        if (search._faults.Count == 0)
        {
            search.Openings();
        }

        return search._faults;
    }

    private void Hypotheses()
    {
        Cost("the specialist", _situation.SpecialistCost);
        var sum = _situation.Unlisted;
        Probability("something not listed", _situation.Unlisted);
        for (var i = 0; i < _situation.Probabilities.Count; i++)
        {
            Probability($"cause {i}", _situation.Probabilities[i]);
            sum += _situation.Probabilities[i];
        }

        if (!(Math.Abs(sum - 1) <= SumTolerance))
        {
            _faults.Add($"The probabilities of the causes and of something not listed add up to {Text(sum)}; they must add up to 1.");
        }
    }

    private void Accesses()
    {
        for (var i = 0; i < _situation.Accesses.Count; i++)
        {
            var access = _situation.Accesses[i];
            Cost($"access {i}", access.Cost);
            Indices($"Access {i} needs", access.Needs, _situation.Accesses.Count, "access");
            Indices($"Access {i} excludes", access.Excludes, _situation.Accesses.Count, "access");
            if (access.Excludes.Contains(i))
            {
                _faults.Add($"Access {i} excludes itself.");
            }
        }
    }

    private void Checks()
    {
        for (var i = 0; i < _situation.Checks.Count; i++)
        {
            var check = _situation.Checks[i];
            Cost($"check {i}", check.Cost);
            State($"Check {i}", check.State);
            Indices($"Check {i} needs", check.Needs, _situation.Accesses.Count, "access");
            if (check.Outcomes.Count == 0)
            {
                _faults.Add($"Check {i} has no answers; it needs at least one.");
                continue;
            }

            Outcomes(i, check);
        }
    }

    private void Outcomes(int check, PlanCheck plan)
    {
        var causes = _situation.Probabilities.Count;
        for (var o = 0; o < plan.Outcomes.Count; o++)
        {
            var outcome = plan.Outcomes[o];
            Indices($"Answer {o} of check {check} makes pointless", outcome.MakesPointless, _situation.Checks.Count, "check");
            if (outcome.Likelihoods.Count != causes)
            {
                _faults.Add($"Answer {o} of check {check} has {outcome.Likelihoods.Count} likelihoods; there are {causes} causes.");
                return;
            }
        }

        for (var cause = 0; cause < causes; cause++)
        {
            var sum = 0.0;
            foreach (var outcome in plan.Outcomes)
            {
                sum += Likelihood(check, outcome.Likelihoods[cause], cause);
            }

            AddUp(check, sum, cause);
        }

        if (_situation.Unlisted > 0)
        {
            AddUp(check, plan.Outcomes.Sum(o => Likelihood(check, o.Unlisted, causes)), causes);
        }
    }

    private double Likelihood(int check, double likelihood, int hypothesis)
    {
        // The text is made only when it is needed: this is the longest loop of the validation.
        if (!(likelihood is >= 0 and <= 1))
        {
            Probability($"an answer of check {check} under {Hypothesis(hypothesis)}", likelihood);
        }

        return likelihood;
    }

    private void AddUp(int check, double sum, int hypothesis)
    {
        if (!(Math.Abs(sum - 1) <= SumTolerance))
        {
            _faults.Add($"The answers of check {check} add up to {Text(sum)} under {Hypothesis(hypothesis)}; they must add up to 1.");
        }
    }

    private string Hypothesis(int index) => index < _situation.Probabilities.Count ? $"cause {index}" : "something not listed";

    private void Repairs()
    {
        for (var i = 0; i < _situation.Repairs.Count; i++)
        {
            var repair = _situation.Repairs[i];
            Cost($"repair {i}", repair.Cost);
            State($"Repair {i}", repair.State);
            Indices($"Repair {i} needs", repair.Needs, _situation.Accesses.Count, "access");
            Indices($"Repair {i} comes after", repair.After, _situation.Checks.Count, "check");
            Indices($"Repair {i} cures", [.. repair.Cures.Select(c => c.Cause)], _situation.Probabilities.Count, "cause");
            foreach (var cure in repair.Cures)
            {
                Probability($"repair {i} curing cause {cure.Cause}", cure.Probability);
            }
        }
    }

    private void Openings()
    {
        var openings = new AccessOpening(_situation.Accesses);
        for (var i = 0; i < _situation.Accesses.Count; i++)
        {
            if (openings.IsInCircle(i))
            {
                _faults.Add($"Access {i} needs itself, directly or through others; something must come first.");
            }
        }

        if (_faults.Count > 0)
        {
            return;
        }

        for (var i = 0; i < _situation.Accesses.Count; i++)
        {
            Openable($"Access {i}", _situation.Accesses[i].Needs, openings);
        }

        for (var i = 0; i < _situation.Checks.Count; i++)
        {
            Openable($"Check {i}", _situation.Checks[i].Needs, openings);
        }

        for (var i = 0; i < _situation.Repairs.Count; i++)
        {
            Openable($"Repair {i}", _situation.Repairs[i].Needs, openings);
        }
    }

    private void Openable(string subject, IReadOnlyList<int> needs, AccessOpening openings)
    {
        if (openings.IsTooTangled(needs))
        {
            _faults.Add($"{subject} needs more than {AccessOpening.MostTangled} accesses, directly or through others, and some of them exclude each other; fewer can be sorted out.");
        }
        else if (!openings.CanBeOpenTogether(needs))
        {
            _faults.Add($"{subject} needs accesses {string.Join(", ", needs)} open together, but they, or what they need, exclude each other.");
        }
    }

    private void Cost(string subject, double cost)
    {
        if (!double.IsFinite(cost) || cost < 0)
        {
            _faults.Add($"The cost of {subject} is {Text(cost)}; it must be a finite number, 0 or more.");
        }
    }

    private void Probability(string subject, double probability)
    {
        // Sums of exact inference may come out a few units of the last place above 1.
        if (!(probability is >= 0 and <= 1 + SumTolerance))
        {
            _faults.Add($"The probability of {subject} is {Text(probability)}; it must lie within 0..1.");
        }
    }

    private void State(string subject, StepState state)
    {
        if (!Enum.IsDefined(state))
        {
            _faults.Add($"{subject} has state {(int)state}, which does not exist.");
        }
    }

    private void Indices(string subject, IReadOnlyList<int> indices, int count, string kind)
    {
        var seen = new HashSet<int>();
        foreach (var index in indices)
        {
            if (index < 0 || index >= count)
            {
                _faults.Add($"{subject} {kind} {index}; there are {count}, counted from 0.");
            }
            else if (!seen.Add(index))
            {
                _faults.Add($"{subject} {kind} {index} twice.");
            }
        }
    }

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
