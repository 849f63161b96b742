using BenchmarkDotNet.Attributes;
using DiagRules.Reasoning.Inference;
using DiagRules.Results;

namespace DiagRules.Benchmarks;

/// <summary>What does one more observation cost: settled, weighed, and with next steps?</summary>
[MemoryDiagnoser]
public class SessionBenchmarks
{
    private DiagnosisSession _session = null!;
    private CauseModel _model = null!;
    private CauseEvidence _evidence = null!;
    private bool _isLow;

    [GlobalSetup]
    public void Begin()
    {
        var engine = DiagnosisEngine.Compile(ShippedPack.Load());
        _session = engine.Start(new SessionOptions { Complaint = "will-not-lift" });
        foreach (var (id, value) in new[]
        {
            ("power-unit", "clicks-once"), ("stood-long", "no"), ("battery-rest-volts", "25.3 V"),
            ("contactor-in-volts", "25.1 V"), ("coil-volts", "24.8 V"),
        })
        {
            if (_session.Observe(id, value).Problem is { } problem)
            {
                throw new InvalidOperationException(problem.Message);
            }
        }

        var moment = _session.Now();
        _model = moment.Model;
        _evidence = moment.Evidence;
    }

    /// <summary>A reading changes; rules come to rest and causes are weighed.</summary>
    [Benchmark]
    public object ObserveAndSettle()
    {
        ChangeOneReading();
        return _session.Now();
    }

    /// <summary>The same with the whole diagnosis, next steps included.</summary>
    [Benchmark]
    public Diagnosis ObserveAndDiagnose()
    {
        ChangeOneReading();
        return _session.Diagnose();
    }

    /// <summary>All confidences from the same evidence, plan cached.</summary>
    [Benchmark]
    public Weighing Posterior() => _model.Weigh(_evidence);

    private void ChangeOneReading()
    {
        _session.Withdraw("contactor-out-volts");
        _session.Observe("contactor-out-volts", _isLow ? "0.1 V" : "24.9 V");
        _isLow = !_isLow;
    }
}
