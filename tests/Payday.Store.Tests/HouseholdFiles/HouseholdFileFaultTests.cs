using Payday.Core.Households;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class HouseholdFileFaultTests
{
    [Theory]
    // Settings.
    [InlineData("\"version\": 3", "\"version\": 4", "version, line 2: This file has version 4 and this program reads versions 1 to 3; use a newer program.")]
    [InlineData("\"version\": 3", "\"version\": \"2\"", "version, line 2: A text stands here; write a whole number from 1 to 2147483647, without quotes.")]
    [InlineData("\"Reed house\"", "\"   \"", "name, line 3: This text is empty; write something.")]
    [InlineData("\"Reed house\"", "\"Reed\\u202Ehouse\"", "name, line 3: This text holds a character that can't be shown (U+202E); remove it.")]
    [InlineData("\"Reed house\"", "\"Reed\\u001b[2Jhouse\"", "name, line 3: This text holds a character that can't be shown (U+001B); remove it.")]
    [InlineData("\"Reed house\"", "\"1234567890123456789012345678901234567890123456789012345678901\"", "name, line 3: This text has 61 characters; shorten it to 60.")]
    [InlineData("\"name\": \"Reed house\",", "", "name, line 1: This is missing; add a text in quotes.")]
    [InlineData("\"2026-03-05\"", "\"2026-02-30\"", "start, line 4: 2026-02-30 is not in the calendar: February 2026 has 28 days.")]
    [InlineData("\"2026-03-05\"", "\"2026-13-05\"", "start, line 4: 2026-13-05 is not in the calendar: months go from 01 to 12, in the middle.")]
    [InlineData("\"2026-03-05\"", "\"5 March 2026\"", "start, line 4: \"5 March 2026\" is not a date; write it like 2026-03-05.")]
    [InlineData("\"2026-03-05\"", "\"1026-03-05\"", "start, line 4: 1026-03-05 is too far off; dates go from 1900 to 2199.")]
    [InlineData("\"1,234.56\"", "\"1,234\"", "numbers, line 6: \"1,234\" is not known here; write \"1,234.56\", \"1.234,56\", \"1 234,56\", \"1'234.56\" or \"1234.56\".")]
    [InlineData("\"100\",", "\"0\",", "notes[0], line 8: This amount is zero; write one above zero.")]
    [InlineData("\"100\",", "\"20.00\",", "notes[1], line 9: 20 stands in this list twice; keep one of them.")]
    [InlineData("\"100\",\n    \"20\",\n    \"5\"\n", "", "notes, line 7: A list without notes is no use; write at least one, such as [\"20\"].")]
    [InlineData("\"0.25\"", "\"0.255\"", "coins[0], line 13: USD has at most 2 decimals; write it like 12.55.")]
    [InlineData("\"fillDay\": \"Friday\"", "\"fillDay\": \"friday\"", "fillDay, line 15: \"friday\" is not known here; write \"Monday\", \"Tuesday\", \"Wednesday\", \"Thursday\", \"Friday\", \"Saturday\" or \"Sunday\".")]
    [InlineData("\"set\": \"US\"", "\"set\": \"FR\"", "holidays.set, line 17: \"FR\" is not known here; write \"none\", \"US\", \"GB-EW\" or \"TARGET\".")]
    [InlineData("\"2026-11-27\"", "null", "holidays.extra[0], line 19: Null stands here; write a date such as \"2026-03-05\".")]
    [InlineData("\"level\"", "\"even\"", "setAsides, line 22: \"even\" is not known here; write \"level\" or \"asTheyFall\".")]
    [InlineData("\"kind\": \"machine\"", "\"kind\": \"vault\"", "bank.kind, line 24: \"vault\" is not known here; write \"teller\" or \"machine\".")]
    [InlineData("[\n      \"20\"\n    ]", "[\n      \"50\"\n    ]", "bank.notes, line 25: There is no note of 50 in use; write one of 100, 20, 5.")]
    [InlineData("\"500.00\"", "\"0.00\"", "bank.limit, line 28: This amount is zero; write one above zero.")]
    [InlineData("\"500.00\"", "\"10.00\"", "bank.limit, line 28: The machine's smallest note is 20, so with this limit it gives nothing; raise it or leave it out.")]
    [InlineData("\"up\"", "\"down\"", "cardRounding, line 30: \"down\" is not known here; write \"up\" or \"exact\".")]
    [InlineData("\"surplusOrder\": \"balance\"", "\"surplusOrder\": 1", "surplusOrder, line 31: A number stands here; write \"balance\" or \"rate\".")]
    [InlineData("\"Thank you\"", "\"a\", \"b\", \"c\", \"d\", \"e\", \"f\", \"g\"", "slipLines, line 32: There are 7 entries here; at most 6 are taken.")]
    [InlineData("\"surplusOrder\"", "\"surplusOder\"", "surplusOder, line 31: This field is not known here; remove it, or write one of version, name, start, currency, notes, coins, numbers, fillDay, holidays, setAsides, bank, cardRounding, surplusOrder, slipLines, bufferKeeps, look, overdraft, opening, sources, bills, debts, pots.")]
    // The opening.
    [InlineData("\"20\": 3", "\"50\": 3", "opening.notesOnHand.50, line 38: There is no note of 50 in use; write one of 100, 20, 5.")]
    [InlineData("\"20\": 3", "\"20\": -1", "opening.notesOnHand.20, line 38: -1 doesn't fit here; write a whole number from 0 to 1000000, without quotes.")]
    [InlineData("\"20\": 3", "\"20\": 3, \"20.00\": 1", "opening.notesOnHand.20.00, line 38: 20 is counted here twice; keep one of them.")]
    [InlineData("\"900.00\"", "\"449.99\"", "opening.account, line 36: The set-asides of bills and the pots in the account already have 450.00, but the account has 449.99; raise \"account\" or lower a \"setAside\" or \"has\".")]
    // Sources.
    [InlineData("\"1712.35\"", "1712.35", "sources[0].expected, line 50: 1712.35 stands here without quotes; write it as \"1712.35\".")]
    [InlineData("\"1712.35\"", "\"-1712.35\"", "sources[0].expected, line 50: This amount is below zero; write zero or more.")]
    [InlineData("\"1712.35\"", "\"1,712.35\"", "sources[0].expected, line 50: '1,712.35' is not an amount; write it like 12.55.")]
    [InlineData("\"1712.35\"", "\"1712.35 EUR\"", "sources[0].expected, line 50: \"1712.35 EUR\" is in EUR and the rest in USD, and two currencies can't mix; convert it and write the number alone.")]
    [InlineData("\"1712.35\"", "\"1712.35 USD\"", "sources[0].expected, line 50: \"1712.35 USD\" names the currency; write the number alone.")]
    [InlineData("\"1712.35\"", "\"99999999999999999999\"", "sources[0].expected, line 50: The amount is too large; look at its digits.")]
    [InlineData("\"1712.35\"", "\"92233720368547758.07\"", "line 1: The amounts add up to more than can be counted exactly; look for one with too many digits (the largest is 92233720368547758.07).")]
    [InlineData("\"2030-12-31\"", "\"2026-03-04\"", "sources[0].until, line 51: 2026-03-04 is before the household starts, 2026-03-05; write a later date.")]
    [InlineData("\"kind\": \"fortnightly\"", "\"kind\": \"irregular\"", "sources[0].schedule.kind, line 46: \"irregular\" is not known here; write \"weekly\", \"fortnightly\", \"everyWeeks\", \"twiceMonthly\", \"monthly\", \"everyMonths\", \"yearly\" or \"dates\".")]
    [InlineData("\"kind\": \"fortnightly\"", "\"kind\": \"everyWeeks\"", "sources[0].schedule.weeks, line 45: This is missing; add a whole number from 1 to 520, without quotes.")]
    [InlineData("\"anchor\"", "\"from\"", "sources[0].schedule.anchor, line 45: This is missing; add a date such as \"2026-03-05\".|sources[0].schedule.from, line 47: This field is not known here; remove it, or write one of kind, anchor.")]
    [InlineData("\"id\": \"wage\"", "\"id\": \"My Wage\"", "sources[0].id, line 43: \"My Wage\" is not an id; write lower-case letters a to z, digits and single hyphens, or leave it out.")]
    // Bills.
    [InlineData("\"day\": 31", "\"day\": 32", "bills[0].schedule.day, line 61: 32 doesn't fit here; write a whole number from 1 to 31, without quotes.")]
    [InlineData("\"day\": 31", "\"day\": 1.5", "bills[0].schedule.day, line 61: 1.5 doesn't fit here; write a whole number from 1 to 31, without quotes.")]
    [InlineData("\"day\": 31", "\"day\": {\"nth\": 6, \"weekday\": \"Friday\"}", "bills[0].schedule.day.nth, line 61: 6 doesn't fit here; write a whole number from 1 to 5, without quotes.")]
    [InlineData("\"day\": 31", "\"day\": \"first\"", "bills[0].schedule.day, line 61: \"first\" is not known here; write \"last\", \"lastWorkingDay\" or \"firstWorkingDay\".")]
    [InlineData("\"kind\": \"monthly\",\n        \"day\": 31", "\"kind\": \"twiceMonthly\",\n        \"days\": [15, 15]", "bills[0].schedule.days, line 61: Two different days belong here, such as [15, \"last\"].")]
    [InlineData("\"essential\": true", "\"essential\": \"yes\"", "bills[0].essential, line 64: A text stands here; write true or false, without quotes.")]
    [InlineData("\"setAside\": \"300.00\"", "\"setAside\": \"300.00\", \"until\": \"2226-01-01\"", "bills[0].until, line 65: 2226-01-01 is too far off; dates go from 1900 to 2199.")]
    [InlineData("\"setAside\": \"300.00\"", "\"setAside\": \"300.00\", \"until\": \"2126-03-06\"", "bills[0].until, line 65: 2126-03-06 is more than 100 years off; look for a mistyped year.")]
    // Debts.
    [InlineData("\"0.1999\"", "0.1999", "debts[0].rate, line 73: 0.1999 stands here without quotes; write it as \"0.1999\".")]
    [InlineData("\"0.1999\"", "\"19.99 %\"", "debts[0].rate, line 73: \"19.99 %\" is not a fraction; write 19.99 % as \"0.1999\".")]
    [InlineData("\"0.1999\"", "\"19.99\"", "debts[0].rate, line 73: \"19.99\" is above 10, that is 1000 %; write 19.99 % as \"0.1999\".")]
    [InlineData("\"0.1999\"", "\"0.1234567\"", "debts[0].rate, line 73: \"0.1234567\" has more than 6 decimals; round it.")]
    [InlineData("\"0.02\"", "\"2\"", "debts[0].minimum.percent, line 75: \"2\" is above 1, that is 100 %; write 19.99 % as \"0.1999\".")]
    [InlineData("\"percent\": \"0.02\"", "\"fixed\": \"20.00\"", "debts[0].minimum.floor, line 76: This field is not known here; remove it, or write one of fixed.")]
    [InlineData("\"due\": \"last\"", "\"due\": 0", "debts[0].due, line 78: 0 doesn't fit here; write a whole number from 1 to 31, without quotes.")]
    // Pots.
    [InlineData("\"per\": \"week\"", "\"per\": \"day\"", "pots[0].per, line 87: \"day\" is not known here; write \"week\", \"payday\", \"month\" or \"monthSpread\".")]
    [InlineData("\"per\": \"week\",", "", "pots[0].per, line 82: This is missing; add \"week\", \"payday\", \"month\" or \"monthSpread\".")]
    [InlineData("\"per\": \"week\"", "\"per\": \"week\", \"weeks\": \"once\"", "pots[0].weeks, line 87: An amount for each week always goes week by week; remove this, or write \"per\": \"payday\".")]
    [InlineData("\"per\": \"week\"", "\"per\": \"month\", \"weeks\": \"even\"", "pots[0].weeks, line 87: \"even\" is not known here; write \"once\" or \"split\".")]
    [InlineData("\"kind\": \"sinking\",\n      \"target\": \"1200.00\",\n      \"by\": \"2027-05-01\"", "\"kind\": \"spending\",\n      \"amount\": \"12.00\",\n      \"per\": \"month\",\n      \"weeks\": \"split\"", "pots[1].weeks, line 103: A pot in the account isn't divided over weeks; remove this, or write \"held\": \"cash\".")]
    [InlineData("\"by\": \"2027-05-01\"", "\"by\": \"2027-05-01\", \"repeats\": \"yearly\"", "pots[1].repeats, line 102: A text stands here; write an object in { }.")]
    [InlineData("\"by\": \"2027-05-01\"", "\"by\": \"2027-05-01\", \"settledTo\": \"2026-03-04\"", "pots[1].settledTo, line 102: 2026-03-04 is before the household starts, 2026-03-05; write a later date.")]
    [InlineData("\"by\": \"2027-05-01\"", "\"by\": \"2027-05-01\", \"finished\": \"yes\"", "pots[1].finished, line 102: A text stands here; write true or false, without quotes.")]
    [InlineData("\"topNote\": \"20\"", "\"topNote\": \"2\"", "pots[0].topNote, line 91: There is no note of 2 in use; write one of 100, 20, 5.")]
    [InlineData("\"rank\": 1,", "\"rank\": 1, \"leftOver\": \"goes\",", "pots[0].leftOver, line 89: \"goes\" is not known here; write \"stays\" or \"buffer\".")]
    [InlineData("\"rank\": 1,", "\"rank\": 1, \"leftOver\": {\"pot\": \"hats\"},", "pots[0].leftOver.pot, line 89: \"hats\" is none of the pots; write the name or id of one.")]
    [InlineData("\"rank\": 1,", "\"rank\": 1, \"leftOver\": {\"debt\": \"Roof\"},", "pots[0].leftOver.debt, line 89: \"Roof\" is none of the debts; write the name or id of one.")]
    [InlineData("\"rank\": 1,", "\"rank\": 1, \"leftOver\": {\"pot\": \"food\"},", "pots[0].leftOver, line 89: What is left of a pot can't go to the pot itself; name another, or write \"stays\".")]
    [InlineData("\"rank\": 2,", "\"rank\": 2, \"leftOver\": \"buffer\",", "pots[1].leftOver, line 104: A pot in the account is not counted, so nothing is left over; remove this, or write \"held\": \"cash\".")]
    [InlineData("\"note\": \"5\"", "\"note\": \"10\"", "pots[0].small.note, line 93: There is no note of 10 in use; write one of 100, 20, 5.")]
    [InlineData("\"25.00\"", "\"85.01\"", "pots[0].small, line 92: The pot never gets more than 85.00 at once, so it can't have 85.01 in small notes; lower \"atLeast\".")]
    [InlineData("\"held\": \"cash\"", "\"held\": \"account\"", "pots[0].topNote, line 91: A pot in the account takes no notes; remove this, or write \"held\": \"cash\".|pots[0].small, line 92: A pot in the account takes no notes; remove this, or write \"held\": \"cash\".")]
    [InlineData("\"rank\": 2", "\"rank\": 1", "pots[1].rank, line 104: Rank 1 is already that of \"Food\"; give each pot its own, or leave it out.")]
    [InlineData("\"Roof\"", "\"FOOD\"", "pots[1].name, line 99: \"FOOD\" is already the name of pots[0]; give each its own.")]
    [InlineData("\"id\": \"roof\"", "\"id\": \"food\"", "pots[1].id, line 98: \"food\" is already the id of another one in this list; give each its own, or leave it out.")]
    [InlineData("\"1200.00\"", "\"0.00\"", "pots[1].target, line 101: This amount is zero; write one above zero.")]
    [InlineData("\"2027-05-01\"", "\"2025-05-01\"", "pots[1].by, line 102: 2025-05-01 is before the household starts, 2026-03-05; write a later date.")]
    [InlineData("\"kind\": \"sinking\"", "\"kind\": \"goal\"", "pots[1].kind, line 100: \"goal\" is not known here; write \"spending\", \"sinking\", \"ladder\" or \"reserve\".")]
    [InlineData("\"kind\": \"sinking\",\n      \"target\": \"1200.00\",\n      \"by\": \"2027-05-01\"", "\"kind\": \"ladder\",\n      \"unit\": \"1.00\",\n      \"steps\": 1001,\n      \"order\": \"rising\"", "pots[1].steps, line 102: 1001 doesn't fit here; write a whole number from 1 to 1000, without quotes.")]
    public void Read_OneThingWrong_SaysWhereAndHowToMend(string there, string instead, string expected) =>
        Assert.Equal(expected.Split('|'), Faults(SmallHousehold.With(there, instead)));

    [Fact]
    public void Read_ManyThingsWrong_ListsAllInTheOrderOfTheLines()
    {
        string json = SmallHousehold.Json
            .Replace("\"USD\"", "\"DOLLAR\"", StringComparison.Ordinal)
            .Replace("\"2026-03-06\"", "\"2026-02-29\"", StringComparison.Ordinal)
            .Replace("\"840.00\"", "840", StringComparison.Ordinal)
            .Replace("\"rate\": \"0.1999\"", "\"rat\": \"0.1999\"", StringComparison.Ordinal)
            .Replace("\"held\": \"account\"", "\"held\": \"bank\"", StringComparison.Ordinal);

        Assert.Equal(
            ["currency", "sources[0].schedule.anchor", "bills[0].amount", "debts[0].rate", "debts[0].rat", "pots[1].held"],
            HouseholdFile.Read(json).Faults.Select(fault => fault.Place));
    }

    [Fact]
    public void Read_ListTooLong_SaysSo()
    {
        string bills = string.Join(",", Enumerable.Repeat("{}", 501));
        string json = SmallHousehold.With("\"bills\": [", $"\"bills\": [{bills},");

        Assert.Equal(["bills, line 54: There are 502 entries here; at most 500 are taken."], Faults(json));
    }

    [Fact]
    public void Read_NoSources_AsksForOne()
    {
        const string Json = """
            {"version": 1, "name": "Reed house", "start": "2026-03-05", "currency": "EUR", "notes": ["10"],
             "fillDay": "Friday", "holidays": "none", "sources": []}
            """;

        Assert.Equal(["sources, line 2: A household needs at least one income source; add who pays, and when."], Faults(Json));
    }

    [Theory]
    [InlineData("KWD", "notes, line 1: The notes of KWD are not known here; add those in use, such as [\"20\", \"10\"].")]
    [InlineData("QQQ", null)]
    public void Read_NotesLeftOutOfACurrencyWithoutUsualOnes_AsksForThemUnlessTheCurrencyItselfIsWrong(string currency, string? expected)
    {
        string json = $$"""
            {"version": 1, "name": "Reed house", "start": "2026-03-05", "currency": "{{currency}}",
             "fillDay": "Friday", "holidays": "none",
             "sources": [{"name": "Wage", "schedule": {"kind": "dates", "dates": []}, "shift": "none", "expected": "0"}]}
            """;

        string fault = Assert.Single(Faults(json));
        if (expected is null)
        {
            Assert.StartsWith("currency, line 1: \"QQQ\" is not known here", fault, StringComparison.Ordinal);
        }
        else
        {
            Assert.Equal(expected, fault);
        }
    }

    [Fact]
    public void Read_ALadderTooLargeToCount_IsRefused()
    {
        string json = SmallHousehold.With(
            "\"kind\": \"sinking\",\n      \"target\": \"1200.00\",\n      \"by\": \"2027-05-01\"",
            "\"kind\": \"ladder\", \"unit\": \"1000000000.00\", \"steps\": 1000, \"order\": \"falling\"");

        Assert.Contains("add up to more than can be counted", Assert.Single(Faults(json)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]", "line 1: A list stands here; write an object in { }.")]
    [InlineData("null", "line 1: Null stands here; write an object in { }.")]
    public void Read_NotAnObject_SaysSoOnce(string json, string expected) => Assert.Equal([expected], Faults(json));

    private static IEnumerable<string> Faults(string json)
    {
        JsonReading<Household> reading = HouseholdFile.Read(json);
        Assert.False(reading.Ok);
        return reading.Faults.Select(fault => fault.ToString());
    }
}
