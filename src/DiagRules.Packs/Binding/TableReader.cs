using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Reads <c>given</c> and <c>table</c> and writes the table out for every combination of the parents' grades.</summary>
internal sealed class TableReader(Draft draft, Declared child, Fields fields)
{
    private readonly Distributions _distributions = new(draft, fields);

    /// <summary>The table, or <see langword="null"/> where there is none or after reporting.</summary>
    public GradeTable? Read()
    {
        if (!fields.Has("given") && !fields.Has("table"))
        {
            return null;
        }

        foreach (var (key, other) in (ReadOnlySpan<(string, string)>)[("given", "table"), ("table", "given")])
        {
            if (!fields.Has(key))
            {
                draft.Problems.Add(
                    ProblemCatalogue.RequiredKeyMissing,
                    fields.PlaceOf(other),
                    $"'{child.Id}' has '{other}' without '{key}'; the two belong together.");
                return null;
            }
        }

        var before = draft.Problems.Count;
        var parents = fields.NamedIn("given", Target.Graded).Select(parent => parent.Named).DistinctBy(parent => parent.Id).ToList();
        if (parents.Count == 0 || parents.Any(parent => parent.Grades.IsEmpty) || !IsWithinLimits(parents))
        {
            return null;
        }

        var rows = Fill(parents);
        return draft.Problems.Count == before && rows is not null ? new GradeTable([.. parents.Select(parent => parent.Node)], [.. rows], fields.PlaceOf("table")) : null;
    }

    private bool IsWithinLimits(List<Declared> parents)
    {
        var combinations = parents.Aggregate(1L, (count, parent) => Math.Min(count * parent.Grades.Length, int.MaxValue));
        var (found, limit, setting, what) = parents.Count > draft.Limits.TableParents
            ? (parents.Count, draft.Limits.TableParents, nameof(PackLimits.TableParents), "parents")
            : (combinations, draft.Limits.TableCombinations, nameof(PackLimits.TableCombinations), "combinations of grades");
        if (found <= limit)
        {
            return true;
        }

        draft.Problems.Add(
            ProblemCatalogue.LimitExceeded,
            fields.PlaceOf("given"),
            $"'{child.Id}' has a table over {found} {what}; the limit is {limit} (setting '{setting}').");
        return false;
    }

    private ImmutableArray<double>[]? Fill(List<Declared> parents)
    {
        var rows = new ImmutableArray<double>[parents.Aggregate(1, (count, parent) => count * parent.Grades.Length)];
        var filledBy = new SourcePlace?[rows.Length];
        (ImmutableArray<double>? Row, SourcePlace Place)? otherwise = null;
        var before = draft.Problems.Count;
        foreach (var row in fields.Items("table").OfType<MapNode>())
        {
            if (row.Find("otherwise") is { Value: MapNode rest } last)
            {
                RefuseBeside(row, otherwise?.Place);
                otherwise = (_distributions.Read(rest, child, $"Grades of '{child.Id}' under 'otherwise'", last.Key.Place), last.Key.Place);
            }
            else
            {
                FillRow(row, parents, rows, filledBy);
            }
        }

        return draft.Problems.Count == before && IsComplete(parents, rows, filledBy, otherwise?.Row) ? rows : null;
    }

    private void RefuseBeside(MapNode row, SourcePlace? earlier)
    {
        if (earlier is { } first)
        {
            draft.Problems.Add(
                ProblemCatalogue.TableIncomplete,
                row.Place,
                $"'otherwise' of '{child.Id}' stands here and in line {first.Line}; keep one of them.");
        }
        else if (row.Find("if") is { } condition)
        {
            draft.Problems.Add(
                ProblemCatalogue.TableIncomplete,
                condition.Key.Place,
                $"'if' stands beside 'otherwise' in the table of '{child.Id}'; 'otherwise' is a row of its own.");
        }
    }

