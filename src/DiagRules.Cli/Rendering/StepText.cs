using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Cli.Rendering;

/// <summary>A step to do next: its price, its reason, how to get there, what can hurt, and how it is done.</summary>
internal sealed class StepText(Page page, Pack pack, HazardSheet sheet)
{
    private const int Indent = 2;
    private const int LabelWidth = 13;

    private readonly Titles _titles = new(pack);

    /// <summary>What the step is called: its title, or for a precondition what puts it right.</summary>
    public static string Title(NextStep step) => step.Title.TrimEnd('.');

    /// <summary>Minutes with everything that must be opened first, and who can do it.</summary>
    public static string Price(NextStep step)
    {
        var material = step.Cost - step.Minutes >= 0.5 ? $", counted as {Words.Minutes(step.Cost)} with its material" : "";
        return step.Kind == StepKind.Specialist
            ? $"worth {Words.Minutes(step.Cost)}"
            : $"{Words.Minutes(step.Minutes)}{material}, for {Words.Who(step.Skill)}";
    }

    /// <summary>Everything a person needs to do the step.</summary>
    /// <param name="diagnosis">The diagnosis that proposes it.</param>
    /// <param name="step">The step.</param>
    /// <param name="isAsked">Whether its questions follow below, so that a plain question need not be its title too.</param>
    public void Write(Diagnosis diagnosis, NextStep step, bool isAsked = false)
    {
        page.Text(Indent, isAsked && pack.FindCheck(step.Id) is { IsQuestion: true } ? "" : Title(step), Ink.Strong);
        Labelled("Price", $"{Price(step)}; about {Words.Minutes(step.Cost + step.ExpectedCostAfter)} in all until the complaint is gone");
        Labelled("Why", step.Why);
        sheet.Write(page, Indent, HazardSheet.OfStep(diagnosis, step));
        WriteAccess(step);
        var work = step.Kind switch
        {
            StepKind.Check => pack.FindCheck(step.Id),
            StepKind.Repair => pack.FindRepair(step.Id),
            _ => (WorkStep?)null,
        };
        if (work is Repair repair)
        {
            WriteRepair(diagnosis, repair);
        }

        if (work is not null)
        {
            Labelled("Tools", string.Join(", ", work.Tools));
            Numbered("Steps", work.Instructions);
        }

        if (work is Repair { VerifyBy.IsEmpty: false } proved)
        {
            WriteProof(proved);
        }
    }

    /// <summary>What each answer of a check would say.</summary>
    public void WriteAnswers(NextStep step)
    {
        if (step.Answers.IsEmpty)
        {
            return;
        }

        page.Text(Indent, "What its answers would tell");
        foreach (var answer in step.Answers.OrderByDescending(answer => answer.Probability))
        {
            page.Item(
                Indent + 2,
                Words.Percent(answer.Probability).PadLeft(5),
                7,
                $"{Titles.Answer(answer.Answer)}: then {Words.Percent(answer.Confidence)} {_titles.Of(answer.Leads)}");
        }
    }

    /// <summary>How a repair is proved.</summary>
    public void WriteProof(Repair repair) =>
        Several("Prove it by", repair.VerifyBy.Select(verification => Proof(pack, verification)));

    private static string Proof(Pack pack, Verification verification)
    {
        var check = pack.FindCheck(verification.Check);
        var findings = verification.Findings.IsEmpty && check is not null ? check.Gives : verification.Findings;
        var wanted = findings.Select(pack.Find<Finding>).OfType<Finding>()
            .Select(finding => $"{Words.Plain(finding.Id)} {Words.Plain(finding.Grades[0])}");
        var times = verification.Times > 1 ? $", {verification.Times} times where the fault came and went" : "";
        var title = (check?.Title ?? Words.Plain(verification.Check)).TrimEnd('.');
        var expected = string.Join(", ", wanted);
        return title + times + (expected.Length > 0 ? $" ({expected})" : "");
    }

    private void WriteRepair(Diagnosis diagnosis, Repair repair)
    {
        var cures = diagnosis.Hypotheses
            .Where(hypothesis => hypothesis.Confidence > 0 && hypothesis.Repairs.Contains(repair.Id, StringComparer.Ordinal))
            .Select(hypothesis => $"{hypothesis.Title} ({Page.Together(Words.Percent(hypothesis.Confidence))})");
        Labelled("Puts right", string.Join(", ", cures));
        Several("Parts", repair.Parts);
        Several("Fasteners", repair.Fasteners.Select(Fastener));
    }

    private static string Fastener(Fastener fastener)
    {
        var details = new[]
        {
            fastener.AcrossFlats is { } size ? Page.Together($"{size}") + " across flats" : null,
            fastener.Torque is { } torque ? "tighten to " + Page.Together($"{torque}") : null,
        };
        return fastener.At + string.Concat(details.Where(detail => detail is not null).Select(detail => ", " + detail));
    }

    private void WriteAccess(NextStep step)
    {
        var label = "First";
        foreach (var access in step.Opens.Select(pack.Find<Access>).OfType<Access>())
        {
            var tools = access.Tools.IsEmpty ? "" : "; " + string.Join(", ", access.Tools);
            Labelled(label, $"{access.Title.TrimEnd('.')} ({Words.Minutes(access.Minutes)}{tools})");
            Numbered("", access.Instructions);
            label = "Then";
        }
    }

    private void Numbered(string label, ImmutableArray<string> instructions)
    {
        const int NumberWidth = 3;
        for (var i = 0; i < instructions.Length; i++)
        {
            page.Item(Indent, $"{(i == 0 ? label : "").PadRight(LabelWidth)}{i + 1}.", LabelWidth + NumberWidth, instructions[i]);
        }
    }

    private void Several(string label, IEnumerable<string> texts)
    {
        foreach (var text in texts)
        {
            Labelled(label, text);
            label = "";
        }
    }

    private void Labelled(string label, string text) => page.Item(Indent, label, LabelWidth, text);
}
