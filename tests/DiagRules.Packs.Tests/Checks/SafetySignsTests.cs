using DiagRules.Packs.Checks;

namespace DiagRules.Packs.Tests.Checks;

/// <summary>
/// Signs against lists of ISO 7010 that public repositories publish; meanings in short form. M068 and the like, registered later, are
/// known by number alone.
/// </summary>
public class SafetySignsTests
{
    [Theory]
    [InlineData("W001", "general warning")]
    [InlineData("W011", "slippery surface")]
    [InlineData("W012", "electricity")]
    [InlineData("W017", "hot surface")]
    [InlineData("W018", "automatic start-up")]
    [InlineData("W019", "crushing")]
    [InlineData("W021", "flammable material")]
    [InlineData("W023", "corrosive substance")]
    [InlineData("W024", "crushing of hands")]
    [InlineData("W026", "battery charging")]
    [InlineData("W029", "pressurized cylinder")]
    [InlineData("M001", "general mandatory action")]
    [InlineData("M002", "refer to instruction manual")]
    [InlineData("M004", "wear eye protection")]
    [InlineData("M008", "wear safety footwear")]
    [InlineData("M009", "wear protective gloves")]
    [InlineData("M021", "disconnect before maintenance or repair")]
    [InlineData("P003", "no open flame")]
    [InlineData("P010", "do not touch")]
    [InlineData("P015", "no reaching in")]
    [InlineData("P031", "do not alter the state of the switch")]
    public void Sign_HasItsMeaning(string number, string meaning)
    {
        SafetySigns.Has(number).ShouldBeTrue();
        SafetySigns.Meaning(number).ShouldBe(meaning);
    }

    [Fact]
    public void SignRegisteredLater_IsKnown() => SafetySigns.Has("M068").ShouldBeTrue();

    [Theory]
    [InlineData("W000")]
    [InlineData("W999")]
    [InlineData("w012")]
    [InlineData("W12")]
    [InlineData("M069")]
    [InlineData("X001")]
    [InlineData("")]
    public void NumberOutsideTheRegister_IsUnknown(string number) => SafetySigns.Has(number).ShouldBeFalse();
}
