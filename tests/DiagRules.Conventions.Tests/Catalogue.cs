using DiagRules.Model.Problems;

namespace DiagRules.Conventions.Tests;

/// <summary>The catalogue of problems.</summary>
public sealed class Catalogue
{
    [Fact]
    public void Codes_are_unique_and_in_order() =>
        ProblemCatalogue.All.Select(descriptor => descriptor.Code).ShouldBe(
            ProblemCatalogue.All.Select(descriptor => descriptor.Code).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_descriptor_is_listed()
    {
        var declared = typeof(ProblemCatalogue).GetFields()
            .Where(field => field.FieldType == typeof(ProblemDescriptor))
            .Select(field => (ProblemDescriptor)field.GetValue(null)!);

        ProblemCatalogue.All.ShouldBe(declared, ignoreOrder: true);
    }

    [Fact]
    public void A_title_is_a_few_plain_words() =>
        ProblemCatalogue.All.Where(descriptor => descriptor.Title.Length is < 5 or > 90 || descriptor.Title.EndsWith('.')).ShouldBeEmpty();
}
