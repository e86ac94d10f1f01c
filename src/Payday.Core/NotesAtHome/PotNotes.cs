using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.NotesAtHome;

/// <summary>Which notes lie where, as far as that is known.</summary>
/// <remarks>
/// Known are the notes that a payday planned, those filled from them, those counted, and those left by pulls and swaps.
/// After spending they are unknown until they are counted by notes. What is known always comes to what the ledger
/// holds. Owed-back cash lies where it was until it is pulled for a return.
/// </remarks>
public sealed class PotNotes
{
    internal PotNotes(IReadOnlyDictionary<NoteStack, KnownNotes> stacks) => Stacks = stacks;

    /// <summary>Every stack that had any notes.</summary>
    internal IReadOnlyDictionary<NoteStack, KnownNotes> Stacks { get; }

    /// <summary>The loose notes at home, in no pot; always known.</summary>
    public Notes Loose => At(NoteStack.Loose) ?? Notes.None;

    /// <summary>A pot's notes at home, by value in minor units; null where they are not known.</summary>
    public Notes? AtHome(PotId potId) => At(new NoteStack(potId, InWallet: false));

    /// <summary>A pot's notes in the wallet, owed-back ones included; null where they are not known.</summary>
    public Notes? InWallet(PotId potId) => At(new NoteStack(potId, InWallet: true));

    /// <summary>The notes that a pot pulls owed-back cash from: the wallet's for spending, else those at home; null where they are not known.</summary>
    public Notes? ToPullFrom(Pot pot)
    {
        ArgumentNullException.ThrowIfNull(pot);
        return FillPart.GoesThroughTheWallet(pot) ? InWallet(pot.Id) : AtHome(pot.Id);
    }

    /// <summary>
    /// Whether a pot's notes were seen since cash last went in to be spent. Those of a wallet that was filled and not
    /// counted by notes since are what was planned: some may be spent by now.
    /// </summary>
    internal static bool AreSeen(Book book, Pot pot) => !FillPart.GoesThroughTheWallet(pot)
        || (book.Weeks.LastCountOf(pot.Id) is { Notes: not null } count
            && book.Weeks.Fills.All(fill => fill.Key.PotId != pot.Id || !(fill.Movement > count.LastMovement)));

    /// <summary>What is known from all that happened.</summary>
    public static PotNotes Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Remembered(NoteReplay.Of);
    }

    /// <summary>Works out what is known of a book from what is known of it as it was before, so that it isn't followed from the beginning again.</summary>
    /// <param name="before">The book as it was.</param>
    /// <param name="book">The book.</param>
    /// <remarks>For who writes one payday after another: each of them asks.</remarks>
    internal static PotNotes GoingOn(Book before, Book book) => book.Remembered(of => NoteReplay.Of(before, of));

    private Notes? At(NoteStack stack) => Stacks.TryGetValue(stack, out KnownNotes there) ? there.Notes : Notes.None;
}

/// <summary>The notes of a stack, and what the ledger holds there.</summary>
/// <param name="Notes">The notes; null where they are not known.</param>
/// <param name="Worth">What the ledger holds.</param>
internal readonly record struct KnownNotes(Notes? Notes, Money Worth);

/// <summary>A place where notes lie together.</summary>
/// <param name="PotId">The pot; null for the loose notes at home.</param>
/// <param name="InWallet">In the wallet, rather than at home.</param>
internal readonly record struct NoteStack(PotId? PotId, bool InWallet)
{
    /// <summary>The loose notes at home.</summary>
    public static NoteStack Loose { get; } = new(null, InWallet: false);

    /// <summary>Where a pot's cash is counted and pulled from.</summary>
    public static NoteStack Of(Pot pot) => new(pot.Id, FillPart.GoesThroughTheWallet(pot));

    /// <summary>The stack that an end of the ledger lies in, or null for one without notes.</summary>
    public static NoteStack? Of(LedgerEnd end, HashSet<PotId> spending) => end switch
    {
        LedgerEnd.At { Place: Place.Cash, Purpose: { } purpose } => purpose.Kind switch
        {
            PurposeKind.Wallet => new NoteStack(purpose.PotId, InWallet: true),
            PurposeKind.OwedBack when purpose.PotId is { } pot => new NoteStack(pot, spending.Contains(pot)),
            PurposeKind.Buffer or PurposeKind.KeptBack => Loose,
            _ => new NoteStack(purpose.PotId, InWallet: false),
        },
        _ => null,
    };
}
