using System.Globalization;
using System.Text.Json.Nodes;

namespace Payday.Tests.Lives;

/// <summary>What each view must say, as its <c>--json</c> says it.</summary>
internal sealed class ModelViews(ModelBook book, ModelWeeks weeks)
{
    public static string Plain(long cents) => string.Create(CultureInfo.InvariantCulture, $"{(cents < 0 ? "-" : "")}{Math.Abs(cents) / 100}.{Math.Abs(cents) % 100:00}");

    public static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public JsonObject Overview() => new()
    {
        ["household"] = "Mill lane",
        ["nextPayday"] = Iso(book.NextPayday),
        ["account"] = Plain(book.Ledger.In("account").Sum(end => end.Has)),
        ["cash"] = Plain(book.Ledger.In("cash").Sum(end => end.Has)),
        ["purposes"] = List(book.Ledger.In("account").Concat(book.Ledger.In("cash")).Select(end => new JsonObject
        {
            ["place"] = end.End.Split(": ")[0],
            ["purpose"] = end.End[(end.End.IndexOf(": ", StringComparison.Ordinal) + 2)..],
            ["amount"] = Plain(end.Has),
        }).OrderBy(purpose => purpose.ToJsonString(), StringComparer.Ordinal)),
    };

    public JsonObject Pots(DateOnly today) => new()
    {
        ["pots"] = List(book.Pots.Select(pot => new JsonObject
        {
            ["name"] = pot.Name,
            ["kind"] = pot.Spends ? "spending" : pot.Kind,
            ["held"] = pot.Cash ? "cash" : "account",
            ["balance"] = Plain(book.Ledger.InItsPlace(pot.Name)),
            ["keptBack"] = Plain(book.Ledger.Has(ModelLedger.KeptBack(pot.Name))),
            ["target"] = pot.Kind switch
            {
                "sinking" => Plain(pot.Amount),
                "ladder" => Plain(pot.Amount * pot.Most * (pot.Most + 1) / 2),
                "reserve" => Plain(pot.On(today)),
                _ => null,
            },
        })),
    };

    public JsonObject Bills() => new()
    {
        ["bills"] = List(book.Bills.Select(bill => new JsonObject
        {
            ["name"] = bill.Name,
            ["held"] = Plain(book.Ledger.Has(ModelLedger.SetAside(bill.Name))),
            ["nextDue"] = Iso(Next(bill)),
            ["amount"] = Plain(bill.On(Next(bill))),
        })),
    };

    private DateOnly Next(ModelBill bill) => bill.Dates.Where((date, i) => date >= LifeHousehold.Start && !book.IsPaid(bill.Name, i)).First();

    public JsonObject Debts(DateOnly today)
    {
        // Each debt goes on in the month of its next minimum to come.
        DateOnly covered = book.Closed.Count == 0 ? LifeHousehold.Start.AddDays(-1) : book.Closed[^1].Until;
        Dictionary<string, int> begins = book.Debts.ToDictionary(debt => debt.Name, debt => Math.Max(Number(today), Number(ModelDates.EachMonth(debt.Day).First(date => date > covered))));
        ModelDebt[] owing = [.. book.Debts.Where(debt => Ahead(debt, covered)[^1].Then > 0)];
        int first = owing.Select(debt => begins[debt.Name]).DefaultIfEmpty(Number(today)).Min();
        Dictionary<string, (int Month, long Interest)> paid = ModelProjection.Of(
            book.Debts, book.Debts.ToDictionary(debt => debt.Name, debt => Ahead(debt, covered)[^1].Then), begins.ToDictionary(debt => debt.Key, debt => Math.Max(0, debt.Value - first)));
        return new JsonObject
        {
            ["months"] = paid.Values.Max(debt => debt.Month),
            ["interest"] = Plain(paid.Values.Sum(debt => debt.Interest)),
            ["debts"] = List(book.Debts.Select(debt => new JsonObject
            {
                ["name"] = debt.Name,
                ["paidOff"] = Iso(new DateOnly(1, 1, 1).AddMonths(first + Math.Max(1, paid[debt.Name].Month) - 1))[..7],
                ["interest"] = Plain(paid[debt.Name].Interest),
            })),
            ["never"] = new JsonArray(),
        };

        static int Number(DateOnly date) => ((date.Year - 1) * 12) + date.Month - 1;
    }

