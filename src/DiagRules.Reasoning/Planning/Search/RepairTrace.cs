namespace DiagRules.Reasoning.Planning.Search;

/// <summary>One repair of a sequence, with the weight that reaches it and the weight that it cures.</summary>
internal readonly record struct RepairTrace(int Repair, double Cost, double Reached, double Cured);
