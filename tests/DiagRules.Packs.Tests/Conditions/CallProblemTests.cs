namespace DiagRules.Packs.Tests.Conditions;

/// <summary>What is said about calculations that are not there or not called as they must be.</summary>
public sealed class CallProblemTests
{
    private const string Signature = "locked-rotor-current(supply: V, resistance: ohm)";

    [Theory]
    [InlineData("[|locked-rotor-curent|](fuse-feed, 2 ohm) > 1 A", "No calculation 'locked-rotor-curent'. Did you mean 'locked-rotor-current'?")]
    [InlineData("[|power|](fuse-feed) > 1 W", "No calculation 'power'. The pack has those of 'electrohydraulics', and 'min', 'max', 'abs' and 'mean'.")]
    [InlineData("[|fuse-feed|] (3 V) > 1 W", "'fuse-feed' is a reading, not a calculation; write '*' where a product is meant.")]
    [InlineData("[|locked-rotor-current|](fuse-feed) > 1 A", "'locked-rotor-current' is not given its 'resistance' (resistance of the winding): " + Signature + ".")]
    [InlineData("locked-rotor-current(fuse-feed, 2 ohm, [|3 V|]) > 1 A", "'3 V' is one argument too many: " + Signature + ".")]
    [InlineData("locked-rotor-current(supply: fuse-feed, [|2 ohm|]) > 1 A", "'2 ohm' stands without a name behind a named argument; name it too: " + Signature + ".")]
    [InlineData("locked-rotor-current(fuse-feed, [|restance|]: 2 ohm) > 1 A", "'locked-rotor-current' takes no 'restance': " + Signature + ". Did you mean 'resistance'?")]
    [InlineData("locked-rotor-current(fuse-feed, [|supply|]: fuse-load) > 1 A", "'supply' is given twice: " + Signature + ".")]
    [InlineData("locked-rotor-current([|2 A|], 2 ohm) > 1 A", "'2 A' is a current (A), and 'supply' takes a voltage (V): " + Signature + ".")]
    [InlineData("[|min|]() > 1 A", "'min' is given no value; it takes one value or more: min(value, value, ...).")]
    [InlineData("[|abs|](1 A, 2 A) > 1 A", "'abs' is given 2 values; it takes one value: abs(value).")]
    [InlineData("max([|value|]: 1 A) > 1 A", "'max' takes its values without names: max(value, value, ...).")]
    public void A_call_that_does_not_fit_shows_what_the_calculation_takes(string marked, string message) => Parsed.ShouldFail(marked, "DR3009", message);

    [Theory]
    [InlineData("locked-rotor-current(fuse-feed, [|2|]) > 1 A", "DR3103", "'2' is a number without a unit, and 'resistance' of 'locked-rotor-current' takes a resistance (ohm), such as '5 ohm'.")]
    [InlineData(
        "warm-resistance(2 ohm, [|5 K|]) > 1 ohm",
        "DR3105",
        "'5 K' is a temperature difference (K), and 'at' of 'warm-resistance' takes a temperature (degC): warm-resistance(cold: ohm, [at: degC]).")]
    [InlineData("min(fuse-feed, [|3 A|]) > 1 V", "DR3102", "'fuse-feed' is a voltage (V) and '3 A' is a current (A); give another a voltage.")]
    [InlineData("max(fuse-feed, [|3|]) > 1 V", "DR3103", "'3' is a number without a unit and 'fuse-feed' is a voltage (V); write the unit, such as '3 V'.")]
    public void Units_of_arguments_are_checked_like_others(string marked, string code, string message) => Parsed.ShouldFail(marked, code, message);

    [Fact]
    public void Without_a_library_the_message_says_where_calculations_come_from()
    {
        var machine = new TestMachine { Calculations = [] };

        Parsed.ShouldFail(
            "[|fuse-melts|](fuse-feed) > 1 s",
            "DR3009",
            "No calculation 'fuse-melts'. Built in are 'min', 'max', 'abs' and 'mean'; others come from a library named under 'calculations' in 'pack.yaml'.",
            machine);
    }
}
