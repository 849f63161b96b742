using System.Collections.Concurrent;
using DiagRules.Model;

namespace DiagRules.Replay;

/// <summary>The engines of one pack, each compiled when the first case needs it. Thread-safe.</summary>
internal sealed class ChassisEngines(Pack pack)
{
    private readonly ConcurrentDictionary<string, Lazy<DiagnosisEngine>> _engines = new(StringComparer.Ordinal);

    /// <summary>The engine for a chassis; <see langword="null"/> for the pack's first.</summary>
    /// <exception cref="EngineException">The pack cannot be compiled for it.</exception>
    public DiagnosisEngine For(string? chassis) => _engines.GetOrAdd(
        chassis ?? "",
        key => new Lazy<DiagnosisEngine>(() => DiagnosisEngine.Compile(pack, new EngineOptions { Chassis = key.Length == 0 ? null : key }))).Value;
}
