using DiagRules.Cli.Rendering;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Tests.Rendering;

public sealed class DiagnosisTextTests
{
    [Fact]
    public void OneOfEverything_ReadsAsOnePage() => Print(JackSample.Diagnosis, JackSample.Leading).ShouldBe("""
        Tarn P3 levelling jack
        tarn-p3-jack 1.4.0, chassis P3 (of P3, P3-L)
        --------------------------------------------------------------------------------

        DANGER W019  The vehicle can drop off a jack and crush.
          Avoid      Nobody under it while a jack moves.
          Over when  Wheels on the ground or stands under the frame.

        What is known
          - Complaint: Jack does not extend
          - Hold OUT for two seconds. What do you hear? Clicks once. (90 % sure)
          - Battery at rest: charged (from the readings)
          - Volts across the battery at rest: 25.1 +/- 0.083 V

        What does not agree
          - Oil in the tank: low (as seen) against between marks (by level-is-fine).
            Left out until it is settled.

        What it can be
           62 %  likely           Motor brushes worn
           29 %  possible         Contactor contacts burnt
            8 %  unlikely         Something this pack does not list
           <1 %                   Pump seized
          Beside it               Contactor contacts burnt may be there as well (31 %)
          Ruled out               Main fuse blown

        Why "Motor brushes worn" stands first
          9 % before anything was known, 62 % now.
          13 to 1 for it          Hold OUT for two seconds. What do you hear? Clicks
                                  once.
          1.6 to 1 against it     Battery at rest: charged
          1 other observation tells next to nothing about it.

        Advice
          - Do not fit a new fuse before the motor is proved.
            It opens again at once.

        Not yet
          - Renew the brushes: It opens again at once.

        What to find out next
          Tap the motor housing while a helper holds OUT
          Price        8 minutes, for a workshop; about 100 minutes in all until the
                       complaint is gone
          Why          It tells worn brushes from burnt contacts.
          WARNING W012 The battery post is not fused.
            Avoid      Take off rings and watch.
          Mind         DANGER W019 crushed under frame (in full above)
          First        Cover of the power unit off (6 minutes; bit 30)
                       1. Isolator off.
                       2. Take out four bolts.
          Tools        hammer with a plastic face
          Steps        1. Reach in from outside.
                       2. Stop at the first start.
          What its answers would tell
             55 %  no change: then 48 % Contactor contacts burnt
             45 %  runs: then 97 % Motor brushes worn

        Or else
          2. Renew the brushes (51 minutes, counted as 69 minutes with its material, for
             a workshop). Nothing cheaper is likely to change the answer.

        Notes
          - The plan looked two steps ahead.

        The maker's instructions, local codes and licensed practice come first; a
        caution that is not shown here may still apply.

        """, StringCompareShould.IgnoreLineEndings);

    [Fact]
    public void ARepairThatLeads_ShowsPartsFastenersAndProof() => Print(JackSample.Diagnosis with { Next = [JackSample.RenewBrushes] }, null).ShouldContain("""
        What to do next
          Renew the brushes
          Price        51 minutes, counted as 69 minutes with its material, for a
                       workshop; about 89 minutes in all until the complaint is gone
          Why          Nothing cheaper is likely to change the answer.
          Mind         DANGER W019 crushed under frame (in full above)
          First        Cover of the power unit off (6 minutes; bit 30)
                       1. Isolator off.
                       2. Take out four bolts.
          Puts right   Motor brushes worn (62 %)
          Parts        brush set 24 V
                       gasket of the end cap
          Fasteners    bolts of the end cap, 10 mm across flats, tighten to 6 N.m
          Tools        bit 30
          Steps        1. Note which way the brush leads run.
          Prove it by  Run the jack out and in, 10 times where the fault came and went
                       (power unit runs normally)
        """.ReplaceLineEndings("\n"));

    [Fact]
    public void NothingKnown_SaysSo() => Print(JackSample.Diagnosis with { Complaint = null, Findings = [], Readings = [] }, null)
        .ShouldContain("What is known\n  Nothing yet.\n");

    [Fact]
    public void NothingLeftToDo_SaysSo() => Print(JackSample.Diagnosis with { Next = [] }, null)
        .ShouldContain("What to do next\n  Nothing is left that can be done with this skill and these tools.\n");

    [Fact]
    public void SomethingUnlistedThatLeads_StandsFirst()
    {
        var page = Print(JackSample.Diagnosis with { Unlisted = 0.7 }, JackSample.Leading);

        page.ShouldContain("   70 %  likely           Something this pack does not list\n   62 %");
        page.ShouldContain("Why \"Motor brushes worn\" stands first of those listed\n");
    }

    [Fact]
    public void AnAbsolutePack_HasNoUnlisted() =>
        Print(JackSample.Diagnosis with { Unlisted = null }, null).ShouldNotContain("does not list");

    [Fact]
    public void AWarningOfAStep_StandsWithTheStep()
    {
        var page = Print(JackSample.Diagnosis, JackSample.Leading);

        page.IndexOf("WARNING W012", StringComparison.Ordinal).ShouldBeGreaterThan(page.IndexOf("What to find out next", StringComparison.Ordinal));
        page.IndexOf("DANGER W019", StringComparison.Ordinal).ShouldBeLessThan(page.IndexOf("What is known", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(100)]
    public void EveryLine_KeepsToTheWidth(int width) => Print(JackSample.Diagnosis, JackSample.Leading, width).Split('\n')
        .ShouldAllBe(line => line.Length <= width);

    private static string Print(Diagnosis diagnosis, CauseExplanation? leading, int width = 80)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        new DiagnosisText(new Page(writer, width, hasColour: false), JackSample.Pack).Write(diagnosis, leading);
        return writer.ToString();
    }
}
