using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Screens.Setup.Fields;
using Payday.Store.Json;

namespace Payday.Screens.Setup;

/// <summary>The fields of the household itself, in the groups in which it is set up.</summary>
internal static class HouseholdFields
{
    private const int MostOfOne = 1_000_000;
    private const int MostSlipLines = 6;

    /// <summary>What it is called, and its currency.</summary>
    public static ImmutableArray<SetupField> Name { get; } =
    [
        new("Name", FieldPath.Of("name"), new LineType(), "What you call the household, 1 to 60 characters."),
        new("Currency", FieldPath.Of("currency"), new CurrencyType(), "Its code, such as USD, EUR or GBP. Every amount is in it, and it stays.")
        {
            Locked = (work, _) => work.TakesParts ? null : "The ledger is in this currency; another one needs a household in a folder of its own.",
            Then = PutUsualCash,
        },
        new("Numbers", FieldPath.Of("numbers"), new ChoiceType(_ => [.. NumberStyle.All.Select(style => new Choice(style.Sample, JsonValue.Create(style.Sample)))]), "How amounts are written, here and when you type them."),
    ];

    /// <summary>Notes and coins.</summary>
    public static ImmutableArray<SetupField> Cash { get; } =
    [
        new("Notes", FieldPath.Of("notes"), new PiecesType(), "The values of the notes you use, with blanks between them. Leave out those you don't want to be given."),
        new SetupField("Coins", FieldPath.Of("coins"), new PiecesType(), "The values of coins, with blanks between them; empty for none.").Optional(),
    ];

    /// <summary>When the wallet is filled, and where notes come from.</summary>
    public static ImmutableArray<SetupField> Bank { get; } =
    [
        new("Fill day", FieldPath.Of("fillDay"), ChoiceType.Of([.. Enumerable.Range(1, 7).Select(day => ((NodaTime.IsoDayOfWeek)day).ToString()).Select(day => (day, day))]), "The weekday on which the wallet is filled for a week."),
        new("Notes come from", FieldPath.Of("bank", "kind"), ChoiceType.Of(("teller", "a teller"), ("machine", "a machine")), "A teller gives any notes and gets a slip; a machine only its own."),
        new("Machine's notes", FieldPath.Of("bank", "notes"), new PiecesType(), "The values of the notes that the machine gives, such as 50 20.") { Applies = IsMachine },
        new SetupField("Machine's limit", FieldPath.Of("bank", "limit"), new AmountType(aboveZero: true), "The most that it gives in one visit; empty for no limit.") { Applies = IsMachine }.Optional(),
        new("Bank holidays", FieldPath.Of("holidays", "set"), ChoiceType.Of(("none", "weekends only"), ("US", "United States"), ("GB-EW", "England and Wales"), ("TARGET", "TARGET (euro)")), "Days on which the bank is closed, so that paydays and dues move."),
        new SetupField("Further holidays", FieldPath.Of("holidays", "extra"), new DatesType(), "Other dates on which the bank is closed, like 2026-11-27, with blanks between them.").Optional(),
    ];

    /// <summary>Habits that have a usual answer.</summary>
    public static ImmutableArray<SetupField> Habits { get; } =
    [
        new SetupField("Set-asides", FieldPath.Of("setAsides"), ChoiceType.Of(("level", "level"), ("asTheyFall", "as they fall")), "Level holds money back for bills as evenly as can be; as they fall, each payday pays its own period.").Optional(),
        new SetupField("Card purchases", FieldPath.Of("cardRounding"), ChoiceType.Of(("up", "rounded up to a note"), ("exact", "exact")), "How a purchase by card is owed back by its pot.").Optional(),
        new SetupField("Surplus goes first", FieldPath.Of("surplusOrder"), ChoiceType.Of(("balance", "to the smallest debt"), ("rate", "to the highest rate")), "Which debt is proposed for what is left over.").Optional(),
        new SetupField("Buffer keeps", FieldPath.Of("bufferKeeps"), new AmountType(), "When a payday falls short the buffer helps by itself down to this; empty asks each time.").Optional(),
        new SetupField("Slip lines", FieldPath.Of("slipLines"), new LineType(MostSlipLines), "Up to 6 lines for the top of the slip, with | between them. Nothing private is on it otherwise.").Optional(),
    ];

    /// <summary>All settings.</summary>
    public static ImmutableArray<SetupField> All { get; } = [.. Name, .. Cash, .. Bank, .. Habits];

    /// <summary>What is there at the start, note by note.</summary>
    public static ImmutableArray<SetupField> Opening(SetupWork work) =>
    [
        new("Counted on", FieldPath.Of("start"), new DateType(), "The date of these figures, like 2026-03-05; the first payday is on it or after.") { Locked = SinceStart },
        new("In the account", FieldPath.Of("opening", "account"), new AmountType(), "All of it, with what is set aside for bills and held in pots there. The rest is the buffer.") { Locked = SinceStart },
        .. work.Notes.Select(note => new SetupField(
            $"Notes of {PiecesType.Shown(note, work)}",
            FieldPath.Of("opening", "notesOnHand", note),
            new CountType(0, MostOfOne),
            "How many loose notes of this value are at home, in no pot; empty for none.") { Locked = SinceStart }.Optional()),
    ];

    private static string? SinceStart(SetupWork work, JsonObject household) =>
        work.HasHistory ? "It is part of the ledger since a payday was closed, and stays as it is." : null;

    private static bool IsMachine(JsonObject household) => household["bank"]?["kind"]?.ToString() == "machine";

    // Other notes than those of the currency before would be wrong; where none are known they have to be typed in.
    private static void PutUsualCash(JsonObject household)
    {
        household.Remove("notes");
        household.Remove("coins");
        FieldPath.Of("bank", "notes").Put(household, null);
        FieldPath.Of("opening", "notesOnHand").Put(household, null);
        if (household["currency"]?.ToString() is { } code && CashDefaults.Codes.Contains(code))
        {
            CashPieces pieces = CashDefaults.For(Currency.FromCode(code));
            household["notes"] = List(pieces.Notes);
            household["coins"] = List(pieces.Coins);
        }
    }

    private static JsonArray List(ImmutableArray<Money> pieces) =>
        new([.. pieces.Select(piece => (JsonNode)JsonValue.Create(JsonWriting.PieceText(piece)))]);
}
