using DiagRules.Cli.Rendering;

namespace DiagRules.Cli.Asking;

/// <summary>How one question is answered: what it shows below the question, and how typed text is taken.</summary>
internal abstract class AnswerForm
{
    /// <summary>Whether the answer is an observation, which may be doubtful or made while the machine worked. Default no.</summary>
    public bool IsObservation { get; init; }

    /// <summary>Shows what may be answered.</summary>
    public abstract void Write(Page page);

    /// <summary>Whether text is an answer word for word, so that it cannot be meant as a command.</summary>
    public virtual bool IsWordForWord(string text) => false;

    /// <summary>Takes typed text.</summary>
    public abstract TypedAnswer Read(string text);
}

/// <summary>What typed text was taken for.</summary>
/// <param name="Value">The value, as observations are written; <see langword="null"/> when it fits nothing.</param>
/// <param name="Remark">What to say about it: how it was understood, or what would fit.</param>
internal readonly record struct TypedAnswer(string? Value, string? Remark = null);
