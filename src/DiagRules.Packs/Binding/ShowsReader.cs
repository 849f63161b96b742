using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reads <c>shows</c>: what a parent lets appear at each child, for each of its own grades.</summary>
internal sealed class ShowsReader(Draft draft, Declared parent, Fields fields)
{
    private readonly Distributions _distributions = new(draft, fields);
    private readonly SortedDictionary<int, (ImmutableArray<double>[] Rows, SourcePlace Place)> _byChild = [];

    /// <summary>What is shown, in order of the children's nodes.</summary>
    public ImmutableArray<ShownGrades> Read()
    {
        if (fields.Map("shows") is { } shows && parent.Grades.Length > 1)
        {
            if (IsByGrade(shows))
            {
                ReadByGrade(shows);
            }
            else if (parent.Grades.Length == 2)
            {
                ReadChildren(shows, 1);
            }
            else
            {
                ReportFlat(shows);
            }
        }

        return All();
    }

    /// <summary>What was read and added so far.</summary>
    public ImmutableArray<ShownGrades> All() =>
        [.. _byChild.Select(child => new ShownGrades(child.Key, [.. child.Value.Rows], child.Value.Place))];

    /// <summary>Adds what <c>intermittent</c> says, unless <c>shows</c> says it already.</summary>
    public void AddPattern(double probability, SourcePlace place)
    {
        if (draft.Find(Finding.Pattern) is { Entry: Finding } pattern && !_byChild.ContainsKey(pattern.Node))
        {
            _byChild.Add(pattern.Node, ([Distributions.Healthy(2), [1 - probability, probability]], place));
        }
    }

    public bool ShowsPattern => draft.Find(Finding.Pattern) is { } pattern && _byChild.ContainsKey(pattern.Node);

    /// <summary>Grade, child, grade of the child: three levels instead of two.</summary>
    private static bool IsByGrade(MapNode shows) =>
        shows.Pairs.Any(pair => pair.Value is MapNode children && children.Pairs.Any(child => child.Value is MapNode));

    private void ReadByGrade(MapNode shows)
    {
        foreach (var (key, value) in shows.Pairs)
        {
            var grade = parent.Grades.IndexOf(key.Value, StringComparer.Ordinal);
            if (grade > 0 && value is MapNode children)
            {
                ReadChildren(children, grade);
            }
            else if (grade == 0)
            {
                draft.Problems.Add(
                    ProblemCatalogue.ShowsNeedsGrade,
                    key.Place,
                    $"'{key.Value}' is the first grade of '{parent.Id}', and a sound machine shows nothing; key 'shows' by "
                    + $"{Wording.Or(parent.Grades.Skip(1))}.");
            }
            else if (grade < 0)
            {
                ReportNoGrade(key);
            }
        }
    }

    private void ReportNoGrade(ScalarNode key)
    {
        if (draft.Find(key.Value) is { } child)
        {
            draft.Problems.Add(ProblemCatalogue.ShowsNeedsGrade, key.Place, FlatMessage(child.Id));
        }
        else if (parent.Entry is Graded graded)
        {
            draft.Problems.Add(ProblemCatalogue.NoSuchGrade, key.Place, GradeWords.NoSuchGrade(key.Value, graded));
        }
    }

    private void ReportFlat(MapNode shows)
    {
        if (shows.Pairs.Count > 0)
        {
            var key = shows.Pairs[0].Key;
            var isGrade = parent.Grades.Contains(key.Value, StringComparer.Ordinal);
            draft.Problems.Add(ProblemCatalogue.ShowsNeedsGrade, isGrade ? key.Place : fields.PlaceOf("shows"), FlatMessage(isGrade ? "child" : key.Value));
        }
    }

    private string FlatMessage(string child) =>
        $"'{parent.Id}' has the grades {Wording.And(parent.Grades)}, so its 'shows' is keyed by them first; write 'shows: {{ "
        + $"{parent.Grades[^1]}: {{ {child}: {{ ... }} }} }}'.";

    private void ReadChildren(MapNode children, int grade)
    {
        foreach (var (child, pair) in fields.NamedBy(children, Target.AnyEntry))
        {
            if (!IsChild(child, pair.Key) || pair.Value is not MapNode grades)
            {
                continue;
            }

            var under = parent.Grades.Length > 2 ? $"'{parent.Id}' at '{parent.Grades[grade]}'" : $"'{parent.Id}'";
            if (_distributions.Read(grades, child, $"Grades of '{child.Id}' under {under}", pair.Key.Place) is { } row)
            {
                Put(child, grade, row, pair.Key.Place);
            }
        }
    }

    private bool IsChild(Declared child, ScalarNode key)
    {
        if (child.Section is Section.Findings or Section.Effects)
        {
            return true;
        }

        var isOther = child.Section is not (Section.Causes or Section.Preconditions or Section.Readings);
        draft.Problems.Add(
            isOther ? ProblemCatalogue.WrongSection : ProblemCatalogue.ShowsWrongChild,
            key.Place,
            $"'{child.Id}' is {Wording.An(child.Noun)}, and 'shows' of '{parent.Id}' names findings and effects.");
        return false;
    }

    private void Put(Declared child, int grade, ImmutableArray<double> row, SourcePlace place)
    {
        if (!_byChild.TryGetValue(child.Node, out var rows))
        {
            rows = ([.. Enumerable.Repeat(Distributions.Healthy(child.Grades.Length), parent.Grades.Length)], place);
            _byChild.Add(child.Node, rows);
        }

        rows.Rows[grade] = row;
    }
}