    public JsonObject Calendar(DateOnly today)
    {
        DateOnly until = today.AddMonths(3);
        IEnumerable<JsonObject> Events() =>
            book.Paydays(today).TakeWhile(payday => payday.On <= until)
                .Select(payday => Event(
                    payday.On,
                    (payday.Extra ? "extra payday" : "payday") + (book.Closed.Any(closed => closed.On == payday.On) ? ", closed" : ""),
                    string.Join("; ", payday.Pays.Select(source => source.Name)),
                    book.Closed.Any(closed => closed.On == payday.On) || payday.Pays.Sum(source => source.On(payday.On)) is 0 ? null : payday.Pays.Sum(source => source.On(payday.On))))
                .Concat(ModelDates.Every(7, new(2026, 1, 9)).Where(day => day >= today && day <= until).Select(day => Event(day, "fill day", "", null)))
                .Concat(book.Bills.SelectMany(bill => bill.Dates.Select((day, i) => (day, i)).Where(due => due.day >= today && due.day <= until)
                    .Select(due => Event(due.day, book.IsPaid(bill.Name, due.i) ? "paid" : "due", bill.Name, book.PaidAs(bill.Name, due.i) ?? bill.On(due.day)))))
                .Concat(book.Debts.SelectMany(debt => Minimums(debt, today, until)));
        return new JsonObject { ["events"] = List(Events().OrderBy(day => day.ToJsonString(), StringComparer.Ordinal)) };
    }

    public JsonObject Year(DateOnly today)
    {
        DateOnly last = book.Ledger.Facts.Select(fact => fact.On).Append(today).Max();
        return new JsonObject
        {
            ["year"] = today.Year,
            ["months"] = List(Enumerable.Range(1, 12)
                .Select(month => new DateOnly(today.Year, month, 1))
                .Where(month => month.AddMonths(1) > LifeHousehold.Start && month <= last)
                .Select(Month)),
        };
    }

    public JsonObject Status(DateOnly today)
    {
        long owed = book.Pots.Sum(pot => book.Ledger.Has(ModelLedger.OwedCash(pot.Name)));
        int fills = weeks.ThisWeek(today).Count();
        return new JsonObject
        {
            ["waiting"] = book.NextPayday <= today || weeks.OpenWeek(today) is not null || fills > 0 || owed > 0,
            ["nextPayday"] = Iso(book.NextPayday),
            ["paydayDue"] = book.NextPayday <= today,
            ["countOpenSince"] = weeks.OpenWeek(today) is { } open ? Iso(open.Week) : null,
            ["fillsWaiting"] = fills,
            ["owedBack"] = Plain(owed),
            ["openDifferences"] = book.Counts.Count(count => count.Difference != 0 && !book.Explained.Contains(count.Number)),
            ["bank"] = book.Bank is { } bank
                ? new JsonObject { ["date"] = Iso(bank.On), ["difference"] = Plain(bank.Difference), ["name"] = bank.Name, ["explained"] = bank.Difference == 0 }
                : null,
        };
    }

    public JsonObject Fills(DateOnly day) => new()
    {
        ["fills"] = List(weeks.ThisWeek(day).Select(part => new JsonObject
        {
            ["pot"] = part.Pot,
            ["day"] = Iso(part.Day),
            ["amount"] = Plain(Math.Min(part.Amount, book.Ledger.Has(book.Assumed.Contains(part) ? ModelLedger.Wallet(part.Pot) : ModelLedger.Home(part.Pot)))),
            ["state"] = "to fill",
        })),
    };

