using System.Text.RegularExpressions;

namespace DiagRules.Conventions.Tests;

/// <summary>Folder is namespace, and names say what is in a file.</summary>
public sealed partial class SourceLayout
{
    [Fact]
    public void The_namespace_of_a_file_is_its_folder()
    {
        var astray = Repository.SourceFiles("src")
            .Select(file => (file, declared: Declared(file), expected: Path.GetDirectoryName(file)!.Replace('\\', '/')["src/".Length..].Replace('/', '.')))
            .Where(item => item.declared is not null && item.declared != item.expected && !IsExtension(item.declared))
            .Select(item => $"{item.file} declares {item.declared}");

        astray.ShouldBeEmpty();
    }

    [Fact]
    public void No_file_is_named_for_what_it_collects()
    {
        Repository.SourceFiles("src").Concat(Repository.SourceFiles("tests"))
            .Where(file => CollectsStrangers().IsMatch(Path.GetFileNameWithoutExtension(file)))
            .ShouldBeEmpty();
    }

    [Fact]
    public void Every_project_below_src_tests_and_benchmarks_is_in_the_solution()
    {
        var solution = File.ReadAllText(Path.Combine(Repository.Root, "DiagRules.sln"));
        var projects = new[] { "src", "tests", "benchmarks" }
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*.csproj", SearchOption.AllDirectories))
            .Select(file => Path.GetFileName(file));

        projects.Where(project => !solution.Contains($"\\{project}\"", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    // Extension methods live in the namespace of the type they extend.
    private static bool IsExtension(string declared) => declared.StartsWith("Microsoft.Extensions.", StringComparison.Ordinal);

    private static string? Declared(string file) =>
        NamespaceLine().Match(File.ReadAllText(Path.Combine(Repository.Root, file))) is { Success: true } match ? match.Groups[1].Value : null;

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex("(Utils?|Helpers?|Manager|Misc|Common)$")]
    private static partial Regex CollectsStrangers();
}
