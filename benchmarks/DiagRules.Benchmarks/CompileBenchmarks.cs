using BenchmarkDotNet.Attributes;
using DiagRules.Model;

namespace DiagRules.Benchmarks;

/// <summary>How long does compiling a pack take, and how long does a session take to begin?</summary>
[MemoryDiagnoser]
public class CompileBenchmarks
{
    private Pack _pack = null!;
    private DiagnosisEngine _engine = null!;

    [GlobalSetup]
    public void Load()
    {
        _pack = ShippedPack.Load();
        _engine = DiagnosisEngine.Compile(_pack);
    }

    [Benchmark]
    public DiagnosisEngine Compile() => DiagnosisEngine.Compile(_pack);

    [Benchmark]
    public DiagnosisSession Start() => _engine.Start();
}
