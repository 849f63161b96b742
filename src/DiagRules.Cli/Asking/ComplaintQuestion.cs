using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Asking;

/// <summary>The first question of a job: what the complaint is.</summary>
internal sealed class ComplaintQuestion(Page page, Conversation conversation, DiagnosisEngine engine)
{
    private const string NoneOfThese = "none-of-these";

    /// <summary>Asks, and writes the answer into the options.</summary>
    /// <returns>Whether to go on.</returns>
    public bool TryAsk(SessionOptions options)
    {
        var complaints = engine.Pack.Complaints.Where(complaint => complaint.IsOn(engine.Chassis)).ToList();
        if (complaints.Count == 0)
        {
            return true;
        }

        ChoiceForm form = new([.. complaints.Select(complaint => new Choice(complaint.Id, complaint.Title)), new Choice(NoneOfThese, "none of these")]);
        page.Heading("What is the complaint?");
        form.Write(page);
        while (true)
        {
            var reply = conversation.Ask(form, null);
            switch (reply.Kind)
            {
                case ReplyKind.Answer or ReplyKind.CannotTell:
                    options.Complaint = reply.Kind == ReplyKind.Answer && reply.Text != NoneOfThese ? reply.Text : null;
                    return true;
                case ReplyKind.Leave:
                    return false;
                default:
                    page.Text(0, "This is the first question; take one of the complaints.");
                    break;
            }
        }
    }
}
