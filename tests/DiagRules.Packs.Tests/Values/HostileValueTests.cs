using DiagRules.Model;
using DiagRules.Packs.Observations;
using DiagRules.Packs.Tests.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Tests.Values;

/// <summary>Values of packs that nobody knows: a mebibyte in one scalar is read or refused at once, and the message stays readable.</summary>
public sealed class HostileValueTests
{
    private const int Size = 1 << 20;

    public static TheoryData<string> Texts =>
    [
        new string('1', Size), new string('.', Size), "1" + new string(',', Size), string.Concat(Enumerable.Repeat("1,", Size / 2)), "5 " + new string('V', Size),
        "5 " + string.Concat(Enumerable.Repeat("V/", Size / 2)) + "V", new string(' ', Size), new string('-', Size), new string('a', Size),
        string.Concat(Enumerable.Repeat("a-", Size / 2)), string.Concat(Enumerable.Repeat("1 % + ", Size / 6)), string.Concat(Enumerable.Repeat("silent or ", Size / 10)),
        string.Concat(Enumerable.Repeat("1.", Size / 2)), "1.0.0-" + new string('0', Size) + "!", string.Concat(Enumerable.Repeat("\uD800", Size)), new string('\uFFFE', Size), new string('$', Size),
    ];

    private static readonly Func<PlacedText, ProblemSink, object?>[] Readers =
    [
        (text, problems) => NumberReader.Read(text, problems),
        (text, problems) => NumberReader.ReadCount(text, problems),
        (text, problems) => QuantityReader.Read(text, TestMachine.UnitOf("V"), problems),
        (text, problems) => QuantityReader.ReadUnit(text, problems),
        (text, problems) => RangeReader.Read(text, TestMachine.UnitOf("V"), problems),
        (text, problems) => AccuracyReader.Read(text, TestMachine.UnitOf("V"), null, problems),
        (text, problems) => ProbabilityReader.Read(text, ProbabilityWords.Default, problems),
        (text, problems) => ShareReader.Read(text, "brushes-worn", problems),
        (text, problems) => MoneyReader.ReadRate(text, problems),
        (text, problems) => MoneyReader.ReadExpense(text, problems),
        (text, problems) => FlagReader.Read(text, "lasting", problems),
        (text, problems) => IdReader.Read(text, IdKind.Template, problems),
        (text, problems) => VersionReader.Read(text, problems),
        (text, problems) => VersionReader.ReadVersionedId(text, problems),
        (text, problems) => DateReader.ReadMoment(text, "at", problems),
        (text, problems) => TrustReader.Read(text, problems),
        (text, problems) => OpenGradesReader.Read(text, new TestMachine().Get<Finding>("pump-sound"), problems),
    ];

    [Theory]
    [MemberData(nameof(Texts))]
    public void A_huge_value_is_refused_in_a_few_words(string text)
    {
        foreach (var read in Readers)
        {
            var problems = new ProblemSink();

            read(new PlacedText(text, default), problems).ShouldBeNull();

            problems.Count.ShouldBeInRange(1, 2);
            problems.InOrder().ShouldAllBe(problem => problem.Message.Length < 400);
        }
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void A_huge_observation_is_refused_in_a_few_words(string text)
    {
        var machine = new TestMachine();
        var reader = new ObservationReader(machine.ToPack());
        foreach (var id in machine.Ids)
        {
            (reader.Read(id, text).Problem?.Message.Length).ShouldNotBeNull().ShouldBeLessThan(400);
        }

        (reader.Read(text, "5 V").Problem?.Message.Length).ShouldNotBeNull().ShouldBeLessThan(400);
    }
}
