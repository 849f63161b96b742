using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model;

namespace DiagRules.Cli.Asking;

/// <summary>Lets somebody take another step than the one proposed, or ask for any finding or reading by its id.</summary>
internal sealed class OtherSteps(Page page, Conversation conversation, Pack pack)
{
    private const int Most = 9;

    /// <summary>Finds out what is wanted.</summary>
    /// <param name="moment">Where the dialogue stands.</param>
    /// <param name="wish">A number or id, or nothing to show the list first.</param>
    /// <returns>The id of a step proposed or of something to be observed, as an answer; or a wish to go elsewhere.</returns>
    public Reply Choose(Moment moment, string wish)
    {
        var steps = moment.Diagnosis.Next;
        AnyForm form = new(pack, new ChoiceForm([.. steps.Take(Most).Select(step => new Choice(step.Id, $"{StepText.Title(step)} ({StepText.Price(step)})"))]));
        var reply = new Reply(ReplyKind.Answer, wish.Length == 0 ? "" : form.Read(wish).Value!);
        while (reply.Kind == ReplyKind.Answer && !IsThere(moment, reply.Text))
        {
            page.Blank();
            page.Text(0, "Which step? Its number; the id of any finding or reading asks for that one.", Ink.Strong);
            form.Write(page);
            reply = conversation.Ask(form, moment);
        }

        return reply;
    }

    private bool IsThere(Moment moment, string id)
    {
        if (id.Length == 0)
        {
            return false;
        }

        var steps = moment.Diagnosis.Next.Select(step => step.Id).ToList();
        if (steps.Contains(id, StringComparer.Ordinal) || IsObservable(pack, id))
        {
            return true;
        }

        var withheld = moment.Diagnosis.Withheld.FirstOrDefault(step => step.Id == id);
        page.Text(0, withheld is null ? $"There is no step '{id}'.{Spelling.Hint(id, steps)}" : $"'{id}' is not offered: {withheld.Because}");
        return false;
    }

    private static bool IsObservable(Pack pack, string id) => pack.Find(id) is Reading { From: null } or Finding or Cause;

    // An id that is not in the list is taken as it is: it may be any finding's.
    private sealed class AnyForm(Pack pack, ChoiceForm steps) : AnswerForm
    {
        public override void Write(Page page) => steps.Write(page);

        public override TypedAnswer Read(string text) =>
            !steps.IsWordForWord(text) && IsObservable(pack, text) ? new TypedAnswer(text)
            : steps.Read(text) is { Value: not null } step ? step
            : new TypedAnswer(text);
    }
}
