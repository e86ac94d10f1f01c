namespace Payday.Tests.Lives;

/// <summary>What happens between paydays: fills, card purchases, counts, cash returns (design, 5.8).</summary>
internal sealed class ModelWeeks(ModelBook book)
{
    private const long SmallestNote = 500;

    /// <summary>The parts of the wallet, by day, then in the order of the pots.</summary>
    public IEnumerable<ModelPart> Parts => book.Pots
        .Where(pot => pot.InWallet)
        .SelectMany(pot => book.Closed.SelectMany(closed => closed.Parts).Where(part => part.Pot == pot.Name && part.Amount > 0))
        .OrderBy(part => part.Day);

    /// <summary>Those to fill by a day that are neither done nor skipped.</summary>
    public IEnumerable<ModelPart> Waiting(DateOnly day) => Parts.Where(part => !book.Marks.ContainsKey(part) && part.Day <= day);

    /// <summary>Those of the week that a day lies in: what weeks that are over missed is taken up by their count.</summary>
    public IEnumerable<ModelPart> ThisWeek(DateOnly day) => Parts
        .Where(part => part.Day <= day && part.Day >= WeekOf(day))
        .Where(part => book.Assumed.Contains(part) ? book.Ledger.Has(ModelLedger.Wallet(part.Pot)) > 0 : !book.Marks.ContainsKey(part) && book.Ledger.Has(ModelLedger.Home(part.Pot)) > 0);

    /// <summary>Marks all that wait this week by a day.</summary>
    public void Fill(DateOnly day, params string[] skipped)
    {
        foreach (ModelPart part in ThisWeek(day).ToList())
        {
            if (book.Assumed.Remove(part))
            {
                continue;
            }

            if (skipped.Contains(part.Pot))
            {
                book.Marks[part] = false;
            }
            else
            {
                Fill(part, part.Day < day ? part.Day : day);
            }
        }
    }

    /// <summary>A card purchase: the account pays, the pot's cash is put apart, rounded up to a note.</summary>
    public ModelPurchase Spend(string name, long amount, DateOnly on)
    {
        ModelPot pot = book.Pot(name);
        if (pot.InWallet)
        {
            TakeUp(pot, on, assumes: true);
        }

        long has = book.Ledger.InItsPlace(name);
        var purchase = new ModelPurchase(book.Purchases.Count + 1, on, name, amount, pot.Cash ? Math.Min((amount + SmallestNote - 1) / SmallestNote * SmallestNote, has) : 0);
        book.Purchases.Add(purchase);
        if (!pot.Cash)
        {
            book.Ledger.Move(on, ModelLedger.InAccount(name), ModelLedger.Spent(name), amount, purchase.Act);
            return purchase;
        }

        book.Ledger.Move(on, ModelLedger.OwedBack(name), ModelLedger.Spent(name), amount, purchase.Act);
        Apart(name, purchase.OwedBack, on, purchase.Act);
        book.Owed.Add(new ModelOwed(name, on, purchase.OwedBack, amount, null));
        return purchase;
    }

    /// <summary>Takes it back: as if it had not been.</summary>
    public void Undo(ModelPurchase purchase)
    {
        book.Ledger.Undo(purchase.Act);
        book.Purchases[purchase.Number - 1] = purchase with { Undone = true };
        book.Owed.RemoveAll(owed => owed.Pot == purchase.Pot && owed.On == purchase.On && owed.Short == purchase.Amount && owed.Then is null);
    }

    /// <summary>
    /// Money goes from a purpose of the account to another, to a debt, or to a cash pot, which gets it with its next withdrawal;
    /// or cash from the wallet to a purpose in the account, which gets it when the cash is at the bank (design, 5.12).
    /// </summary>
    public void Move(string from, string to, long amount, DateOnly on)
    {
        string act = $"move {++book.Moves}";
        if (book.Pots.FirstOrDefault(pot => pot.Name == from) is { InWallet: true } pot)
        {
            TakeUp(pot, on, assumes: true);
            Apart(pot.Name, amount, on, act);
            book.Owed.Add(new ModelOwed(from, on, amount, 0, to));
            return;
        }

        string end = InAccount(from);
        string goal = book.Debts.Any(debt => debt.Name == to) ? ModelLedger.Owed(to)
            : book.Pots.Any(known => known.Name == to && known.Cash) ? ModelLedger.KeptBack(to)
            : InAccount(to);
        book.Ledger.Move(DayFor(end, amount, on), end, goal, amount, act);
    }

    /// <summary>Money comes in to a purpose of the account, or goes out of one; what a pot pays is spent from it (design, 5.13).</summary>
    public void Enter(string kind, string purpose, long amount, DateOnly on)
    {
        string act = $"entry {++book.Entries}";
        string end = InAccount(purpose);
        if (amount > 0)
        {
            book.Ledger.Move(on, kind, end, amount, act);
        }
        else
        {
            book.Ledger.Move(DayFor(end, -amount, on), end, kind == "payment" ? ModelLedger.Spent(purpose) : kind, -amount, act);
        }
    }

