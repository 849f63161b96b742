using System.Collections.Immutable;
using DiagRules.Model;

namespace DiagRules.Results;

/// <summary>Something that can hurt, as it must be shown. Immutable.</summary>
/// <param name="Hazard">Id.</param>
/// <param name="SignalWord">Signal word (ANSI Z535.6, ISO 3864-2).</param>
/// <param name="Symbol">ISO 7010 number, or <see langword="null"/>.</param>
/// <param name="Says">What it does.</param>
/// <param name="Avoid">How to keep out of its way, or <see langword="null"/>.</param>
/// <param name="Clears">What makes it go away, or <see langword="null"/>.</param>
/// <param name="From">Rules, causes and proposed steps that bring it up, by id.</param>
public sealed record HazardNotice(
    string Hazard, SignalWord SignalWord, string? Symbol, string Says, string? Avoid, string? Clears, ImmutableArray<string> From);
