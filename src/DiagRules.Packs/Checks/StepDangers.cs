using System.Text.RegularExpressions;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Checks;

/// <summary>Steps that name a danger in an entry that has no hazard.</summary>
/// <remarks>Common practice of the trade, not a standard; the list is English, as the texts of most packs are.</remarks>
internal sealed partial class StepDangers(CheckScope scope)
{
    public void Run()
    {
        foreach (var (declared, step) in scope.Of<WorkStep>(Section.Checks, Section.Access, Section.Repairs).Where(step => step.Entry.Hazards.IsEmpty))
        {
            foreach (var text in declared.Body.Find("steps")?.Value is ListNode steps ? steps.Items.OfType<ScalarNode>() : [])
            {
                if (Danger().Match(text.Value) is { Success: true } match)
                {
                    scope.Warn(
                        ProblemCatalogue.DangerWithoutHazard,
                        text.Text.At(match.Index, match.Length),
                        $"'{match.Value}' stands in a step of '{declared.Id}', which has no hazard; name what can hurt under 'hazards'.",
                        declared);
                    break;
                }
            }
        }
    }

    [GeneratedRegex(
        """
        \b(acids?|burns?|burnt|crush(es|ed|ing)?|electric shock|explo(de|des|sion|sive)|fire|flames?|flammable|fuel vapou?r|gas(es)?|high voltage|hot|
        injection|jack(ed|ing)? up|live|petrol|pinch(es|ed|ing)?|poison(ous)?|pressure|pressuri[sz]ed|prop(s|ped)? (it|the|up|under)|scald(s|ing)?|
        short[- ]circuit|sparks?|springs? under tension|suspended load|toxic|trap(s|ped)? (hand|finger)s?|under the (vehicle|platform|load)|weld(s|ed|ing)?)\b
        """,
        RegexOptions.IgnoreCase | RegexOptions.IgnorePatternWhitespace | RegexOptions.CultureInvariant)]
    private static partial Regex Danger();
}
