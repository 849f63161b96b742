using System.CommandLine;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--packs</c>: folders in which the bases of a pack are looked for.</summary>
internal sealed class SearchInput
{
    private readonly Option<string[]> _packs = new("--packs")
    {
        HelpName = "FOLDER",
        Description = "Where packs lie that this one extends, besides its own neighbours (repeat it for more)",
    };

    /// <summary>Adds the option to a verb.</summary>
    public void AddTo(Command command) => command.Add(_packs);

    /// <summary>The folders.</summary>
    /// <exception cref="WrongUseException">One of them is not there.</exception>
    public IReadOnlyList<string> Read(ParseResult parsed)
    {
        var folders = parsed.GetValue(_packs) ?? [];
        foreach (var folder in folders)
        {
            PackFolder.ThrowIfMissing(folder);
        }

        return folders;
    }
}
