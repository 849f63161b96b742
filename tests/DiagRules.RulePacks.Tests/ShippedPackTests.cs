using DiagRules.Model.Cases;
using DiagRules.Replay;

namespace DiagRules.RulePacks.Tests;

/// <summary>Every shipped pack is clean, and every recorded case says what its technician would sign.</summary>
public sealed class ShippedPackTests
{
    private static readonly Dictionary<string, Lazy<PackReplay>> Replays = ShippedPacks.All.ToDictionary(
        pair => pair.Key, pair => new Lazy<PackReplay>(() => PackReplay.Play(pair.Value.Require())));

    public static TheoryData<string> Packs => [.. ShippedPacks.All.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Packs of a machine; a base that others extend has no chassis of its own, and its causes are met by theirs.</summary>
    public static TheoryData<string> ChassisPacks =>
        [.. ShippedPacks.All.Where(pair => pair.Value.Pack?.Chassis.IsEmpty == false).Select(pair => pair.Key).Order(StringComparer.Ordinal)];

    public static TheoryData<string, string> Cases
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (name, result) in ShippedPacks.All.OrderBy(pair => pair.Key, StringComparer.Ordinal))
            {
                foreach (var recorded in result.Pack?.Cases ?? [])
                {
                    data.Add(name, recorded.Id);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void A_shipped_pack_has_no_problem(string pack) =>
        ShippedPacks.All[pack].Problems.Where(problem => problem.Accepted is null).Select(problem => problem.ToString()).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_recorded_case_meets_its_expectation(string pack, string recorded) =>
        Replays[pack].Value.Cases.Single(replayed => replayed.Case.Id == recorded).Missed.ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Packs))]
    public void A_replay_reaches_the_acceptance_of_its_pack(string pack) =>
        Replays[pack].Value.Problems.Select(problem => problem.ToString()).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(ChassisPacks))]
    public void Every_cause_is_met_by_a_recorded_case(string pack)
    {
        var loaded = ShippedPacks.All[pack].Require();
        var met = loaded.Cases.SelectMany(recorded => recorded.Confirmed).ToHashSet();

        loaded.Causes.Select(cause => cause.Id).Where(cause => !met.Contains(cause)).ShouldBeEmpty();
    }

    [Fact]
    public void The_clicking_lift_with_six_readings_names_burnt_contacts()
    {
        var replayed = Replays["corrie-ld4-tail-lift"].Value.Cases.Single(candidate => candidate.Case.Id == "ld4-001");

        replayed.Case.Observations.Count(observation => observation.Value is Measured or Seen).ShouldBe(6);
        replayed.Ranking[0].Cause.ShouldBe("contactor-contacts-burnt");
        replayed.Ranking[0].Confidence.ShouldBeGreaterThanOrEqualTo(0.6);
    }
}
