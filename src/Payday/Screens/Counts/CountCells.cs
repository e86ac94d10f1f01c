using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Counts;

/// <summary>What can be typed in a week-end count.</summary>
/// <param name="work">The count worked on.</param>
/// <param name="entered">Told whether what was entered can be confirmed.</param>
internal sealed class CountCells(CountWork work, Action<bool> entered)
{
    private NumberStyle Style => work.Session.Style;

    /// <summary>What is left of a pot; nothing at all leaves it uncounted.</summary>
    /// <param name="row">The pot.</param>
    /// <param name="text">What stands there to begin with.</param>
    public CellEdit Left(CountRow row, string text) => new($"Left of {row.Pot.Name}", text, typed =>
    {
        if (typed.Trim().Length == 0)
        {
            work.Clear(row.Pot.Id);
            return null;
        }

        Result<Money> amount = Money.ParseSum(typed, work.Session.Book.Household.Currency, Style);
        if (!amount.Ok)
        {
            return FaultTexts.Of(amount.Fault, Style);
        }

        return amount.Value.IsNegative
            ? "What is left can't be below zero."
            : Enter(row, (row.Entry ?? new CountEntry(amount.Value)) with { Left = amount.Value, Notes = null, IsFind = false });
    });

    /// <summary>What is missing, as <c>Lost coin=0.50</c>; where more is left than was there, a name alone says that it was found.</summary>
    public CellEdit Difference(CountRow row)
    {
        bool found = row.Entry is not null && row.Left > row.Expected;
        return new CellEdit(found ? "Where the extra came from" : "Missing, as Name=AMOUNT", row.Entry?.DifferenceName ?? "", text => (row.Entry, found) switch
        {
            (null, _) => "Type what is left first.",
            (_, true) when text.Trim().Length == 0 => "A few words are enough, like Found in the coat.",
            (_, true) => Enter(row, row.Entry with { IsFind = true, DifferenceName = CleanText.OneLine(text).Trim() }),
            _ => Missing(row, row.Entry, text),
        });
    }

    /// <summary>The day that is counted for.</summary>
    public CellEdit Day() => new("Count for", LocalDatePattern.Iso.Format(work.Plan.Draft.Date), text =>
    {
        Result<LocalDate> date = TypedDate.Parse(text, work.Session.Today, work.Session.Book.Household.Settings.DateOrder);
        if (!date.Ok)
        {
            return FaultTexts.Of(date.Fault, Style);
        }

        if (date.Value > work.Session.Today)
        {
            return $"{DateText.Long(date.Value)} has not come yet; count for today or before.";
        }

        work.CountFor(date.Value);
        return null;
    });

    private string? Missing(CountRow row, CountEntry entry, string text)
    {
        if (text.Trim().Length == 0)
        {
            return Enter(row, entry with { Missing = Money.Zero(row.Left.Currency), DifferenceName = "" });
        }

        int at = text.LastIndexOf('=');
        if (at < 1)
        {
            return $"Write it like Lost coin={Style.Written("0.50")}.";
        }

        Result<Money> amount = Money.ParseSum(text[(at + 1)..], row.Left.Currency, Style);
        return amount.Ok
            ? Enter(row, entry with { Missing = amount.Value, DifferenceName = CleanText.OneLine(text[..at]).Trim() })
            : FaultTexts.Of(amount.Fault, Style);
    }

    // What is wrong with an entry stands beside it, and nothing is confirmed until it is mended.
    private string? Enter(CountRow row, CountEntry entry)
    {
        entered(work.Enter(row.Pot.Id, entry));
        return null;
    }
}
