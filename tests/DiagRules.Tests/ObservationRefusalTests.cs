using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;

namespace DiagRules.Tests;

/// <summary>What a host hands over wrongly is refused with one clear line, and nothing is lost.</summary>
public sealed class ObservationRefusalTests
{
    public static TheoryData<string, ObservedValue, string> Wrong => new()
    {
        { "pump", new CannotTell(), "Nothing called 'pump' in pack 'small-lift'." },
        { "fuse-drop", new Measured(new Quantity(1, VoltUnit)), "'fuse-drop' derives from other readings; give those instead." },
        { "feed-volts", new Measured(new Quantity(1, AmpereUnit)), "'feed-volts' is measured in V, not in A." },
        { "feed-volts", new Measured(new Quantity(double.NaN, VoltUnit)), "'feed-volts' takes a number in V, not 'NaN'." },
        { "feed-volts", new Seen(GradeSet.Of(0)), "'feed-volts' takes a number in V." },
        { "sound", new Seen(GradeSet.Of(6)), "'sound' takes one of: runs, slow, clicks, silent." },
        { "sound", new Measured(new Quantity(1, VoltUnit)), "'sound' takes one of: runs, slow, clicks, silent." },
        { "measure-fuse", new CannotTell(), "'measure-fuse' is nothing that is observed; expected a reading, a finding or a cause." },
        { "fuse", new Tried(TriedResult.NoChange), "No repair 'fuse' in pack 'small-lift'." },
    };

    private static Unit VoltUnit => UnitTable.TryGet("V", out var unit) ? unit : throw new InvalidOperationException();

    private static Unit AmpereUnit => UnitTable.TryGet("A", out var unit) ? unit : throw new InvalidOperationException();

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_observation_is_refused_and_the_session_goes_on(string id, ObservedValue value, string message)
    {
        var session = SmallLift.Start("dead", ("oil", "enough"));
        var before = DiagnosisJson.Write(session.Diagnose());

        var result = session.Observe(new Observation(id, value));

        result.IsAccepted.ShouldBeFalse();
        result.Problem!.Message.ShouldBe(message);
        DiagnosisJson.Write(session.Diagnose()).ShouldBe(before);
    }
}
