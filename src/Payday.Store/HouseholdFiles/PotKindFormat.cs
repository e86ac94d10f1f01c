using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Pots;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>What a pot is for: its <c>kind</c>, and the fields that go with it.</summary>
internal static class PotKindFormat
{
    private const int MostSteps = 1_000;

    /// <summary>Reads a kind; null where its kind is wrong.</summary>
    public static PotKind? Read(JsonFields pot, HouseholdParts parts) =>
        pot.Required("kind").Word("spending", "sinking", "ladder", "reserve") switch
        {
            "spending" => ReadSpending(pot, parts),
            "sinking" => new PotKind.Sinking(
                pot.Required("target").AmountAboveZero(parts.Currency),
                LaterDate.Read(pot.Required("by"), parts))
            {
                Repeats = pot.Optional("repeats") is { } repeats ? ScheduleFormat.Read(repeats) : null,
                SettledTo = pot.Optional("settledTo") is { } settled ? LaterDate.Read(settled, parts) : null,
                Finished = pot.Optional("finished")?.Flag() ?? false,
            },
            "ladder" => new PotKind.Ladder(
                pot.Required("unit").AmountAboveZero(parts.Currency),
                pot.Required("steps").Count(1, MostSteps),
                pot.Required("order").OneOf(Words.LadderOrders)),
            "reserve" => new PotKind.Reserve(
                pot.Required("level").AmountAboveZero(parts.Currency),
                pot.Required("perPayday").AmountAboveZero(parts.Currency)),
            _ => null,
        };

    /// <summary>A kind that asks for nothing, for a pot that is refused anyway.</summary>
    public static PotKind StandIn(HouseholdParts parts) =>
        new PotKind.Spending(Money.Zero(parts.Currency), FillPer.Payday);

    private static PotKind.Spending ReadSpending(JsonFields pot, HouseholdParts parts)
    {
        Money amount = pot.Required("amount").Amount(parts.Currency);
        FillPer per = pot.Required("per").OneOf(Words.FillPers);
        JsonCursor? weeks = pot.Optional("weeks");
        bool splits = weeks?.OneOf(Words.WeekUses) ?? false;
        if (weeks is { IsSound: true } && per == FillPer.Week && !splits)
        {
            weeks.Refuse("An amount for each week always goes week by week; take this out, or write \"per\": \"payday\".");
        }

        return new PotKind.Spending(amount, per) { SplitsOverWeeks = splits };
    }

    public static void Write(Utf8JsonWriter json, PotKind kind)
    {
        switch (kind)
        {
            case PotKind.Spending spending:
                json.WriteString("kind", "spending");
                json.WriteAmount("amount", spending.Amount);
                json.WriteString("per", Words.FillPers.WordFor(spending.Per));
                if (spending.SplitsOverWeeks)
                {
                    json.WriteString("weeks", Words.WeekUses.WordFor(true));
                }

                break;
            case PotKind.Sinking sinking:
                json.WriteString("kind", "sinking");
                json.WriteAmount("target", sinking.Target);
                json.WriteDate("by", sinking.By);
                if (sinking.Repeats is { } repeats)
                {
                    ScheduleFormat.Write(json, "repeats", repeats);
                }

                json.WriteDate("settledTo", sinking.SettledTo);
                if (sinking.Finished)
                {
                    json.WriteBoolean("finished", true);
                }

                break;
            case PotKind.Ladder ladder:
                json.WriteString("kind", "ladder");
                json.WriteAmount("unit", ladder.Unit);
                json.WriteNumber("steps", ladder.Steps);
                json.WriteString("order", Words.LadderOrders.WordFor(ladder.Order));
                break;
            case PotKind.Reserve reserve:
                json.WriteString("kind", "reserve");
                json.WriteAmount("level", reserve.Level);
                json.WriteAmount("perPayday", reserve.PerPayday);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind));
        }
    }

    /// <summary>The amounts of a kind.</summary>
    public static IEnumerable<Money> Amounts(PotKind kind) => kind switch
    {
        PotKind.Spending spending => [spending.Amount],
        PotKind.Sinking sinking => [sinking.Target],
        PotKind.Ladder ladder => [ladder.Unit],
        PotKind.Reserve reserve => [reserve.Level, reserve.PerPayday],
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
