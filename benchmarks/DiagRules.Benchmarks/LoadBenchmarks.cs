using BenchmarkDotNet.Attributes;
using DiagRules.Model;
using YamlDotNet.Core;

namespace DiagRules.Benchmarks;

/// <summary>How long does reading and checking a pack take, against the bare YAML parser on the same text?</summary>
[MemoryDiagnoser]
public class LoadBenchmarks
{
    private string[] _texts = [];

    [GlobalSetup]
    public void ReadTexts() =>
        _texts = [.. Directory.EnumerateFiles(ShippedPack.Folder, "*.yaml", SearchOption.AllDirectories).Select(File.ReadAllText)];

    [Benchmark(Baseline = true)]
    public int BareParser()
    {
        var events = 0;
        foreach (var text in _texts)
        {
            var parser = new Parser(new StringReader(text));
            while (parser.MoveNext())
            {
                events++;
            }
        }

        return events;
    }

    [Benchmark]
    public Pack LoadPack() => ShippedPack.Load();
}
