namespace DiagRules.Electrohydraulics.Tests;

/// <summary>What a pack's author reads about a calculation is complete.</summary>
public sealed class DescriptionTests
{
    public static IEnumerable<TheoryDataRow<string>> Names =>
        Calling.Library.Calculations.Select(calculation => new TheoryDataRow<string>(calculation.Description.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Description_IsComplete(string name)
    {
        var description = Calling.Find(name).Description;

        string[] texts = [description.Title, description.Formula, description.Source, description.ValidRange, .. description.Parameters.Select(parameter => parameter.Meaning)];
        texts.ShouldAllBe(text => text.Length >= 5 && text.Trim() == text);
        description.Title.ShouldEndWith(".");
        description.Parameters.ShouldNotBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Names_AreKebabCaseAndUnique(string name)
    {
        var parameters = Calling.Find(name).Description.Parameters.Select(parameter => parameter.Name).ToList();

        parameters.ShouldBeUnique();
        parameters.Append(name).ShouldAllBe(word => word.Split('-').All(part => part.Length > 0 && part.All(sign => char.IsAsciiLetterLower(sign) || char.IsAsciiDigit(sign))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Formula_NamesEveryParameter(string name)
    {
        var description = Calling.Find(name).Description;
        var words = description.Formula.Split([' ', '(', ')', ',', '^', '/', '*', ';', ':'], StringSplitOptions.RemoveEmptyEntries);

        description.Parameters.Select(parameter => parameter.Name).Except(words).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Defaults_AreWithinWhatTheCalculationTakes(string name)
    {
        var calculation = Calling.Find(name);
        foreach (var (parameter, index) in calculation.Description.Parameters.Select((parameter, index) => (parameter, index)))
        {
            if (parameter.Default is not { } value)
            {
                continue;
            }

            double[] arguments = [.. calculation.Description.Parameters.Select(_ => double.NaN)];
            arguments[index] = value;
            calculation.Compute(arguments).Reason.ShouldNotBeNull().ShouldNotContain($"'{parameter.Name}'");
        }
    }

    /// <summary>Shipped packs call these; a change here breaks them.</summary>
    [Theory]
    [InlineData("locked-rotor-current(supply: V, resistance: ohm)")]
    [InlineData("conductor-resistance(length: m, area: mm2, temperature: degC)")]
    [InlineData("cable-drop(current: A, length: m, area: mm2, temperature: degC)")]
    [InlineData("battery-charge(volts: V, temperature: degC = 25 degC)")]
    [InlineData("internal-resistance(rest-volts: V, load-volts: V, current: A)")]
    [InlineData("cylinder-force(pressure: bar, bore: mm)")]
    [InlineData("cylinder-time(bore: mm, stroke: mm, flow: L/min)")]
    public void Signature_PacksRelyOnIt_Stays(string signature) =>
        Calling.Find(signature[..signature.IndexOf('(', StringComparison.Ordinal)]).Description.Signature.ShouldBe(signature);

    /// <summary>The example of the library's documentation.</summary>
    [Fact]
    public void Example_OfTheDocumentation_Holds()
    {
        var calculation = ElectrohydraulicsLibrary.Create().Find("locked-rotor-current").ShouldNotBeNull();

        var result = calculation.Compute([12, 0.06]);

        (result.IsComputed ? $"{result.Value} A" : $"cannot be computed because {result.Reason}").ShouldBe("200 A");
    }

    [Fact]
    public void Library_NameAndVersion()
    {
        Calling.Library.Name.ShouldBe("electrohydraulics");
        Calling.Library.Version.ShouldBe(new Version(1, 0, 0));
        Calling.Library.Calculations.ShouldNotBeEmpty();
    }
}
