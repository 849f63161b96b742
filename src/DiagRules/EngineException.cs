namespace DiagRules;

/// <summary>A pack cannot be compiled, or a session cannot go on; the message says why and what to do.</summary>
public sealed class EngineException : Exception
{
    /// <summary>Makes one.</summary>
    public EngineException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one with its cause.</summary>
    public EngineException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
