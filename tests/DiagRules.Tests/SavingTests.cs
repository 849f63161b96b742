using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Tests;

public sealed class SavingTests
{
    [Fact]
    public void A_saved_session_resumes_to_the_same_answer()
    {
        var session = SmallLift.Start("dead", ("feed-volts", "12.345678901 V"), ("oil", "cannot-tell"), ("renew-fuse", "no-change"), ("load-volts", "over-range"));
        session.Observe(new Observation("sound", new Seen(new Model.Conditions.GradeSet(0b1100))) { By = Skill.Owner, Trust = 0.7, At = "2026-03-02", Note = "on the phone" });
        session.Observe("feed-volts", "124 V").IsUsed.ShouldBeFalse();

        var resumed = SmallLift.Engine.Resume(session.Save());

        resumed.Record.ShouldBe(session.Record);
        DiagnosisJson.Write(resumed.Diagnose()).ShouldBe(DiagnosisJson.Write(session.Diagnose()));
    }

    [Theory]
    [InlineData("", "This is no saved session: line 1, column 1 cannot be read, or a key is missing or unknown there.")]
    [InlineData("{}", "This is no saved session: line 1, column 3 cannot be read, or a key is missing or unknown there.")]
    [InlineData("""{ "diagrules-session": 9, "pack": "small-lift", "version": "1.0.0", "observations": [] }""", "The saved session has form 9; this version reads form 1.")]
    [InlineData(
        """{ "diagrules-session": 1, "pack": "small-lift", "version": "0.9.0", "observations": [] }""",
        "The saved session belongs to pack 'small-lift' 0.9.0; this is 'small-lift' 1.0.0. Go on with that version, or start anew.")]
    [InlineData(
        """{ "diagrules-session": 1, "pack": "small-lift", "version": "1.0.0", "chassis": "SL2", "observations": [] }""",
        "The saved session is for chassis 'SL2'; this engine is for 'SL1'.")]
    public void What_cannot_be_resumed_says_why(string json, string message) =>
        Should.Throw<SessionFormatException>(() => SmallLift.Engine.Resume(json)).Message.ShouldBe(message);
}
