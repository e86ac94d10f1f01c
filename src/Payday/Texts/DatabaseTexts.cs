using Payday.Store.Folders;

namespace Payday.Texts;

/// <summary>What is said of a database that can't be relied on.</summary>
internal static class DatabaseTexts
{
    private const string PutBack = "Nothing was changed; keep a copy of the folder, then put back a copy from before.";

    /// <summary>What is wrong and what to do, where that is all there is.</summary>
    public static string Of(DatabaseFault fault) => fault switch
    {
        DatabaseFault.NotOurs => $"{Reason(fault)} Nothing was changed; move it elsewhere, or choose another folder with --data.",
        DatabaseFault.Gone => Reason(fault),
        DatabaseFault.Cut => $"{Reason(fault)} {PutBack}",

        // What shows the damage helps nobody who has to put a copy back.
        _ => $"{fault.Database} is damaged. {PutBack}",
    };

    /// <summary>What is wrong.</summary>
    public static string Reason(DatabaseFault fault) => fault switch
    {
        DatabaseFault.Damaged => $"{fault.Database} is damaged.",
        DatabaseFault.Cut => $"{fault.Database} is damaged: its end is missing.",
        DatabaseFault.NotOurs => $"{fault.Database} was not written by Payday.",
        DatabaseFault.Gone => $"{fault.Database} is missing, but other files of its store are there. Put it back from a copy, or choose another folder with --data.",
        DatabaseFault.Missing => $"{fault.Database} is missing.",
        DatabaseFault.HoldsSomethingElse => $"{fault.Database} holds something else than was written to it.",
        DatabaseFault.Unreadable => $"{fault.Database} can't be read.",
        DatabaseFault.OldCopy => $"{fault.Database} is an old copy.",
        DatabaseFault.FromBeforeTheJournal old => $"{old.Database} is of version {old.Version}, from before the journal beside it.",
        DatabaseFault.Contradicted both => $"{both.Database} ({(both.Last is { } last ? JournalTexts.Of(last) : "nothing stored")}) and {both.Journal} tell different things.",
        DatabaseFault.EndsWith ends => $"{ends.Database} ends with {JournalTexts.Of(ends.Last)}.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