    public JsonObject Count(DateOnly on) => new()
    {
        ["date"] = Iso(on),
        ["week"] = Iso(ModelWeeks.WeekOf(on)),
        ["pots"] = List(book.Pots
            .Where(pot => pot.Cash && !(book.LastCount(pot.Name)?.On > on))
            .Select(pot => (Pot: pot, Seen: weeks.Proposal(pot, on)))
            .Where(row => row.Seen != default)
            .Select(row => new JsonObject
            {
                ["pot"] = row.Pot.Name,
                ["filled"] = Plain(row.Seen.Filled),
                ["owedBack"] = Plain(row.Seen.OwedBack),
                ["expected"] = Plain(row.Seen.Expected),
                ["left"] = null,
                ["spent"] = null,
                ["difference"] = "0.00",
                ["then"] = row.Pot.Then is { } then ? $"goes to {(then == "buffer" ? "the buffer" : then)}" : "stays",
            })),
    };

    public JsonObject Return()
    {
        (ModelPot Pot, long Owes)[] owing = [.. book.Pots.Select(pot => (pot, book.Ledger.Has(ModelLedger.OwedCash(pot.Name)))).Where(pot => pot.Item2 > 0)];
        return new JsonObject { ["pots"] = List(owing.Select(pot => new JsonObject { ["pot"] = pot.Pot.Name, ["owes"] = Plain(pot.Owes) })) };
    }

    public JsonObject Run(ModelPayday payday, bool closed) => new()
    {
        ["payday"] = Iso(payday.On),
        ["coversTo"] = Iso(payday.Until),
        ["extra"] = payday.Extra,
        ["closed"] = closed,
        ["cameIn"] = Plain(payday.Income.Sum(income => income.Came)),
        ["carriedOver"] = Plain(payday.CarriedOver),
        ["toOverdraft"] = Plain(0),
        ["fromBuffer"] = Plain(payday.FromBuffer),
        ["income"] = List(payday.Income.Select(income => new JsonObject { ["name"] = income.Name, ["expected"] = Plain(income.Expected), ["amount"] = Plain(income.Came) })),
        ["bills"] = Plain(payday.SetAside),
        ["due"] = List(payday.Dues.Select(due => new JsonObject { ["bill"] = due.Bill, ["date"] = Iso(due.Date), ["amount"] = Plain(due.Amount), ["paid"] = due.Paid })),
        ["setAside"] = List(book.Bills.Select(bill => bill.Name).Select(bill => new JsonObject
        {
            ["bill"] = bill,
            ["before"] = Plain(payday.Held[bill]),
            ["setAside"] = Plain(payday.HeldAfter[bill] - payday.Held[bill]),
            ["paid"] = Plain(Paid(payday, bill)),
            ["after"] = Plain(payday.HeldAfter[bill] - Paid(payday, bill)),
        })),
        ["late"] = new JsonArray(),
        ["debtPayments"] = Plain(payday.Minimums),
        ["debts"] = List(payday.Debts.Select(debt => new JsonObject
        {
            ["name"] = debt.Debt,
            ["due"] = debt.Due is { } due ? Iso(due) : null,
            ["balance"] = Plain(debt.Balance),
            ["interest"] = Plain(debt.Interest),
            ["minimum"] = Plain(debt.Minimum),
            ["payment"] = Plain(debt.Payment),
            ["bought"] = Plain(0),
            ["newBalance"] = Plain(debt.Then),
            ["paid"] = debt.Due is null ? null : debt.Paid,
        })),
        ["fills"] = Plain(payday.Fills.Values.Sum()),
        ["pots"] = List(book.Pots.Select(pot => new JsonObject
        {
            ["name"] = pot.Name,
            ["hasNow"] = Plain(book.Ledger.HasNow(pot.Name)),
            ["proposed"] = Plain(payday.Fills[pot.Name]),
            ["fill"] = Plain(payday.Fills[pot.Name]),
            ["asks"] = ModelFills.Asks(book, payday.On, pot),
        })),
        ["placed"] = Plain(payday.Placements.Sum(placed => placed.Amount)),
        ["placements"] = List(payday.Placements.Select(placed => new JsonObject
        {
            ["target"] = placed.Debt is null ? "buffer" : "debt", ["name"] = placed.Debt ?? "", ["amount"] = Plain(placed.Amount),
        })),
        ["leftToPlace"] = Plain(Math.Min(0, payday.Surplus)),
        ["unpayable"] = new JsonArray(),
    };

