namespace Payday.Tests.Lives;

/// <summary>The household of the long life: as a file for the program, and as plain data for the model.</summary>
internal static class LifeHousehold
{
    public static readonly DateOnly Start = new(2026, 1, 8);

    public static readonly ModelSource[] Sources =
    [
        new("Mill", 89050, [.. ModelDates.Every(14, new(2026, 1, 9)).Select(date => ModelDates.Moved(date, -1))], InWeeks: true) { Later = (new(2026, 6, 12), 91025) },
        new("Night desk", 61020, [.. ModelDates.EachMonth(25).Select(date => ModelDates.Moved(date, -1))], InWeeks: false),
    ];

    public static readonly ModelBill[] Bills =
    [
        new("Rent", 72000, true, [.. ModelDates.EachMonth(1).Select(date => ModelDates.Moved(date, -1))], 36000) { Later = (new(2026, 7, 31), 73500) }, // that of 1 August, a Saturday
        new("Power", 6430, true, [.. ModelDates.EachMonth(17).Select(date => ModelDates.Moved(date, 1))], 0),
        new("Water", 9175, true, [.. ModelDates.EachMonths(3, new(2026, 2, 10))], 2000),
        new("Insurance", 42000, true, [.. ModelDates.EachMonths(12, new(2025, 11, 9)).Select(date => ModelDates.Moved(date, -1))], 7000),
        new("Choir", 1200, false, [.. ModelDates.EachMonth(5).Concat(ModelDates.EachMonth(20)).Order()], 0),
        new("Store room", 3300, false, [.. ModelDates.LastWorkingDays()], 0),
    ];

    public static readonly ModelDebt[] Debts =
    [
        new("Stove loan", 64000, 0.0649m, 0, 4500, 18),
        new("Blue card", 348035, 0.2199m, 0.02m, 2500, 9),
    ];

    public static readonly ModelPot[] Pots =
    [
        new("Food", "week", 11000, Cash: true, 1, Floor: 10000) { TopNote = 2000, Later = (new(2026, 8, 14), 11500) },
        new("Bus", "week", 2320, Cash: true, 2, Floor: 2000) { Then = "buffer" },
        new("Treats", "payday", 3500, Cash: true, 9, Has: 1200) { Then = "Blue card" },
        new("Odds", "month", 6000, Cash: true, 6) { Later = (new(2026, 9, 15), 7500) },
        new("Clothes", "spread", 3000, Cash: false, 7, Has: 500),
        new("Coat", "sinking", 18000, Cash: true, 5, Has: 2000) { By = new(2026, 10, 20) },
        new("Trip", "sinking", 61500, Cash: false, 4) { By = new(2027, 1, 15) },
        new("Steps", "ladder", 500, Cash: true, 8) { Most = 20 },
        new("Reserve", "reserve", 4000, Cash: false, 3, Floor: 1000, Has: 25000) { Most = 60000, Later = (new(2026, 11, 1), 90000) },
    ];

    /// <summary>Notes on hand in no pot, and the account, in cents.</summary>
    public const long LooseNotes = 5500;

    public const long Account = 120000;

    /// <summary>What the buffer keeps at least.</summary>
    public const long BufferKeeps = 4000;

    /// <summary>The values of the notes in use, in cents.</summary>
    public static readonly long[] Notes = [10000, 5000, 2000, 1000, 500];

    /// <summary>The file.</summary>
    public const string File = """
        {
          "version": 3, "name": "Mill lane", "start": "2026-01-08", "currency": "USD", "notes": ["100", "50", "20", "10", "5"], "coins": ["1"],
          "fillDay": "Friday", "holidays": { "set": "none", "extra": ["2026-04-17", "2026-12-25", "2027-01-01"] },
          "bufferKeeps": "40.00", "opening": { "account": "1200.00", "notesOnHand": { "20": 2, "5": 3 } },
          "sources": [
            { "name": "Mill", "schedule": { "kind": "fortnightly", "anchor": "2026-01-09" }, "shift": "before", "expected": "890.50", "later": [{ "from": "2026-06-12", "amount": "910.25" }] },
            { "name": "Night desk", "schedule": { "kind": "monthly", "day": 25 }, "shift": "before", "expected": "610.20" }
          ],
          "bills": [
            { "name": "Rent", "amount": "720.00", "later": [{ "from": "2026-08-01", "amount": "735.00" }], "schedule": { "kind": "monthly", "day": 1 }, "shift": "before", "essential": true, "setAside": "360.00" },
            { "name": "Power", "amount": "64.30", "schedule": { "kind": "monthly", "day": 17 }, "shift": "after", "essential": true },
            { "name": "Water", "amount": "91.75", "schedule": { "kind": "everyMonths", "months": 3, "anchor": "2026-02-10" }, "shift": "none", "essential": true, "setAside": "20.00" },
            { "name": "Insurance", "amount": "420.00", "schedule": { "kind": "yearly", "anchor": "2025-11-09" }, "shift": "before", "essential": true, "setAside": "70.00" },
            { "name": "Choir", "amount": "12.00", "schedule": { "kind": "twiceMonthly", "days": [5, 20] }, "shift": "none", "essential": false },
            { "name": "Store room", "amount": "33.00", "schedule": { "kind": "monthly", "day": "lastWorkingDay" }, "shift": "none", "essential": false }
          ],
          "debts": [
            { "name": "Stove loan", "balance": "640.00", "rate": "0.0649", "minimum": { "fixed": "45.00" }, "due": 18 },
            { "name": "Blue card", "balance": "3480.35", "rate": "0.2199", "minimum": { "percent": "0.02", "floor": "25.00" }, "due": 9 }
          ],
          "pots": [
            { "name": "Food", "kind": "spending", "amount": "110.00", "per": "week", "later": [{ "from": "2026-08-14", "amount": "115.00" }], "held": "cash", "rank": 1, "floor": "100.00", "topNote": "20" },
            { "name": "Bus", "kind": "spending", "amount": "23.20", "per": "week", "held": "cash", "rank": 2, "floor": "20.00", "leftOver": "buffer" },
            { "name": "Treats", "kind": "spending", "amount": "35.00", "per": "payday", "held": "cash", "rank": 9, "has": "12.00", "leftOver": { "debt": "blue-card" } },
            { "name": "Odds", "kind": "spending", "amount": "60.00", "per": "month", "later": [{ "from": "2026-09-15", "amount": "75.00" }], "held": "cash", "rank": 6 },
            { "name": "Clothes", "kind": "spending", "amount": "30.00", "per": "monthSpread", "held": "account", "rank": 7, "has": "5.00" },
            { "name": "Coat", "kind": "sinking", "target": "180.00", "by": "2026-10-20", "held": "cash", "rank": 5, "has": "20.00" },
            { "name": "Trip", "kind": "sinking", "target": "600.00", "by": "2027-01-15", "later": [{ "from": "2027-01-02", "amount": "615.00" }, { "from": "2027-01-16", "amount": "999.00" }], "held": "account", "rank": 4 },
            { "name": "Steps", "kind": "ladder", "unit": "5.00", "steps": 20, "order": "rising", "held": "cash", "rank": 8 },
            { "name": "Reserve", "kind": "reserve", "level": "600.00", "perPayday": "40.00", "later": [{ "from": "2026-11-01", "amount": "900.00" }], "held": "account", "rank": 3, "floor": "10.00", "has": "250.00" }
          ]
        }
        """;
}
