using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(DiagRules.Benchmarks.ShippedPack).Assembly).Run(args);