    private static long Paid(ModelPayday payday, string bill) => payday.Dues.Where(due => due.Paid && due.Bill == bill).Sum(due => due.Amount);

    // Paid ones, those that wait in the account, and later ones as they will come.
    private IEnumerable<JsonObject> Minimums(ModelDebt debt, DateOnly today, DateOnly until) =>
    [
        .. book.Closed.SelectMany(closed => closed.Minimums).Where(row => row.Debt == debt.Name && row.Paid && row.Due >= today && row.Due <= until)
            .Select(row => Event(row.Due!.Value, "paid", debt.Name, row.Payment)),
        .. Ahead(debt, until).TakeWhile(row => row.Balance > 0).Where(row => row.Due >= today)
            .Select(row => Event(row.Due!.Value, "minimum due", debt.Name, row.Payment)),
    ];

    // As if the payday were the day before the household began: each is paid on its day.
    private ModelMinimum[] Ahead(ModelDebt debt, DateOnly until) =>
        [.. ModelMinimums.Of(book, LifeHousehold.Start.AddDays(-1), until).Where(row => row.Debt == debt.Name)];

    private JsonObject Month(DateOnly month)
    {
        Fact[] during = [.. book.Ledger.Facts.Where(fact => fact.On.Year == month.Year && fact.On.Month == month.Month)];
        long Into(Func<string, bool> end, Func<Fact, bool>? which = null) => during.Where(fact => which?.Invoke(fact) ?? true)
            .Sum(fact => (end(fact.To) ? fact.Amount : 0) - (end(fact.From) ? fact.Amount : 0));
        static bool Is(string end, string kind) => end.StartsWith(kind, StringComparison.Ordinal);
        static bool Held(string end) => Is(end, "account: ") || Is(end, "cash: ");
        bool InPot(string end) => book.Pots.Any(pot => end == ModelLedger.KeptBack(pot.Name) || end == ModelLedger.InAccount(pot.Name) || end == ModelLedger.Home(pot.Name)
            || end == ModelLedger.Wallet(pot.Name) || end == ModelLedger.OwedCash(pot.Name) || end == ModelLedger.OwedBack(pot.Name));
        return new JsonObject
        {
            ["month"] = Iso(month)[..7],
            ["cameIn"] = Plain(-Into(end => Is(end, "income: ")) + during.Where(fact => ModelLedger.EntryKinds.Contains(fact.From)).Sum(fact => fact.Amount)),
            ["bills"] = Plain(Into(end => Is(end, "paid: "))),
            ["debtPayments"] = Plain(Into(end => Is(end, "owed: "), fact => Held(fact.From) || Held(fact.To))),
            ["interest"] = Plain(Into(end => Is(end, "interest: "))),
            ["fills"] = Plain(Into(InPot, fact => Held(fact.From) && Held(fact.To) && fact.Act != "rounding")),
            ["rounding"] = Plain(during.Where(fact => fact.Act == "rounding").Sum(fact => fact.Amount)),
            ["missing"] = Plain(Into(end => Is(end, "missing: "))),
            ["spent"] = Plain(Into(end => Is(end, "spent: ")) + during.Where(fact => ModelLedger.EntryKinds.Contains(fact.To)).Sum(fact => fact.Amount)),
            ["owed"] = Plain(-book.Debts.Sum(debt => book.Ledger.Has(ModelLedger.Owed(debt.Name), month.AddMonths(1).AddDays(-1)))),
        };
    }

    private static JsonObject Event(DateOnly date, string what, string name, long? amount) =>
        new() { ["date"] = Iso(date), ["what"] = what, ["name"] = name, ["amount"] = amount is { } due ? Plain(due) : null };

    private static JsonArray List(IEnumerable<JsonObject> rows) => new([.. rows]);
}
