using System.Text.Json;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>The values that files hold often.</summary>
public static class FileValues
{
    /// <summary>A line of text.</summary>
    public static FileValue<string?> Line { get; } = new LineValue();

    /// <summary>An amount.</summary>
    public static FileValue<decimal?> Amount { get; } = new AmountValue();

    /// <summary>The value of a note or coin.</summary>
    public static FileValue<decimal?> Piece { get; } = new AmountValue(isPiece: true);

    /// <summary>Values of notes or coins.</summary>
    public static ListValue<decimal> Pieces { get; } = new(Piece, HouseholdLimits.MostPieces, unread: 0);

    /// <summary>A fraction.</summary>
    public static FileValue<decimal?> Rate { get; } = new RateValue();

    /// <summary>A date.</summary>
    public static FileValue<LocalDate?> Date { get; } = new DateValue();

    /// <summary>Dates.</summary>
    public static ListValue<LocalDate> Dates { get; } = new(Date, HouseholdLimits.MostDates, unread: default);

    /// <summary>A day of the month.</summary>
    public static DayValue Day { get; } = new();

    /// <summary>The currency of every amount.</summary>
    public static CurrencyValue Currency { get; } = new();

    /// <summary>The value of a note or coin as files hold it: <c>20</c>, but <c>0.50</c>.</summary>
    public static string PieceText(decimal piece, Currency currency) => ((AmountValue)Piece).Text(piece, currency);

    /// <summary>Whether a number stands there that should be in quotes; where it does that is reported.</summary>
    internal static bool IsUnquoted(JsonCursor at)
    {
        if (at.Kind == JsonValueKind.Number)
        {
            at.Refuse(new FileFault.Unquoted(at.Raw));
        }

        return at.Kind == JsonValueKind.Number;
    }
}
