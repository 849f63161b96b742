using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using DiagRules.Testability;
using DiagRules.TestSupport;

namespace DiagRules.Tests.Testability;

public sealed class TestabilityStudyTests
{
    private const double Tolerance = 1e-11;

    // A worked example of ours, carried through a pack; terms after MIL-STD-2165 (1985), IEEE Std 1522-2004, Simpson and Sheppard (1992, 1994). Expected
    // values were computed apart from this library.
    private static readonly string[] Rows = ["10010", "10010", "01010", "01100", "01100", "01100", "00001", "00000", "00100", "11010"];

    private static readonly double[] Rates = [4.0, 1.0, 2.5, 0.8, 0.5, 0.2, 0.7, 0.3, 0.6, 0.4];

    private static TestabilityStudy Example { get; } = Study(ExamplePack());

    [Fact]
    public void Worked_example_the_matrix_comes_through_the_pack()
    {
        Example.Causes.Select(cause => cause.Id).ShouldBe(Enumerable.Range(1, 10).Select(number => $"f{number}"), ignoreOrder: true);
        Example.Checks.Where(check => !check.DecidesNothing).Select(check => check.Id).ShouldBe([Model.Finding.Pattern, "t1", "t2", "t3", "t4", "t5"]);
        for (var cause = 0; cause < 10; cause++)
        {
            var row = string.Concat(Enumerable.Range(1, 5).Select(test => Example.Detects(cause, Check(Example, $"t{test}")) ? '1' : '0'));
            row.ShouldBe(Rows[int.Parse(Example.Causes[cause].Id[1..], CultureInfo.InvariantCulture) - 1]);
        }
    }

    [Fact]
    public void Worked_example_rates_and_groups()
    {
        var report = Example.Report;

        Causes(report.Undetected).ShouldBe("f8");
        report.AmbiguityGroups.Select(Causes).ShouldBe(["f1 f2", "f3", "f4 f5 f6", "f7", "f9", "f10"], ignoreOrder: true);
        report.DetectionRate.ShouldBe(0.9, Tolerance);
        report.DetectionRateByRate.ShouldBe(0.972727272727, Tolerance);
        report.IsolationRate(1).ShouldBe(0.444444444444, Tolerance);
        report.IsolationRate(2).ShouldBe(0.666666666667, Tolerance);
        report.IsolationRateByRate(1).ShouldBe(0.392523364486, Tolerance);
        report.IsolationRateByRate(2).ShouldBe(0.859813084112, Tolerance);
        report.MeanGroupSize.ShouldBe(1.5, Tolerance);
        report.ExpectedGroupSize.ShouldBe(1.88888888889, Tolerance);
        report.ExpectedGroupSizeByRate.ShouldBe(1.7476635514, Tolerance * 10);
    }

    [Fact]
    public void Worked_example_checks_that_can_go_and_sets_that_suffice()
    {
        // Every pack has the question whether the fault comes and goes; here no cause does.
        Checks(Example.Report.RedundantChecks).ShouldBe("pattern t4");
        Example.Report.MinimalCheckSets.Select(Checks).ShouldBe(["t1 t2 t3 t5"]);
    }

    [Fact]
    public void Worked_example_as_json()
    {
        var json = JsonDocument.Parse(Example.ToJson()).RootElement;

        json.GetProperty("detection-rate").GetDouble().ShouldBe(0.9, Tolerance);
        json.GetProperty("undetected").EnumerateArray().Single().GetString().ShouldBe("f8");
        json.GetProperty("isolation-rates").EnumerateArray().Select(rate => rate.GetProperty("group-size").GetInt32()).ShouldBe([1, 2, 3]);
        json.GetProperty("isolation-rates")[1].GetProperty("rate").GetDouble().ShouldBe(0.666666666667, Tolerance);
        json.GetProperty("causes").EnumerateArray().Single(cause => cause.GetProperty("cause").GetString() == "f10")
            .GetProperty("detected-by").EnumerateArray().Select(check => check.GetString()).ShouldBe(["t1", "t2", "t4"]);
        json.GetProperty("redundant-checks").EnumerateArray().Select(check => check.GetString()).ShouldBe(["pattern", "t4"]);
        json.GetProperty("imitations").GetArrayLength().ShouldBe(8);
        json.GetProperty("hidden-causes").GetArrayLength().ShouldBe(6);
    }