    /// <summary>What a count for a day expects, and from what.</summary>
    public (long Filled, long OwedBack, long Expected) Proposal(ModelPot pot, DateOnly on)
    {
        if (pot.InWallet)
        {
            // To look changes nothing: what is taken up for the look is taken out again.
            int before = book.Ledger.Facts.Count;
            Dictionary<ModelPart, bool> marks = new(book.Marks);
            TakeUp(pot, on, "look");
            (long, long, long) seen = Seen(pot, on);
            book.Ledger.Undo("look");
            Assert.Equal(before, book.Ledger.Facts.Count);
            foreach (ModelPart part in book.Marks.Keys.Except(marks.Keys).ToList())
            {
                book.Marks.Remove(part);
            }

            return seen;
        }

        return Seen(pot, on);
    }

    /// <summary>Counts pots for a day.</summary>
    /// <param name="left">By pot.</param>
    /// <param name="differences">By pot: above zero what is missing, below zero what was found.</param>
    /// <param name="then">By pot: where what is left goes, or stays.</param>
    public void Count(DateOnly on, IReadOnlyDictionary<string, long> left, IReadOnlyDictionary<string, long> differences, IReadOnlyDictionary<string, string> then)
    {
        ModelPot[] counted = [.. book.Pots.Where(pot => left.ContainsKey(pot.Name))];
        foreach (ModelPot pot in counted)
        {
            if (pot.InWallet)
            {
                TakeUp(pot, on);
                book.Assumed.RemoveWhere(part => part.Pot == pot.Name && part.Day <= on);
            }

            string end = Counted(pot);
            long difference = differences.GetValueOrDefault(pot.Name);
            long gone = Seen(pot, on).Expected - left[pot.Name];
            string act = $"count {book.Counts.Count + 1}";
            book.Ledger.Move(on, end, ModelLedger.Spent(pot.Name), gone - difference, act);
            book.Ledger.Move(on, end, ModelLedger.Missing(pot.Name), difference, act);
            book.Ledger.Move(on, ModelLedger.Missing(pot.Name), end, -difference, act);
            string? goes = then.GetValueOrDefault(pot.Name, pot.Then ?? "stays") is "stays" ? null : then.GetValueOrDefault(pot.Name, pot.Then!);
            book.Counts.Add(new ModelCount(book.Counts.Count + 1, on, pot.Name, left[pot.Name], difference, goes, 0));
        }

        foreach (ModelPot pot in counted)
        {
            ModelCount count = book.LastCount(pot.Name)!;
            if (count is { Then: { } goes, Left: > 0 })
            {
                bool inCash = book.Pots.Any(other => other.Name == goes && other.Cash);
                book.Ledger.Move(on, Counted(pot), inCash ? Counted(book.Pot(goes)) : ModelLedger.OwedCash(pot.Name), count.Left, $"moved by count {count.Number}");
                if (!inCash)
                {
                    book.Owed.Add(new ModelOwed(pot.Name, on, count.Left, 0, goes));
                }
            }
        }

        foreach (ModelPot pot in counted)
        {
            int at = book.LastCount(pot.Name)!.Number - 1;
            book.Counts[at] = book.Counts[at] with { Facts = book.Ledger.Facts.Count };
        }
    }

    /// <summary>The owed-back cash of some pots is at the bank.</summary>
    public void Return(DateOnly on, string[] pots)
    {
        foreach (ModelOwed owed in book.Owed.Where(owed => pots.Contains(owed.Pot)).OrderBy(owed => owed.On).ToList())
        {
            (string to, long most) = owed.Then switch
            {
                null => (ModelLedger.OwedBack(owed.Pot), owed.Short),
                "buffer" => (ModelLedger.Buffer, owed.Left),
                { } debt when book.Debts.Any(known => known.Name == debt) => (ModelLedger.Owed(debt), book.Ledger.OwedOn(debt)),
                { } pot => (ModelLedger.InAccount(pot), owed.Left),
            };
            long part = Math.Min(owed.Left, most);

            // Paid on a debt, it is in the account first.
            string? through = owed.Then is { } then && book.Debts.Any(debt => debt.Name == then) ? ModelLedger.ForDebt(then) : null;
            book.Ledger.Move(on, ModelLedger.OwedCash(owed.Pot), through ?? to, part, "return");
            book.Ledger.Move(on, through ?? to, to, through is null ? 0 : part, "return");
            book.Ledger.Move(on, ModelLedger.OwedCash(owed.Pot), ModelLedger.Buffer, owed.Left - part, owed.Then is null ? "rounding" : "return");
            book.Owed.Remove(owed);
        }
    }

