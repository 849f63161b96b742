using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Cases;
using DiagRules.Packs.Checks;
using DiagRules.Packs.Layers;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs;

/// <summary>Reads rule packs: text in, a checked <see cref="Pack"/> out, with all problems at their places. Immutable and thread-safe.</summary>
/// <remarks>
/// Whatever a pack holds, loading does not throw: what is wrong comes back as problems, all of them in one pass. An error in a recorded
/// case refuses that case alone; any other error refuses the pack.
/// </remarks>
public sealed class PackLoader
{
    private readonly PackLoaderOptions _options;

    /// <summary>Makes a loader.</summary>
    /// <param name="options">What it may use; <see langword="null"/> for the defaults.</param>
    public PackLoader(PackLoaderOptions? options = null)
    {
        options ??= new PackLoaderOptions();
        _options = new PackLoaderOptions
        {
            Calculations = [.. options.Calculations],
            SearchFolders = [.. options.SearchFolders],
            Bases = [.. options.Bases],
            Limits = options.Limits with { },
        };
    }

    /// <summary>Loads the pack in a folder.</summary>
    /// <param name="folder">The folder with its <c>pack.yaml</c>; problems show paths as this is given.</param>
    /// <returns>The pack and all problems; a folder that is not there or holds no pack is problem DR1101.</returns>
    public PackLoadResult Load(string folder) => Load(PackFiles.FromFolder(folder));

    /// <summary>Loads a pack from files that lie anywhere.</summary>
    public PackLoadResult Load(PackFiles files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var trees = PackTreesReader.Read(files, _options.Limits);
        var draft = new Draft(_options.Limits, trees.Problems);
        var pack = trees.Head is null ? null : Read(trees, draft, trees.Head);
        return new PackLoadResult(trees.Problems.HasErrors ? null : pack, Problems(trees, pack));
    }

    private Pack? Read(PackTrees trees, Draft draft, MapNode headTree)
    {
        if (!HeadBinder.IsFormatKnown(headTree, trees.Problems))
        {
            return null;
        }

        var layered = trees.IsLayer ? new Layering(_options, trees.Problems).Merge(trees, headTree) : Layered.Alone(trees, headTree);
        return layered is null ? null : Bind(trees, draft, layered);
    }

    private Pack? Bind(PackTrees trees, Draft draft, Layered layered)
    {
        var head = new HeadBinder(draft, layered, _options).Bind();
        var binder = new PackBinder(draft);
        binder.Bind(layered);
        new Removals(draft).Report();
        var checks = new PackChecks(draft, head);
        checks.Run();
        var cases = new CaseReader(draft.For(trees.CaseProblems), head.Id).Read(trees.Cases);
        checks.RunCases(cases);
        return draft.Problems.HasErrors ? null : binder.Build(head, cases);
    }

    private static IReadOnlyList<Problem> Problems(PackTrees trees, Pack? pack)
    {
        var all = new ProblemSink();
        foreach (var problem in trees.Problems.InOrder().Concat(trees.CaseProblems.InOrder()))
        {
            if (trees.IsComplete || !MayStandInTheRest(problem))
            {
                all.Add(Accept(problem, pack));
            }
        }

        return all.InOrder();
    }

    /// <summary>What was found before the head was read may be accepted there all the same.</summary>
    private static Problem Accept(Problem problem, Pack? pack) =>
        problem.Severity != Severity.Error && problem.Accepted is null && pack?.Accepts.GetValueOrDefault(problem.Code) is { } reason
            ? problem with { Accepted = reason }
            : problem;

    /// <summary>While a file cannot be read, what seems to be missing may stand in it.</summary>
    private static bool MayStandInTheRest(Problem problem) =>
        problem.Descriptor == ProblemCatalogue.NoSuchId
        || problem.Descriptor == ProblemCatalogue.NoSuchConfirmed
        || problem.Descriptor == ProblemCatalogue.VerificationDecidesNothing
        || problem.Descriptor == ProblemCatalogue.DeferredForEver
        || problem.Severity == Severity.Warning;
}
