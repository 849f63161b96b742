using System.CommandLine;
using DiagRules.Electrohydraulics;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs;

namespace DiagRules.Cli.Inputs;

/// <summary>The pack a verb works on: the argument that names it, and the options that say where its bases lie and for which chassis.</summary>
internal sealed class PackInput
{
    private readonly Argument<string> _pack = new("PACK") { Description = "Folder of the pack", Arity = ArgumentArity.ExactlyOne };
    private readonly Option<string?> _chassis = new("--chassis") { HelpName = "CODE", Description = "Chassis code; else the pack's only or first one" };

    /// <summary>Adds the argument and options to a verb.</summary>
    public void AddTo(Command command)
    {
        command.Add(_pack);
        command.Add(_chassis);
    }

    /// <summary>Loads the pack, or says why that cannot be done.</summary>
    /// <exception cref="WrongUseException">The pack is not there or was refused, or has no such chassis.</exception>
    public DiagnosisEngine Compile(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_pack);
        var result = Load(path);
        var pack = result.Pack ?? throw new WrongUseException(Refused(path, result.Problems));
        var chassis = parsed.GetValue(_chassis);
        if (chassis is not null && !pack.Chassis.Contains(chassis, StringComparer.Ordinal))
        {
            var known = pack.Chassis.IsEmpty ? "it names none" : "it has " + string.Join(", ", pack.Chassis);
            throw new WrongUseException($"Pack '{pack.Id}' has no chassis '{chassis}'; {known}.");
        }

        return DiagnosisEngine.Compile(pack, new EngineOptions { Chassis = chassis });
    }

    /// <summary>Loads a pack with all its problems.</summary>
    /// <exception cref="WrongUseException">There is no folder of this name.</exception>
    public static PackLoadResult Load(string path)
    {
        if (File.Exists(path))
        {
            var folder = Path.GetFileName(path) == "pack.yaml" ? $"; name its folder: '{Path.GetDirectoryName(path) switch { "" or null => ".", var name => name }}'" : "";
            throw new WrongUseException($"'{path}' is a file, and a pack is a folder{folder}.");
        }

        if (!Directory.Exists(path))
        {
            throw new WrongUseException($"There is no folder '{path}'.{Spelling.Hint(path, Beside(path))}");
        }

        var options = new PackLoaderOptions();
        options.Calculations.Add(ElectrohydraulicsLibrary.Create());
        return new PackLoader(options).Load(path);
    }

    private static IEnumerable<string> Beside(string path)
    {
        var parent = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(path));
        return Directory.Exists(string.IsNullOrEmpty(parent) ? "." : parent)
            ? Directory.EnumerateDirectories(string.IsNullOrEmpty(parent) ? "." : parent)
                .Select(folder => string.IsNullOrEmpty(parent) ? Path.GetFileName(folder) : folder)
            : [];
    }

    private static string Refused(string path, IReadOnlyList<Problem> problems)
    {
        var errors = problems.Where(problem => problem.Severity == Severity.Error).ToList();
        var lines = errors.Select(problem => problem.ToString()).Append(
            $"The pack in '{path}' was refused: {Rendering.Words.Count(errors.Count, "error", "errors")}.");
        return string.Join(Environment.NewLine, lines);
    }
}
