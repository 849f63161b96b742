using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Asking;

/// <summary>Changes the record of a session, and keeps its file in step.</summary>
internal sealed class Recorder(Page page, SessionFile file)
{
    /// <summary>Where the session is saved, or <see langword="null"/>.</summary>
    public string? Path => file.Path;

    /// <summary>Puts a fact on record, or says why it does not fit. What is not plausible is kept on record too, and asked again.</summary>
    /// <returns>Whether it counts.</returns>
    public bool TryObserve(DiagnosisSession session, string id, string value)
    {
        var result = Fact.Read(value).Observe(session, id, session.Options.Skill);
        page.Text(0, result.Problem?.Message ?? "");
        return result.IsAccepted && Keep(session) && (result.IsUsed || result.Problem is null);
    }

    /// <summary>Takes the last answer back.</summary>
    /// <returns>Whether there was one.</returns>
    public bool TakeBack(DiagnosisSession session) => session.Undo() && Keep(session);

    /// <summary>Saves the session, from now on after every change.</summary>
    /// <param name="path">Where, or nothing for where it is saved already.</param>
    /// <param name="session">The session, or <see langword="null"/> before there is one.</param>
    public void Save(string path, DiagnosisSession? session)
    {
        if (session is null || (path.Length == 0 && file.Path is null))
        {
            page.Text(0, session is null ? "There is nothing to save yet." : "Name a file: 'save lift.json'.");
            return;
        }

        try
        {
            if (path.Length > 0)
            {
                file.Use(path);
            }

            file.Write(session);
            page.Text(0, $"Saved in '{file.Path}', and from now on after every answer.");
        }
        catch (WrongUseException exception)
        {
            page.Text(0, exception.Message);
        }
    }

    /// <summary>Writes the session's file, if there is one. A file that cannot be written is reported; the session goes on.</summary>
    /// <returns>Always <see langword="true"/>: what changed the record went well.</returns>
    public bool Keep(DiagnosisSession session)
    {
        try
        {
            file.Write(session);
        }
        catch (WrongUseException exception)
        {
            page.Text(0, exception.Message + " 'save FILE' keeps it elsewhere.");
        }

        return true;
    }
}