    /// <summary>The first week that is over and was not counted, by its fill day; and how many pots it has.</summary>
    public (DateOnly Week, int Pots)? OpenWeek(DateOnly today)
    {
        DateOnly[] from = [.. book.Pots.Where(pot => pot.InWallet).Select(Uncounted).OfType<DateOnly>()];
        return from.Length > 0 && WeekOf(from.Min()) is var week && week < WeekOf(today) ? (week, from.Count(day => day <= week.AddDays(6))) : null;
    }

    /// <summary>The fill day on which a week begins.</summary>
    public static DateOnly WeekOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek - (int)DayOfWeek.Friday + 7) % 7));

    // The day after its last count where cash is in the wallet since, or its first fill after that.
    private DateOnly? Uncounted(ModelPot pot)
    {
        DateOnly? counted = book.LastCount(pot.Name)?.On;
        return counted is { } last && book.Ledger.Has(ModelLedger.Wallet(pot.Name)) > 0
            ? last.AddDays(1)
            : Parts.Where(part => part.Pot == pot.Name && book.Marks.GetValueOrDefault(part, true) && !(part.Day <= counted)).Select(part => (DateOnly?)part.Day).FirstOrDefault();
    }

    private (long Filled, long OwedBack, long Expected) Seen(ModelPot pot, DateOnly on)
    {
        string end = Counted(pot);
        ModelCount? last = book.LastCount(pot.Name);
        Fact[] since = [.. book.Ledger.Facts
            .Where((fact, i) => fact.On <= on && (last is null || i >= last.Facts || fact.On > last.On))
            .Where(fact => fact.From == end || fact.To == end)];
        long Net(Func<string, bool> other) => since.Sum(fact => (fact.To == end && other(fact.From) ? fact.Amount : 0) - (fact.From == end && other(fact.To) ? fact.Amount : 0));
        return (
            Net(other => other == ModelLedger.KeptBack(pot.Name) || other == ModelLedger.Home(pot.Name)),
            -Net(other => other == ModelLedger.OwedCash(pot.Name)),
            book.Ledger.Has(end, on));
    }

    // Fills that nobody marked are taken as done, and cash at home that waits for no fill as being in the wallet.
    // Taken so by something other than a count they still wait to be put in the real wallet.
    private void TakeUp(ModelPot pot, DateOnly on, string? look = null, bool assumes = false)
    {
        foreach (ModelPart part in Waiting(on).Where(part => part.Pot == pot.Name).ToList())
        {
            Fill(part, part.Day, look);
            if (assumes)
            {
                book.Assumed.Add(part);
            }
        }

        long waiting = Parts.Where(part => part.Pot == pot.Name && part.Payday <= on && !book.Marks.GetValueOrDefault(part)).Sum(part => part.Amount);
        book.Ledger.Move(on, ModelLedger.Home(pot.Name), ModelLedger.Wallet(pot.Name), book.Ledger.LeastFrom(ModelLedger.Home(pot.Name), on) - waiting, look ?? "wallet");
    }

    private void Fill(ModelPart part, DateOnly on, string? look = null)
    {
        DateOnly day = NotBefore(part.Pot, on);
        book.Ledger.Move(
            day, ModelLedger.Home(part.Pot), ModelLedger.Wallet(part.Pot), Math.Min(part.Amount, Math.Max(0, book.Ledger.LeastFrom(ModelLedger.Home(part.Pot), day))), look ?? $"fill {part}");
        book.Marks[part] = true;
    }

    // A week that was counted is over: what is entered late is in the next count.
    private DateOnly NotBefore(string pot, DateOnly on) => book.LastCount(pot)?.On is { } counted && counted > on ? counted : on;

    private DateOnly DayFor(string end, long amount, DateOnly from) => book.Ledger.Facts
        .Where(fact => fact.On > from && (fact.From == end || fact.To == end)).Select(fact => fact.On).Append(from).Distinct().Order()
        .Where(day => book.Ledger.LeastFrom(end, day) >= amount)
        .DefaultIfEmpty(from).First();

    // Cash of the wallet first, then of home.
    private void Apart(string pot, long amount, DateOnly on, string act)
    {
        foreach (string end in (string[])[ModelLedger.Wallet(pot), ModelLedger.Home(pot)])
        {
            long part = Math.Min(amount, book.Ledger.Has(end));
            amount -= part;
            book.Ledger.Move(DayFor(end, part, NotBefore(pot, on)), end, ModelLedger.OwedCash(pot), part, act);
        }
    }

    private static string InAccount(string purpose) => purpose == "buffer" ? ModelLedger.Buffer : ModelLedger.InAccount(purpose);

    private static string Counted(ModelPot pot) => pot.InWallet ? ModelLedger.Wallet(pot.Name) : ModelLedger.Home(pot.Name);
}
