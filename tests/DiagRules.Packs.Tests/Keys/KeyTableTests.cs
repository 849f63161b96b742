using DiagRules.Packs.Keys;

namespace DiagRules.Packs.Tests.Keys;

/// <summary>The table of keys, from which the reader, the schemas and the tidier work.</summary>
public class KeyTableTests
{
    private static readonly IReadOnlyList<Shape> Shapes = [.. Reach(FileShapes.PackFile).Concat(Reach(CaseShapes.Case)).Distinct()];

    [Fact]
    public void EveryKey_HasOnePlainSentence() =>
        Shapes.SelectMany(shape => shape.Keys).ShouldAllBe(key => key.Meaning.EndsWith('.') && char.IsUpper(key.Meaning[0]));

    [Fact]
    public void EveryRequiredKey_HasAnExampleThatBeginsWithIt() =>
        Shapes.SelectMany(shape => shape.Keys).Where(key => key.IsRequired).ShouldAllBe(key => key.Example != null && key.Example.StartsWith(key.Name + ":", StringComparison.Ordinal));

    [Fact]
    public void Sections_StandInTheOrderOfTheFormat() =>
        FileShapes.Sections.Select(section => section.Section).ShouldBe(
            ["readings", "findings", "effects", "causes", "preconditions", "parameters", "complaints", "rules", "checks", "access", "hazards", "repairs"]);

    [Fact]
    public void EveryMap_IsWithinReachOfTheTable() => Shapes.Count.ShouldBe(21);

    private static IEnumerable<Shape> Reach(Shape shape) => shape.Keys.SelectMany(key => Reach(key.Form)).Prepend(shape);

    private static IEnumerable<Shape> Reach(Form form) => form switch
    {
        ShapeForm inner => Reach(inner.Shape),
        ListForm list => Reach(list.Item),
        MapForm map => Reach(map.Value),
        EitherForm either => either.Forms.SelectMany(Reach),
        _ => [],
    };
}
