using BenchmarkDotNet.Running;
using DiagRules.Benchmarks.Simulation;

if (args.Contains(SimulationProgram.Flag))
{
    return SimulationProgram.Run(args);
}

BenchmarkSwitcher.FromAssembly(typeof(DiagRules.Benchmarks.ShippedPack).Assembly).Run(args);
return 0;
