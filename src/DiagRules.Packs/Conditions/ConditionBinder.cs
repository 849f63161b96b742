using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>
/// Looks up the words of a condition and checks what they are. Every part is looked at, so that all its problems come out; a condition
/// comes out only when there are none.
/// </summary>
internal sealed class ConditionBinder(BindingScope scope)
{
    private readonly TermBinder _terms = new(scope);
    private readonly ComparisonBinder _comparisons = new(scope);

    /// <summary>The condition, or <see langword="null"/> when some part of it is wrong.</summary>
    public Condition? Bind(ConditionSyntax syntax)
    {
        if (!scope.Count(syntax.Start, syntax.End))
        {
            return null;
        }

        return syntax switch
        {
            JunctionSyntax junction => BindJunction(junction),
            NotSyntax not => BindNot(not),
            SetSyntax set => BindSet(set),
            KnownSyntax known => BindKnown(known),
            GradeTestSyntax test => BindGradeTest(test),
            ComparisonSyntax comparison => _comparisons.Bind(comparison, _terms),
            _ => null,
        };
    }

    private Condition? BindJunction(JunctionSyntax junction)
    {
        var parts = junction.Parts.Select(Bind).ToList();
        return parts.Contains(null) ? null : Join(junction.IsAnd, [.. parts!], junction);
    }

    private Condition Join(bool isAnd, ImmutableArray<Condition> parts, ConditionSyntax syntax)
    {
        var text = scope.Text(syntax.Start, syntax.End);
        var place = scope.Place(syntax.Start, syntax.End);
        return isAnd ? new AllOf(parts, text, place) : new AnyOf(parts, text, place);
    }

    private Negation? BindNot(NotSyntax not) => Bind(not.Part) is { } part
        ? new Negation(part, scope.Text(not.Start, not.End), scope.Place(not.Start, not.End))
        : null;

    /// <summary>Writes the body out for every member; the problems of one member say enough about all.</summary>
    private Condition? BindSet(SetSyntax set)
    {
        if (scope.MembersOf(set.Set) is not { } members)
        {
            return null;
        }

        var parts = ImmutableArray.CreateBuilder<Condition>(members.Length);
        foreach (var member in members)
        {
            if (scope.For(set.Set.Text[1..], member, () => Bind(set.Body)) is not { } part)
            {
                return null;
            }

            parts.Add(part);
        }

        return parts.Count switch
        {
            0 => new Constant(set.IsEvery ? Truth.True : Truth.False, scope.Text(set.Start, set.End), scope.Place(set.Start, set.End)),
            1 => parts[0],
            _ => Join(set.IsEvery, parts.DrainToImmutable(), set),
        };
    }

    private Condition? BindKnown(KnownSyntax known)
    {
        var text = scope.Text(known.Start, known.End);
        var place = scope.Place(known.Start, known.End);
        switch (scope.Entry(known.Name))
        {
            case null:
                return null;
            case Reading reading:
                return new KnownReading(reading.Index, known.WantsKnown, text, place);
            case Graded graded when graded is not Effect:
                return new KnownGrade(graded.Node, known.WantsKnown, text, place);
            case Parameter parameter:
                scope.Report(
                    ProblemCatalogue.WrongSection,
                    known.Name.Start,
                    known.Name.End,
                    $"'{parameter.Id}' is a parameter, which is always known; 'known' and 'unknown' take readings, findings and causes.");
                return null;
            case var other:
                ReportWrongKind(known.Name, other, "'known' and 'unknown' take readings, findings and causes");
                return null;
        }
    }

    private GradeTest? BindGradeTest(GradeTestSyntax test)
    {
        switch (scope.Entry(test.Name))
        {
            case null:
                return null;
            case Graded graded when graded is not Effect:
                return BindGrades(test, graded);
            case { } number when number is Reading or Parameter:
                scope.Report(
                    ProblemCatalogue.GradedAsNumber,
                    test.Start,
                    test.End,
                    $"'{number.Id}' is {EntryKinds.Name(number)}, a number, and 'is' tests the grade of a finding or cause; " +
                    $"compare it, such as '{number.Id} > {Limit(number)}'.");
                return null;
            case var other:
                ReportWrongKind(test.Name, other, "'is' tests findings, causes and preconditions");
                return null;
        }
    }

    private GradeTest? BindGrades(GradeTestSyntax test, Graded graded)
    {
        var grades = GradeSet.None;
        var areKnown = true;
        foreach (var name in test.Grades)
        {
            var grade = graded.GradeOf(name.Text);
            areKnown &= grade >= 0;
            if (grade < 0)
            {
                scope.Report(ProblemCatalogue.NoSuchGrade, name.Start, name.End, GradeWords.NoSuchGrade(name.Text, graded));
                continue;
            }

            grades |= test.Reach switch
            {
                GradeReach.OrWorse => GradeSet.OrWorse(grade, graded.Grades.Length),
                GradeReach.OrBetter => GradeSet.OrBetter(grade),
                _ => GradeSet.Of(grade),
            };
        }

        grades = test.IsNot ? grades.ComplementIn(graded.Grades.Length) : grades;
        return areKnown ? new GradeTest(graded.Node, grades, scope.Text(test.Start, test.End), scope.Place(test.Start, test.End)) : null;
    }

    private void ReportWrongKind(NameSyntax name, Entry entry, string allowed) =>
        scope.Report(ProblemCatalogue.WrongSection, name.Start, name.End, WrongKind.Message(entry, allowed));

    private static string Limit(Entry number) => number switch
    {
        Reading reading => Values.Measure.Example(TermType.Of(reading.Unit)),
        Parameter parameter => Values.Measure.Example(TermType.Of(parameter.Value.Unit)),
        _ => "5",
    };
}
