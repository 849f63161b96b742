using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Tests.Calculations;

public sealed class CalculationLibraryTests
{
    [Fact]
    public void Find_ByName_WhateverTheOrderGiven()
    {
        var library = Library(Called("twice"), Called("half"));

        library.Calculations.Select(calculation => calculation.Description.Name).ShouldBe(["half", "twice"]);
        library.Find("twice").ShouldNotBeNull().Description.Name.ShouldBe("twice");
        library.Find("thrice").ShouldBeNull();
    }

    [Fact]
    public void New_FaultyDescriptions_NamesEveryFault()
    {
        var volts = new CalculationParameter("volts", UnitTable.Get("V"), "volts");

        var faults = Should.Throw<ArgumentException>(() => Library(
            Called("half"), Called("half"), Called("Twice"), Called("mean"),
            Called("sum", volts, volts, volts with { Name = "rest volts" }, volts with { Name = "load-volts", Default = double.NaN })));

        faults.Message.ShouldBe(
            "Library 'sums' cannot be used. Calculation 'Twice' is not kebab-case. Calculation 'half' is there 2 times. " +
            "Calculation 'mean' has a name the condition language uses itself. Parameter 'volts' of 'sum' is there 2 times. " +
            "Parameter 'rest volts' of 'sum' is not kebab-case. The default of parameter 'load-volts' of 'sum' is not a finite number. " +
            "(Parameter 'calculations')");
    }

    [Fact]
    public void New_NameNotKebabCase_SaysSo() =>
        Should.Throw<ArgumentException>(() => new CalculationLibrary("My sums", new Version(1, 0, 0), [])).Message
            .ShouldBe("Library 'My sums' cannot be used. Its name 'My sums' is not kebab-case. (Parameter 'calculations')");

    [Fact]
    public void Signature_ShowsUnitsAndDefaults() =>
        Called("battery-charge",
            new("volts", UnitTable.Get("V"), "volts at rest"),
            new("temperature", UnitTable.Get("degC"), "of the battery", 298.15))
            .Description.Signature.ShouldBe("battery-charge(volts: V, temperature: degC = 25 degC)");

    [Fact]
    public void Result_WithoutAValue_HasAReasonAndIsNotANumber()
    {
        var none = CalculationResult.Because("the current is 0");
        CalculationResult some = 12.5;

        (none.IsComputed, none.Reason).ShouldBe((false, "the current is 0"));
        double.IsNaN(none.Value).ShouldBeTrue();
        (some.IsComputed, some.Reason, some.Value).ShouldBe((true, null, 12.5));
    }

    private static CalculationLibrary Library(params ICalculation[] calculations) => new("sums", new Version(1, 0, 0), calculations);

    private static FirstArgument Called(string name, params CalculationParameter[] parameters) =>
        new(new(name, "Gives what it was given.", [.. parameters], Unit.Number, "x", "none", "everywhere"));

    private sealed class FirstArgument(CalculationDescription description) : ICalculation
    {
        public CalculationDescription Description { get; } = description;

        public CalculationResult Compute(ReadOnlySpan<double> arguments) => arguments.IsEmpty ? 0 : arguments[0];
    }
}
