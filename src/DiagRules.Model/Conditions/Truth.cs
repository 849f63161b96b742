namespace DiagRules.Model.Conditions;

/// <summary>Three-valued truth (S. C. Kleene, Introduction to Metamathematics, 1952, section 64). The default is unknown.</summary>
public enum Truth : sbyte
{
    /// <summary>Certainly false.</summary>
    False = -1,

    /// <summary>Not decided by what is known.</summary>
    Unknown = 0,

    /// <summary>Certainly true.</summary>
    True = 1,
}
