using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Lists;
using Payday.Reports;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>An account entry as it is written on a command line.</summary>
internal sealed record EntryInput(
    string? Way, string? Amount, string? For, string What, string? Kind, bool Cash, string? Notes, int? Cheque, LocalDate Date)
{
    /// <summary>How long a text may be, in characters.</summary>
    public const int LongestWhat = 60;

    /// <summary>The words for the kinds.</summary>
    public static string[] Kinds { get; } = [.. Enum.GetValues<EntryKind>().Select(kind => kind.ToString().ToLowerInvariant())];

    /// <summary>What is to be entered; or what is wrong with it.</summary>
    public Result<EntryWish> Read(Book book)
    {
        if (Way is null || Amount is null || For is null)
        {
            return Result.Refused<EntryWish>(new ArgumentFault.EntryUnfinished());
        }

        Result<Money> amount = Money.ParseSum(Amount, book.Household.Currency, book.Household.Settings.Numbers);
        if (!amount.Ok)
        {
            return Result.Refused<EntryWish>(amount.Fault);
        }

        if (!amount.Value.IsPositive)
        {
            return Result.Refused<EntryWish>(new EntryFault.Zero());
        }

        SourceId? source = book.Household.Sources.FirstOrDefault(known => string.Equals(known.Name, For.Trim(), StringComparison.OrdinalIgnoreCase)) is { } pays ? pays.Id : null;
        Result<LedgerEnd> end = source is null ? PurposeNames.Find(book, EntryEnds.Of(book), For) : Result.Of(EntryEnds.ToPlace);
        Result<Notes?> notes = Notes is null ? Result.Of<Notes?>(null) : NoteList.Read(book.Household, Notes).Map(read => (Notes?)read);
        if (!end.Ok || !notes.Ok)
        {
            return Result.Refused<EntryWish>(end.Ok ? notes.Fault! : end.Fault);
        }

        bool comesIn = Way == "in";
        bool isCash = Cash || Notes is not null;
        EntryKind kind = Kind is not null ? Enum.Parse<EntryKind>(Kind, ignoreCase: true)
            : source is not null ? EntryKind.Income
            : EntryEnds.UsualKind(end.Value, comesIn, isCash);
        return Result.Of(new EntryWish(Date, kind, end.Value, comesIn ? amount.Value : -amount.Value, CleanText.OneLine(What))
        {
            Cheque = Cheque,
            Notes = notes.Value,
            IsCash = isCash,
            Source = source,
        });
    }
}
