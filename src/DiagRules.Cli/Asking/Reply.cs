namespace DiagRules.Cli.Asking;

/// <summary>What came of a question put to the person at the terminal.</summary>
/// <param name="Kind">What kind of reply.</param>
/// <param name="Text">The value answered, or what <c>other</c> named.</param>
internal readonly record struct Reply(ReplyKind Kind, string Text = "");

/// <summary>Kinds of reply.</summary>
internal enum ReplyKind
{
    /// <summary>An answer to the question.</summary>
    Answer,

    /// <summary>Asked, no answer.</summary>
    CannotTell,

    /// <summary>Take the last answer back.</summary>
    Back,

    /// <summary>Do something else first.</summary>
    Other,

    /// <summary>The step was passed over, or tried in vain: propose it again only when asked for.</summary>
    PassOver,

    /// <summary>A fact was given by id; what to do next may be otherwise now.</summary>
    Fact,

    /// <summary>Stop here.</summary>
    Leave,
}
