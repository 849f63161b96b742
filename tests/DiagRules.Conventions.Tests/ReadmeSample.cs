namespace DiagRules.Conventions.Tests;

/// <summary>What the README shows is what compiles.</summary>
public sealed class ReadmeSample
{
    [Fact]
    public void The_embedding_sample_of_the_readme_is_the_one_that_compiles()
    {
        var readme = File.ReadAllText(Path.Combine(Repository.Root, "README.md")).ReplaceLineEndings("\n");
        var sample = File.ReadAllText(Path.Combine(Repository.Root, "docs/samples/Embedding.cs")).ReplaceLineEndings("\n");

        readme.ShouldContain($"```csharp\n{Body(sample)}```");
    }

    [Fact]
    public void The_embedding_sample_names_the_burnt_contacts()
    {
        var output = new StringWriter();
        var before = Console.Out;
        Console.SetOut(output);
        try
        {
            Samples.Embedding.Run(Path.Combine(Repository.Root, "rulepacks/corrie-ld4-tail-lift"));
        }
        finally
        {
            Console.SetOut(before);
        }

        output.ToString().ShouldStartWith("Contactor contacts burnt");
    }

    private static string Body(string sample)
    {
        var lines = sample.Split('\n').SkipWhile(line => !line.Contains("// begin", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(line => !line.Contains("// end", StringComparison.Ordinal))
            .Select(line => line.Length > 8 ? line[8..] : line.TrimStart());
        return string.Concat(lines.Select(line => line + "\n"));
    }
}