    private void FillRow(MapNode row, List<Declared> parents, ImmutableArray<double>[] rows, SourcePlace?[] filledBy)
    {
        var then = row.Find("then");
        if (then is null)
        {
            draft.Problems.Add(
                ProblemCatalogue.RequiredKeyMissing,
                row.Place,
                $"'{child.Id}' has a row in its table without 'then'; write for example 'then: {{ {child.Grades[^1]}: 0.7 }}'.");
            return;
        }

        if (then.Value is not MapNode map || _distributions.Read(map, child, $"Grades of '{child.Id}' in this row", then.Key.Place) is not { } distribution
            || Chosen(row, parents) is not { } chosen)
        {
            return;
        }

        var doubled = new List<int>();
        for (var i = 0; i < rows.Length; i++)
        {
            if (!Matches(i, parents, chosen))
            {
                continue;
            }

            if (filledBy[i] is not null)
            {
                doubled.Add(i);
            }

            (rows[i], filledBy[i]) = (distribution, row.Place);
        }

        if (doubled.Count > 0)
        {
            draft.Problems.Add(
                ProblemCatalogue.TableIncomplete,
                row.Place,
                $"'{Name(doubled[0], parents)}' stands in two rows of the table of '{child.Id}'{More(doubled.Count)}; rows must not overlap.");
        }
    }

    /// <summary>For each parent the grades of a row; all of them where the row does not name the parent.</summary>
    private GradeSet[]? Chosen(MapNode row, List<Declared> parents)
    {
        var chosen = parents.Select(parent => GradeSet.All(parent.Grades.Length)).ToArray();
        var before = draft.Problems.Count;
        var named = row.Find("if")?.Value is MapNode condition ? fields.NamedBy(condition, Target.Graded) : [];
        foreach (var (parent, pair) in named)
        {
            var at = parents.IndexOf(parent);
            if (at < 0)
            {
                draft.Problems.Add(
                    ProblemCatalogue.WrongSection,
                    pair.Key.Place,
                    $"'{parent.Id}' is not among 'given' of '{child.Id}' ({Wording.And(parents.Select(given => given.Id))}); add it there, or take it out.");
            }
            else if (pair.Value is ScalarNode text && parent.Entry is Graded graded && OpenGradesReader.Read(text.Text, graded, draft.Problems) is { } grades)
            {
                chosen[at] = grades;
            }
        }

        return draft.Problems.Count == before ? chosen : null;
    }

    private static bool Matches(int combination, List<Declared> parents, GradeSet[] chosen)
    {
        for (var i = parents.Count - 1; i >= 0; i--)
        {
            if (!chosen[i].Contains(combination % parents[i].Grades.Length))
            {
                return false;
            }

            combination /= parents[i].Grades.Length;
        }

        return true;
    }

    private bool IsComplete(List<Declared> parents, ImmutableArray<double>[] rows, SourcePlace?[] filledBy, ImmutableArray<double>? otherwise)
    {
        var missing = Enumerable.Range(0, rows.Length).Where(i => filledBy[i] is null).ToList();
        if (missing.Count == 0 || otherwise is not null)
        {
            foreach (var i in missing)
            {
                rows[i] = otherwise!.Value;
            }

            return true;
        }

        draft.Problems.Add(
            ProblemCatalogue.TableIncomplete,
            fields.PlaceOf("table"),
            $"'{Name(missing[0], parents)}' stands in no row of the table of '{child.Id}'{More(missing.Count)}; add rows, or one with 'otherwise'.");
        return false;
    }

    private static string More(int count) => count > 1 ? $" (and {count - 1} more)" : "";

    private static string Name(int combination, List<Declared> parents)
    {
        var parts = new string[parents.Count];
        for (var i = parents.Count - 1; i >= 0; i--)
        {
            parts[i] = $"{parents[i].Id}: {parents[i].Grades[combination % parents[i].Grades.Length]}";
            combination /= parents[i].Grades.Length;
        }

        return string.Join(", ", parts);
    }
}
