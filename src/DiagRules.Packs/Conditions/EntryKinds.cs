using DiagRules.Model;

namespace DiagRules.Packs.Conditions;

/// <summary>How messages name the kinds of entries.</summary>
internal static class EntryKinds
{
    /// <summary>With its article: <c>a finding</c>, <c>an effect</c>.</summary>
    public static string Name(Entry entry) => entry switch
    {
        Reading => "a reading",
        Finding => "a finding",
        Effect => "an effect",
        Cause { Precondition: null } => "a cause",
        Cause => "a precondition",
        Parameter => "a parameter",
        Complaint => "a complaint",
        Rule => "a rule",
        Check => "a check",
        Access => "an access state",
        Hazard => "a hazard",
        Repair => "a repair",
        _ => "an entry",
    };

    /// <summary>Without its article.</summary>
    public static string Noun(Entry entry)
    {
        var name = Name(entry);
        return name[(name.IndexOf(' ', StringComparison.Ordinal) + 1)..];
    }
}