    [Fact]
    public void Rates_are_parts_of_all_causes() => Example.Causes.Sum(cause => cause.Rate).ShouldBe(1, 1e-12);

    // By hand. a: slow or none 0.3 + 0.3 = 0.6. b: 0.4 is not enough. c: noisy is there anyway, in 0.6 of all sound machines, but grinds is not.
    // d: only noisy, 1 - 0.4 * (1 - 0.9) = 0.96, which 0.6 of the sound ones are too.
    [Fact]
    public void A_check_detects_what_makes_an_abnormal_grade_likely_that_is_unlikely_without()
    {
        var study = Study("""
            findings:
              lift: { question: "Does it lift?", grades: [lifts, slow, none] }
              noise: { question: "Is it loud?", grades: [quiet, noisy, grinds], background: { noisy: 0.6 } }
            causes:
              a: { title: A, share: 1, repair: r, shows: { lift: { slow: 0.3, none: 0.3 } } }
              b: { title: B, share: 1, repair: r, shows: { lift: { none: 0.4 } } }
              c: { title: C, share: 1, repair: r, shows: { noise: { grinds: 0.7 } } }
              d: { title: D, share: 1, repair: r, shows: { noise: { noisy: 0.9 } } }
            repairs: { r: { title: R } }

            """);

        Detected(study).ShouldBe(["a lift", "c noise"]);
        study.Likelihood(Cause(study, "d"), Check(study, "noise")).ShouldBe(0.96, 1e-12);
        study.Likelihood(Cause(study, "a"), Check(study, "lift")).ShouldBe(0.6, 1e-12);
        Causes(study, study.Report.Undetected).ShouldBe("b d");
    }

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.8, true)]
    [InlineData(0.81, false)]
    [InlineData(1, false)]
    public void The_threshold_is_inclusive(double detection, bool detects)
    {
        var study = Study(
            """
            findings: { lamp: { question: "Is it on?", grades: [on, off] } }
            causes: { a: { title: A, share: 1, repair: r, shows: { lamp: { off: 0.8 } } } }
            repairs: { r: { title: R } }

            """,
            new TestabilityOptions { Detection = detection });

        study.Detects(0, 0).ShouldBe(detects);
    }

    [Fact]
    public void Causes_reach_findings_through_effects_and_readings_decide_them()
    {
        var study = Study("""
            readings: { feed: { question: Volts, unit: V }, load: { question: Volts behind, unit: V } }
            findings:
              supply: { title: Supply, grades: [good, weak], bands: { of: feed, rising: [weak, 11 V, good] } }
              fuse: { title: Fuse, grades: [whole, blown], read: { whole: load > 10 V, blown: load <= 10 V and feed > 11 V } }
            effects: { charge: { title: Charge, grades: [full, low], shows: { supply: { weak: 0.9 } } } }
            causes:
              a: { title: A, share: 1, repair: r, shows: { charge: { low: 0.8 } } }
              b: { title: B, share: 1, repair: r, shows: { fuse: { blown: 1 } } }
            checks:
              both: { title: Both, gives: [feed, load] }
              first: { title: First, gives: [feed] }
            repairs: { r: { title: R } }

            """);

        // 0.8 * 0.9 by hand.
        study.Likelihood(Cause(study, "a"), Check(study, "first")).ShouldBe(0.72, 1e-12);
        Detected(study).ShouldBe(["a both", "a first", "b both"]);
    }

    [Fact]
    public void Groups_say_what_the_grades_still_tell_apart()
    {
        var study = Study("""
            findings: { lift: { question: "Does it lift?", grades: [lifts, slow, none] } }
            causes:
              a: { title: A, share: 1, repair: r, shows: { lift: { slow: 0.9 } } }
              b: { title: B, share: 1, repair: r, shows: { lift: { none: 0.9 } } }
              c: { title: C, share: 1, repair: r, shows: { lift: { slow: 0.8 } } }
            repairs: { r: { title: R } }

            """);

        study.ToldApartByGrade.Single().Select(part => Causes(study, part)).ShouldBe(["a c", "b"], ignoreOrder: true);
        study.ToText().ShouldContain("what the checks show still tells A or C from B");
    }

    [Fact]
    public void A_check_that_serves_rules_only_decides_nothing()
    {
        var study = Study("""
            findings:
              lamp: { question: "Is it on?", grades: [on, off] }
              paint: { question: "Is it red?", grades: [red, blue] }
            causes: { a: { title: A, share: 1, repair: r, shows: { lamp: { off: 0.8 } } } }
            repairs: { r: { title: R } }

            """);

        study.Checks.Single(check => check.DecidesNothing).Id.ShouldBe("paint");
        study.ToText().ShouldContain("(decides no finding by itself)");
    }

    [Fact]
    public void Html_is_well_formed_and_hostile_titles_stay_text()
    {
        var study = Study(ExamplePack().Replace("title: F3", "title: \"<script>alert(1)</script> & \\\"x\\\" ]]> \\u202E\"", StringComparison.Ordinal));

        var html = XDocument.Parse(study.ToHtml());
        html.Descendants().ShouldNotContain(element => element.Name.LocalName == "script");
        html.Descendants(XName.Get("rect", "http://www.w3.org/2000/svg")).Count(rect => (string?)rect.Attribute("fill") == "#123f6d")
            .ShouldBe(Rows.Sum(row => row.Count(cell => cell == '1')));
        html.Descendants(XName.Get("text", "http://www.w3.org/2000/svg")).ShouldContain(text => text.Value == "no check can prove it");
    }

    [Fact]
    public void Options_out_of_range_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Study(ExamplePack(), new TestabilityOptions { Detection = 0.4 }));
        Should.Throw<ArgumentOutOfRangeException>(() => Study(ExamplePack(), new TestabilityOptions { Detection = double.NaN }));
        Should.Throw<ArgumentOutOfRangeException>(() => Study(ExamplePack(), new TestabilityOptions { CheckSets = 0 }));
    }

    private static string ExamplePack()
    {
        var tests = Enumerable.Range(1, 5).Select(test => $"  t{test}: {{ question: \"Does test {test} pass?\", grades: [passes, fails] }}");
        var causes = Rows.Select((row, index) =>
        {
            var shows = row.Select((cell, test) => (cell, test)).Where(pair => pair.cell == '1').Select(pair => $"t{pair.test + 1}: {{ fails: 1 }}");
            return string.Create(CultureInfo.InvariantCulture, $"  f{index + 1}: {{ title: F{index + 1}, share: {Rates[index]}, repair: r, shows: {{ {string.Join(", ", shows)} }} }}");
        });
        return $"findings:\n{string.Join('\n', tests)}\ncauses:\n{string.Join('\n', causes)}\nrepairs: {{ r: {{ title: R }} }}\n";
    }

    private static TestabilityStudy Study(string sections, TestabilityOptions? options = null) =>
        TestabilityStudy.Of(DiagnosisEngine.Compile(PackText.Of(sections).Load().Require()), options);

    private static IEnumerable<string> Detected(TestabilityStudy study) =>
        (from cause in Enumerable.Range(0, study.Causes.Length)
         from check in Enumerable.Range(0, study.Checks.Length)
         where study.Detects(cause, check)
         select $"{study.Causes[cause].Id} {study.Checks[check].Id}").Order(StringComparer.Ordinal);

    private static string Causes(IEnumerable<int> causes) => Causes(Example, causes);

    private static string Causes(TestabilityStudy study, IEnumerable<int> causes) =>
        string.Join(' ', causes.Select(cause => study.Causes[cause].Id).OrderBy(id => id.Length).ThenBy(id => id, StringComparer.Ordinal));

    private static string Checks(IEnumerable<int> checks) => string.Join(' ', checks.Select(check => Example.Checks[check].Id));

    private static int Cause(TestabilityStudy study, string id) => study.Causes.ToList().FindIndex(cause => cause.Id == id);

    private static int Check(TestabilityStudy study, string id) => study.Checks.ToList().FindIndex(check => check.Id == id);
}
