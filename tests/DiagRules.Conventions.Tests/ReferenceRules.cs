namespace DiagRules.Conventions.Tests;

/// <summary>Who may reference whom: arrows point down only, siblings do not know each other.</summary>
public sealed class ReferenceRules
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["DiagRules.Model"] = [],
        ["DiagRules.Packs"] = ["DiagRules.Model", "YamlDotNet"],
        ["DiagRules.Reasoning"] = [],
        ["DiagRules"] = ["DiagRules.Model", "DiagRules.Packs", "DiagRules.Reasoning", "NRules", "NRules.RuleModel", "NRules.Runtime"],
        ["DiagRules.Electrohydraulics"] = ["DiagRules.Model"],
        ["DiagRules.Cli"] =
            ["DiagRules", "DiagRules.Model", "DiagRules.Packs", "DiagRules.Electrohydraulics", "System.CommandLine"],
    };

    public static TheoryData<string> Libraries => [.. Repository.Libraries];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_library_references_only_what_lies_below_it(string library)
    {
        var references = Repository.Load(library).GetReferencedAssemblies()
            .Select(reference => reference.Name!)
            .Where(name => !IsFramework(name));

        references.Except(Allowed[library]).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void Internals_are_open_to_own_tests_and_benchmarks_only(string library)
    {
        var friends = Repository.Load(library)
            .GetCustomAttributes(typeof(System.Runtime.CompilerServices.InternalsVisibleToAttribute), inherit: false)
            .Cast<System.Runtime.CompilerServices.InternalsVisibleToAttribute>()
            .Select(friend => friend.AssemblyName);

        friends.Except([$"{library}.Tests", "DiagRules.Benchmarks"]).ShouldBeEmpty();
    }

    private static bool IsFramework(string name) =>
        name is "netstandard" or "mscorlib" || ((name == "System" || name.StartsWith("System.", StringComparison.Ordinal)) && name != "System.CommandLine");
}
