using System.CommandLine;

namespace DiagRules.Cli.Inputs;

/// <summary><c>--format</c> and <c>--output</c> of verbs that draw: the form may follow from the name of the file.</summary>
internal sealed class FormInput
{
    private readonly string[] _forms;
    private readonly Option<string?> _format;
    private readonly Option<string?> _output = new("--output") { HelpName = "FILE", Description = "Write to this file instead; its ending gives the format where none is asked for" };

    /// <param name="forms">The formats, <c>text</c> among them.</param>
    public FormInput(params string[] forms)
    {
        _forms = forms;
        _format = new("--format") { HelpName = string.Join('|', forms), Description = "What to write; text unless --output says otherwise" };
    }

    /// <summary>Adds the options to a verb.</summary>
    public void AddTo(Command command)
    {
        command.Add(_format);
        command.Add(_output);
    }

    /// <summary>The format asked for.</summary>
    /// <exception cref="WrongUseException">There is no such format.</exception>
    public string Form(ParseResult parsed)
    {
        if (parsed.GetValue(_format) is { } asked)
        {
            return _forms.Contains(asked, StringComparer.Ordinal)
                ? asked
                : throw new WrongUseException($"There is no format '{asked}'; there are {string.Join(", ", _forms)}.");
        }

        var ending = Path.GetExtension(parsed.GetValue(_output) ?? "").TrimStart('.').ToLowerInvariant();
        return _forms.Contains(ending, StringComparer.Ordinal) ? ending : "text";
    }

    /// <summary>Writes a document to where it was asked for.</summary>
    /// <exception cref="WrongUseException">The file cannot be written.</exception>
    public void Write(ParseResult parsed, Terminal terminal, string document)
    {
        if (parsed.GetValue(_output) is not { } file)
        {
            terminal.Out.Write(document);
            return;
        }

        if (Path.GetDirectoryName(file) is { Length: > 0 } folder && !Directory.Exists(folder))
        {
            throw new WrongUseException($"'{file}' cannot be written: there is no folder '{folder}'.");
        }

        try
        {
            File.WriteAllText(file, document);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new WrongUseException($"'{file}' cannot be written: {exception.Message}", exception);
        }

        terminal.Out.WriteLine($"Wrote '{file}'.");
    }
}
