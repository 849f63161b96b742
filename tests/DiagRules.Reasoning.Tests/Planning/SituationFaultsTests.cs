using DiagRules.Reasoning.Planning;

namespace DiagRules.Reasoning.Tests.Planning;

public sealed class SituationFaultsTests
{
    private static Situation Sound { get; } = new()
    {
        Probabilities = [0.6, 0.3],
        Unlisted = 0.1,
        SpecialistCost = 100,
        Accesses = [new() { Cost = 5 }, new() { Cost = 5, Needs = [0] }],
        Checks = [new() { Cost = 1, Needs = [1], Outcomes = [new() { Likelihoods = [1, 0.5], Unlisted = 1 }, new() { Likelihoods = [0, 0.5] }] }],
        Repairs = [new() { Cost = 10, Cures = [new(0, 0.9)], After = [0] }],
    };

    public static TheoryData<string, string> Faults => new(Broken.Select(b => (b.Key, b.Value.Message)));

    private static Dictionary<string, (Situation Situation, string Message)> Broken { get; } = new()
    {
        ["sum"] = (Sound with { Unlisted = 0.2 }, "The probabilities of the causes and of something not listed add up to 1.1; they must add up to 1."),
        ["probability"] = (Sound with { Probabilities = [1.5, -0.6] }, "The probability of cause 0 is 1.5; it must lie within 0..1."),
        ["not a number"] = (Sound with { Unlisted = double.NaN }, "The probability of something not listed is NaN; it must lie within 0..1."),
        ["cost"] = (Sound with { SpecialistCost = double.PositiveInfinity }, "The cost of the specialist is Infinity; it must be a finite number, 0 or more."),
        ["negative"] = (WithAccess(new() { Cost = -1 }), "The cost of access 1 is -1; it must be a finite number, 0 or more."),
        ["index"] = (WithAccess(new() { Cost = 5, Needs = [7] }), "Access 1 needs access 7; there are 2, counted from 0."),
        ["twice"] = (WithAccess(new() { Cost = 5, Needs = [0, 0] }), "Access 1 needs access 0 twice."),
        ["itself"] = (WithAccess(new() { Cost = 5, Excludes = [1] }), "Access 1 excludes itself."),
        ["circle"] = (WithAccess(new() { Cost = 5, Needs = [1] }), "Access 1 needs itself, directly or through others; something must come first."),
        ["together"] = (
            WithAccess(new() { Cost = 5, Excludes = [0] }) with { Repairs = [new() { Cost = 1, Cures = [], Needs = [0, 1] }] },
            "Repair 0 needs accesses 0, 1 open together, but they, or what they need, exclude each other."),
        ["tangled"] = (
            Sound with
            {
                Accesses = [.. Enumerable.Range(0, 13).Select(i => new PlanAccess { Cost = 1, Excludes = i == 0 ? [1] : [] })],
                Repairs = [new() { Cost = 1, Cures = [], Needs = [.. Enumerable.Range(0, 13)] }],
            },
            "Repair 0 needs more than 12 accesses, directly or through others, and some of them exclude each other; fewer can be sorted out."),
        ["no answers"] = (WithCheck(), "Check 0 has no answers; it needs at least one."),
        ["likelihoods"] = (WithCheck(new PlanOutcome { Likelihoods = [1], Unlisted = 1 }), "Answer 0 of check 0 has 1 likelihoods; there are 2 causes."),
        ["column"] = (WithCheck(new PlanOutcome { Likelihoods = [1, 0.7], Unlisted = 1 }), "The answers of check 0 add up to 0.7 under cause 1; they must add up to 1."),
        ["unlisted column"] = (WithCheck(new PlanOutcome { Likelihoods = [1, 1] }), "The answers of check 0 add up to 0 under something not listed; they must add up to 1."),
        ["likelihood"] = (
            WithCheck(new PlanOutcome { Likelihoods = [2, 1], Unlisted = 1 }),
            "The probability of an answer of check 0 under cause 0 is 2; it must lie within 0..1."),
        ["cure"] = (WithRepair(new() { Cost = 1, Cures = [new(1, 1.2)] }), "The probability of repair 0 curing cause 1 is 1.2; it must lie within 0..1."),
        ["cause"] = (WithRepair(new() { Cost = 1, Cures = [new(2, 1)] }), "Repair 0 cures cause 2; there are 2, counted from 0."),
        ["after"] = (WithRepair(new() { Cost = 1, Cures = [], After = [4] }), "Repair 0 comes after check 4; there are 1, counted from 0."),
        ["state"] = (WithRepair(new() { Cost = 1, Cures = [], State = (StepState)9 }), "Repair 0 has state 9, which does not exist."),
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Fault_IsNamedInFull(string name, string message)
    {
        var exception = Should.Throw<ArgumentException>(() => Plans.Of(Broken[name].Situation));

        exception.Message.ShouldContain("- " + message);
    }

    [Fact]
    public void SoundSituation_HasNoFaults() => SituationFaults.Find(Sound).ShouldBeEmpty();

    [Fact]
    public void SeveralFaults_AreReportedTogether() =>
        SituationFaults.Find(Sound with { SpecialistCost = -1, Unlisted = 0.5, Repairs = [new() { Cost = -2, Cures = [] }] }).Count.ShouldBe(3);

    private static Situation WithAccess(PlanAccess access) => Sound with { Accesses = [Sound.Accesses[0], access] };

    private static Situation WithCheck(params PlanOutcome[] outcomes) => Sound with { Checks = [new() { Cost = 1, Outcomes = outcomes }] };

    private static Situation WithRepair(PlanRepair repair) => Sound with { Repairs = [repair] };
}
