using System.Diagnostics;
using System.Globalization;
using DiagRules.Model;
using DiagRules.Reasoning.Planning;
using DiagRules.Steps;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>
/// <c>--simulate [PACK [COMPLAINT]] [--jobs N]</c>: plays jobs drawn from a pack's own numbers, and from a random situation, to their end, by the
/// planner and by rules of thumb, and writes what they cost on average as a table in Markdown.
/// </summary>
internal static class SimulationProgram
{
    public const string Flag = "--simulate";

    private const string JobsFlag = "--jobs";
    private const int DefaultJobs = 1000;
    private const int Seed = 20_261;

    public static int Run(string[] args)
    {
        var places = args.Where((arg, i) => arg is not (Flag or JobsFlag) && (i == 0 || args[i - 1] != JobsFlag)).ToList();
        var at = Array.IndexOf(args, JobsFlag);
        var jobs = at >= 0 && at + 1 < args.Length ? int.Parse(args[at + 1], CultureInfo.InvariantCulture) : DefaultJobs;
        var pack = ShippedPack.Loader.Load(places.FirstOrDefault(ShippedPack.Folder)).Require();
        var complaint = places.ElementAtOrDefault(1) ?? pack.Complaints[0].Id;
        Write($"{pack.Id}, complaint '{complaint}'", Start(pack, complaint), jobs);
        Write("random, 60 causes, 40 checks, 40 repairs, 10 accesses", new RandomJob(Seed).Draw(60, 40, 40, 10), jobs);
        return 0;
    }

    private static Situation Start(Pack pack, string complaint) =>
        new SituationBuilder(DiagnosisEngine.Compile(pack).Start(new SessionOptions { Complaint = complaint }).Now()).Build();

    private static void Write(string title, Situation start, int jobs)
    {
        var random = new Random(Seed);
        var draws = Enumerable.Range(0, jobs).Select(_ => new JobDraw(start, random)).ToList();
        Console.WriteLine($"### {title}\n\n{jobs} jobs, seed {Seed}. The planner's own estimate at the start: {Number(Planner.Plan(start).ExpectedCost)}.\n");
        Console.WriteLine("| policy | mean cost | 95 % interval | dearer than the planner by | decisions |");
        Console.WriteLine("|---|---|---|---|---|");
        double[]? planner = null;
        foreach (var policy in SimplePolicies.All.Prepend(JobPolicy.Planner("the planner", new PlanOptions())))
        {
            var watch = Stopwatch.StartNew();
            var tree = new JobTree(policy, start);
            double[] costs = [.. draws.Select(tree.Play)];
            planner ??= costs;
            var excess = new Estimate([.. costs.Zip(planner, (cost, best) => cost - best)]);
            var mean = new Estimate(costs);
            Console.WriteLine($"| {policy.Name} | {Number(mean.Mean)} | {Interval(mean)} | {(costs == planner ? "" : $"{Number(excess.Mean)} ({Interval(excess)})")} | {tree.Decisions} |");
            Console.Error.WriteLine($"{policy.Name}: {watch.Elapsed.TotalSeconds:0.0} s");
        }

        Console.WriteLine();
    }

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Interval(Estimate estimate) => $"{Number(estimate.Mean - estimate.HalfWidth)} to {Number(estimate.Mean + estimate.HalfWidth)}";
}
