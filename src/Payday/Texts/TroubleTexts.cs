using Payday.Store.Files;

namespace Payday.Texts;

/// <summary>What is said of the troubles that the system has with files.</summary>
internal static class TroubleTexts
{
    /// <summary>Why, in one sentence.</summary>
    public static string Of(Trouble trouble) => trouble switch
    {
        Trouble.Denied => "its permissions don't allow it.",
        Trouble.Missing => "it is not there, or its folder isn't.",
        Trouble.Blocked => "a part of its path is no folder.",
        Trouble.TooLong => "its name is too long.",
        Trouble.IsFolder => "it is a folder.",
        Trouble.IsThere => "something of that name is there.",
        Trouble.InUse => "another program keeps it for itself.",
        Trouble.Full => "the disk is full.",
        Trouble.ReadOnly => "the disk is read-only.",
        Trouble.Unread => "nobody reads it any more.",
        _ => "the system failed.",
    };

    /// <summary>Why, in one sentence, of what was thrown.</summary>
    public static string Of(Exception fault) => Of(Troubles.Of(fault));
}
