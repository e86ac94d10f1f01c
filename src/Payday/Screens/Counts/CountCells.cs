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

    /// <summary>What is missing or, where more is left than was there, what was found: <c>0.50</c>, or with a name <c>Lost coin=0.50</c>.</summary>
    /// <param name="row">A pot for which something was entered.</param>
    public CellEdit Difference(CountRow row)
    {
        Money found = row.Left - row.Expected;
        bool isFound = row.Entry is not null && found.IsPositive;
        CountEntry entry = row.Entry ?? new CountEntry(row.Left);
        string text = isFound ? TypedDifference.Write(found, entry.DifferenceName, Style)
            : entry.Missing.IsZero ? ""
            : TypedDifference.Write(entry.Missing, entry.DifferenceName, Style);
        return new CellEdit(
            $"{(isFound ? "Found" : "Missing")}, as AMOUNT or Name=AMOUNT",
            text,
            typed => row.Entry is null ? "Type what is left first." : isFound ? Found(row, entry, found, typed) : Missing(row, entry, typed));
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

    private string? Found(CountRow row, CountEntry entry, Money found, string text)
    {
        if (text.Trim().Length == 0)
        {
            return $"Write it like {found.ToString(Style)}, or with a name, like In the coat={found.ToString(Style)}.";
        }

        Result<TypedDifference> typed = Read(row, text);
        return !typed.Ok ? FaultTexts.Of(typed.Fault, Style)
            : typed.Value.Amount is { } amount && amount != found ? $"{found.ToString(Style)} more is left than was there, not {amount.ToString(Style)}; mend what is left, or say {found.ToString(Style)} or a name alone."
            : Enter(row, entry with { IsFind = true, DifferenceName = typed.Value.NameOr(entry.DifferenceName) });
    }

    private string? Missing(CountRow row, CountEntry entry, string text)
    {
        if (text.Trim().Length == 0)
        {
            return Enter(row, entry with { Missing = Money.Zero(row.Left.Currency), DifferenceName = "" });
        }

        Result<TypedDifference> typed = Read(row, text);
        if (!typed.Ok)
        {
            return FaultTexts.Of(typed.Fault, Style);
        }

        // A name alone is another one for what is missing already.
        return typed.Value.Amount is null && entry.Missing.IsZero
            ? $"Write it like {Style.Written("0.50")}, or with a name, like Lost coin={Style.Written("0.50")}."
            : Enter(row, entry with { Missing = typed.Value.Amount ?? entry.Missing, DifferenceName = typed.Value.NameOr(entry.DifferenceName) });
    }

    private Result<TypedDifference> Read(CountRow row, string text) => TypedDifference.Read(CleanText.OneLine(text).Trim(), row.Left.Currency, Style);

    // What is wrong with an entry stands beside it, and nothing is confirmed until it is mended.
    private string? Enter(CountRow row, CountEntry entry)
    {
        entered(work.Enter(row.Pot.Id, entry));
        return null;
    }
}
