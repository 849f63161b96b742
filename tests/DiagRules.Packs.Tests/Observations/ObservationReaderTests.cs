using CsCheck;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Observations;
using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Tests.Observations;

public sealed class ObservationReaderTests
{
    private readonly ObservationReader _reader = new(new TestMachine().ToPack());

    [Theory]
    [InlineData("fuse-feed", "12.6 V", 12.6, "V")]
    [InlineData("fuse-feed", "12600 mV", 12600, "mV")]
    [InlineData("fuse-feed", " 12.6 V ", 12.6, "V")]
    [InlineData("strokes", "3", 3, "number")]
    [InlineData("oil-temperature", "-5 degC", -5, "degC")]
    [InlineData("fuse-feed", "over-range", double.PositiveInfinity, "V")]
    [InlineData("fuse-feed", "under-range", double.NegativeInfinity, "V")]
    public void A_reading_takes_a_quantity_in_any_unit_of_its_dimension(string id, string value, double number, string unit) =>
        Usable(id, value).ShouldBe(new Observation(id, new Measured(new Quantity(number, TestMachine.UnitOf(unit)))));

    [Theory]
    [InlineData("pump-fuse", "blown", 0b10)]
    [InlineData("pump-sound", "clicks-only or silent", 0b11000)]
    [InlineData("pump-sound", "stalled or worse", 0b11100)]
    [InlineData("brushes-worn", "absent", 0b01)]
    [InlineData("switch-off", "present", 0b10)]
    public void Findings_and_causes_take_grades(string id, string value, byte grades) =>
        Usable(id, value).ShouldBe(new Observation(id, new Seen(new GradeSet(grades))));

    [Theory]
    [InlineData("fuse-feed")]
    [InlineData("pump-fuse")]
    [InlineData("brushes-worn")]
    public void Asked_without_an_answer(string id) => Usable(id, "cannot-tell").ShouldBe(new Observation(id, new CannotTell()));

    [Theory]
    [InlineData("renew-pump-fuse", "no-change", TriedResult.NoChange)]
    [InlineData("renew-pump-fuse", "for-a-while", TriedResult.ForAWhile)]
    [InlineData("renew-pump-fuse", "cured", TriedResult.Cured)]
    [InlineData("switch-off", "no-change", TriedResult.NoChange)]
    public void A_repair_or_a_precondition_that_can_be_restored_takes_what_came_of_it(string id, string value, TriedResult result) =>
        Usable(id, value).ShouldBe(new Observation(id, new Tried(result)));

    [Theory]
    [InlineData("pump-fusse", "blown", "DR2004", "No reading, finding, cause or repair 'pump-fusse'. Did you mean 'pump-fuse'?")]
    [InlineData("motor-supply", "weak", "DR2007", "'motor-supply' is an effect, which nobody observes; make it a finding if it is to be tested (readings, findings, causes and preconditions are observed, and repairs are tried).")]
    [InlineData("fuse-rating", "50 A", "DR2007", "'fuse-rating' is a parameter; readings, findings, causes and preconditions are observed, and repairs are tried.")]
    [InlineData("pump-fuse", "bown", "DR2008", "Finding 'pump-fuse' has no grade 'bown'; its grades are 'whole' and 'blown'. Did you mean 'blown'?")]
    [InlineData("lid-open", "no-change", "DR2008", "Precondition 'lid-open' has no grade 'no-change'; its grades are 'absent' and 'present'.")]
    [InlineData("pump-fuse", "12 V", "DR6002", "'pump-fuse' is a finding, and '12 V' is not a grade; it takes 'whole', 'blown' or 'cannot-tell'.")]
    [InlineData("pump-fuse", "", "DR6002", "'pump-fuse' is a finding, and '' is not a grade; it takes 'whole', 'blown' or 'cannot-tell'.")]
    [InlineData("fuse-load", "5 A", "DR6002", "'fuse-load' is a voltage (V), and '5 A' is a current (A); it takes a value such as '5 V'.")]
    [InlineData("oil-temperature", "300 K", "DR6002", "'oil-temperature' is a temperature (degC), and '300 K' is a temperature difference (K); it takes a value such as '5 degC'.")]
    [InlineData("fuse-load", "blown", "DR6002", "'fuse-load' is a reading, and 'blown' is not a value of it; it takes a voltage (V) such as '5 V', 'over-range', 'under-range' or 'cannot-tell'.")]
    [InlineData("fuse-load", "5", "DR3103", "'5' has no unit; 'fuse-load' is a voltage (V), so write '5 V' if that is what was read.")]
    [InlineData("fuse-load", "0,2 V", "DR3101", "'0,2' is not a number as packs write it: write '0.2'.")]
    [InlineData("fuse-load", "5 v", "DR3104", "No unit 'v'. Did you mean 'V'? Small and capital letters matter.")]
    [InlineData("fuse-drop", "0.3 V", "DR6002", "'fuse-drop' is worked out from other readings and not observed itself; give 'fuse-feed' and 'fuse-load'.")]
    [InlineData("renew-pump-fuse", "no-chnage", "DR6002", "'renew-pump-fuse' is a repair that was tried, and 'no-chnage' is not what can come of it; it takes 'no-change', 'for-a-while' or 'cured'. Did you mean 'no-change'?")]
    public void What_cannot_be_read_says_what_can(string id, string value, string code, string message)
    {
        var result = _reader.Read(id, value);

        result.Observation.ShouldBeNull();
        result.IsUsable.ShouldBeFalse();
        result.Problem.ShouldNotBeNull().Code.ShouldBe(code);
        result.Problem.Message.ShouldBe(message);
        result.Problem.Place.Pack.ShouldBe("test-lift");
    }

