using System.Collections.Frozen;
using System.Globalization;

namespace DiagRules.Packs.Checks;

/// <summary>
/// Safety signs registered in ISO 7010 that work on vehicles and machines calls for: warnings (W), mandatory actions (M),
/// prohibitions (P). Numbers and meanings as the standard's register gives them, in short form and from memory of it; before relying on
/// a meaning, look at the standard.
/// </summary>
internal static class SafetySigns
{
    private static readonly FrozenDictionary<string, string> Meanings = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["W001"] = "general warning",
        ["W002"] = "explosive material",
        ["W003"] = "radioactive material or ionizing radiation",
        ["W004"] = "laser beam",
        ["W005"] = "non-ionizing radiation",
        ["W006"] = "magnetic field",
        ["W007"] = "floor-level obstacle",
        ["W008"] = "drop (fall)",
        ["W009"] = "biological hazard",
        ["W010"] = "low temperature",
        ["W011"] = "slippery surface",
        ["W012"] = "electricity",
        ["W013"] = "guard dog",
        ["W014"] = "forklift trucks and other industrial vehicles",
        ["W015"] = "suspended load",
        ["W016"] = "toxic material",
        ["W017"] = "hot surface",
        ["W018"] = "automatic start-up",
        ["W019"] = "crushing",
        ["W020"] = "overhead obstacle",
        ["W021"] = "flammable material",
        ["W022"] = "sharp element",
        ["W023"] = "corrosive substance",
        ["W024"] = "crushing of hands",
        ["W025"] = "counterrotating rollers",
        ["W026"] = "battery charging",
        ["W027"] = "optical radiation",
        ["W028"] = "oxidizing substance",
        ["W029"] = "pressurized cylinder",
        ["W030"] = "hand crushing between press brake and material",
        ["W031"] = "hand crushing between press brake tool",
        ["W032"] = "rapid movement of workpiece in press brake",
        ["W033"] = "barbed wire",
        ["W034"] = "bull",
        ["W035"] = "falling objects",
        ["W036"] = "fragile roof",
        ["W037"] = "running over by remote operator controlled machine",
        ["W038"] = "sudden loud noise",
        ["W039"] = "falling ice",
        ["W040"] = "roof avalanche",
        ["W041"] = "asphyxiating atmosphere",
        ["W042"] = "arc flash",
        ["M001"] = "general mandatory action",
        ["M002"] = "refer to instruction manual",
        ["M003"] = "wear ear protection",
        ["M004"] = "wear eye protection",
        ["M005"] = "connect an earth terminal to the ground",
        ["M006"] = "disconnect mains plug from electrical outlet",
        ["M007"] = "opaque eye protection",
        ["M008"] = "wear safety footwear",
        ["M009"] = "wear protective gloves",
        ["M010"] = "wear protective clothing",
        ["M011"] = "wash your hands",
        ["M012"] = "use handrail",
        ["M013"] = "wear a face shield",
        ["M014"] = "wear head protection",
        ["M015"] = "wear high-visibility clothing",
        ["M016"] = "wear a mask",
        ["M017"] = "wear respiratory protection",
        ["M018"] = "wear a safety harness",
        ["M019"] = "wear a welding mask",
        ["M020"] = "wear safety belts",
        ["M021"] = "disconnect before maintenance or repair",
        ["M022"] = "use barrier cream",
        ["M023"] = "use footbridge",
        ["M024"] = "use this walkway",
        ["M025"] = "protect infants' eyes",
        ["M026"] = "use protective apron",
        ["M027"] = "install a guard",
        ["M028"] = "keep locked",
        ["M029"] = "sound horn",
        ["M030"] = "place rubbish in the bin",
        ["M031"] = "use table saw adjustable guard",
        ["M032"] = "use anti-static footwear",
        ["P001"] = "general prohibition",
        ["P002"] = "no smoking",
        ["P003"] = "no open flame",
        ["P004"] = "no thoroughfare",
        ["P005"] = "not drinking water",
        ["P006"] = "no access for forklift trucks and other industrial vehicles",
        ["P007"] = "no access for people with active implanted cardiac devices",
        ["P008"] = "no metallic articles or watches",
        ["P010"] = "do not touch",
        ["P011"] = "do not extinguish with water",
        ["P012"] = "no heavy load",
        ["P013"] = "no activated mobile phones",
        ["P014"] = "no access for people with metallic implants",
        ["P015"] = "no reaching in",
        ["P017"] = "no pushing",
        ["P018"] = "no sitting",
        ["P019"] = "no stepping on surface",
        ["P020"] = "do not use lift in the event of fire",
        ["P021"] = "no dogs",
        ["P022"] = "no eating or drinking",
        ["P023"] = "do not obstruct",
        ["P024"] = "do not walk or stand here",
        ["P025"] = "do not use this incomplete scaffold",
        ["P026"] = "do not use this device in a bathtub, shower or water-filled reservoir",
        ["P027"] = "do not use this lift for people",
        ["P028"] = "do not wear gloves",
        ["P029"] = "no photography",
        ["P030"] = "do not tie knots in rope",
        ["P031"] = "do not alter the state of the switch",
        ["P032"] = "do not use for face grinding",
        ["P033"] = "do not use for wet grinding",
        ["P034"] = "do not use with hand-held grinder",
        ["P035"] = "do not wear metal-studded footwear",
        ["P036"] = "no children allowed",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Numbers whose meaning is known, in order.</summary>
    public static IEnumerable<string> Numbers => Meanings.Keys.Order(StringComparer.Ordinal);

    /// <summary>The numbers in short, for messages.</summary>
    public const string Ranges = "W001 to W080, M001 to M068, P001 to P074";

    // Registered after the numbers above; their meanings are not needed here, and refusing a sign that exists would be worse.
    private static readonly (char Kind, int First, int Last)[] Later = [('W', 43, 80), ('M', 33, 68), ('P', 37, 74)];

    /// <summary>Whether a number is registered.</summary>
    public static bool Has(string number) =>
        Meanings.ContainsKey(number)
        || (number.Length == 4 && int.TryParse(number.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var value)
            && Later.Any(range => range.Kind == number[0] && value >= range.First && value <= range.Last));

    /// <summary>The meaning in short form.</summary>
    public static string? Meaning(string number) => Meanings.GetValueOrDefault(number);
}