    [Theory]
    [InlineData("126 V")]
    [InlineData("-0.1 V")]
    public void A_value_that_is_not_plausible_is_reported_and_kept(string value)
    {
        var result = _reader.Read("fuse-feed", value);

        result.IsUsable.ShouldBeFalse();
        result.Observation.ShouldNotBeNull().Value.ShouldBeOfType<Measured>().Quantity.ToString(System.Globalization.CultureInfo.InvariantCulture).ShouldBe(value);
        result.Problem.ShouldNotBeNull().Code.ShouldBe("DR6002");
        result.Problem.Message.ShouldBe(
            $"'{value}' is outside what is plausible for 'fuse-feed' (0 V .. 32 V); it is taken for a slip of the pen (unit, decimal point), kept on record and used for nothing.");
    }

    [Theory]
    [InlineData("0 V")]
    [InlineData("32 V")]
    [InlineData("32000 mV")]
    [InlineData("over-range")]
    public void The_ends_of_what_is_plausible_and_what_the_meter_cannot_show_are_fine(string value) => Usable("fuse-feed", value);

    [Fact]
    public void A_repair_that_was_tried_is_read_at_its_places()
    {
        var machine = new TestMachine();
        var binder = new ObservationBinder(machine.Find, () => machine.Ids);
        var problems = new ProblemSink();
        var wrong = Marked.Parse("[|pump-fuse|]");
        var result = Marked.Parse("cured").Placed;

        binder.ReadTried(Marked.Parse("renew-pump-fuse").Placed, result, problems).ShouldBe(new Observation("renew-pump-fuse", new Tried(TriedResult.Cured)));
        problems.Count.ShouldBe(0);
        binder.ReadTried(wrong.Placed, result, problems).ShouldBeNull();
        var problem = problems.InOrder().ShouldHaveSingleItem();
        problem.Code.ShouldBe("DR2007");
        problem.Message.ShouldBe("'pump-fuse' is a finding; 'tried' takes a repair, or a precondition with 'restore'.");
        problem.Place.ShouldBe(wrong.Place);
    }

    [Fact]
    public void Whatever_is_typed_is_read_or_reported()
    {
        var ids = new TestMachine().Ids.Append("nobody-knows").ToArray();
        var values = Gen.OneOf(Gen.String[0, 20], Gen.OneOf("12 V", "12", "silent or worse", "cannot-tell", "over-range", "no-change", "5 A", "1e400 V", "-", ".5 V", " or "));

        Gen.Select(Gen.OneOf(ids), values).Sample(
            (id, value) =>
            {
                var result = _reader.Read(id, value);
                (result.Observation is null && result.Problem is null).ShouldBeFalse($"{id}: {value}");
            },
            iter: 10_000,
            threads: 1);
    }

    private Observation Usable(string id, string value)
    {
        var result = _reader.Read(id, value);
        result.Problem.ShouldBeNull();
        result.IsUsable.ShouldBeTrue();
        return result.Observation.ShouldNotBeNull();
    }
}
