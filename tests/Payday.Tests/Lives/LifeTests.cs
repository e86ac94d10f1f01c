namespace Payday.Tests.Lives;

/// <summary>Fourteen months of a household, played by commands; every figure of every view is recomputed by a model that knows the design alone.</summary>
public sealed class LifeTests
{
    private static readonly DateOnly End = new(2027, 3, 9);

    [Fact]
    public void FourteenMonths_ByCommands_SayWhatTheModelSays()
    {
        using var life = new Life();
        life.Look();
        for (int turn = 0; life.Book.NextPayday < End; turn++)
        {
            Payday(life, turn);
            for (DateOnly day = life.Today.AddDays(1); day < life.Book.NextPayday; day = day.AddDays(1))
            {
                life.On(day);
                Day(life, turn, day);
            }
        }

        life.Look();
        life.Check();
        Assert.True(life.Book is { Moves: > 15, Entries: > 20, Bank: not null }, $"{life.Book.Moves} moves, {life.Book.Entries} entries");
    }

    private static void Payday(Life life, int turn)
    {
        DateOnly payday = life.Book.NextPayday;

        // Some are closed late; two are left out, and the next one is closed in their place.
        life.On(payday.AddDays(turn % 7 == 5 ? 3 : 0));
        if (turn is 9 or 24)
        {
            payday = life.Book.Paydays(payday.AddDays(1)).First().On;
            life.On(payday);
        }

        bool millPays = life.Book.Sources[0].Dates.Contains(payday);
        Dictionary<string, long>? came = millPays && turn % 6 == 4 ? new() { ["Mill"] = turn == 16 ? 31000 : 83745 } : null;
        Dictionary<string, long>? gift = turn % 10 == 3 ? new() { ["Old chairs"] = 4550 } : null;
        life.Close(payday == life.Book.NextPayday ? null : payday, came, gift);
        if (turn is 8 or 21)
        {
            // Taken up again, looked at, and closed as it was.
            life.Look();
            life.Reopen();
            life.Look();
            life.Close(null, came, gift);
        }

        if (turn % 6 == 1)
        {
            life.GetFives();
        }

        if (turn % 4 != 2)
        {
            life.Fill(turn % 5 == 1 ? ["Treats"] : []);
        }

        life.Look();
        if (turn == 13)
        {
            life.ChangeBill("Power", 7015);
        }
    }

    private static void Day(Life life, int turn, DateOnly day)
    {
        switch (day.DayOfWeek)
        {
            case DayOfWeek.Friday when turn % 4 != 2:
                life.Fill();
                break;
            case DayOfWeek.Monday:
                Shop(life, turn, day);
                break;
            case DayOfWeek.Thursday when turn % 3 != 1:
                Count(life, turn, day);
                break;
            case DayOfWeek.Tuesday when turn % 4 == 3:
                // What was bought yesterday stays, as it is taken back tomorrow.
                Return(life, turn % 8 == 7 ? ["Food", "Bus"] : ["Bus"]);
                break;
            case DayOfWeek.Wednesday:
                Regret(life, day);
                break;
            case DayOfWeek.Saturday when turn % 2 == 0:
                // Now and then with a fee that nobody entered; at the next one it is gone, as the bank gave it back.
                life.Reconcile(4, turn % 10 == 6 ? -100 : 0, turn % 10 == 6 ? "odd" : null);
                break;
            case DayOfWeek.Saturday when turn % 6 is 3 or 5:
                life.TakeStatement(4, life.Book.Ledger.Has(ModelLedger.Buffer) > 5000 ? -290 : 0, isUndone: turn % 6 == 3);
                life.Look();
                break;
            case DayOfWeek.Sunday:
                Tidy(life, turn);
                break;
        }
    }

    // Money finds better places, and the account has what no payday brought.
    private static void Tidy(Life life, int turn)
    {
        long reserve = life.Book.Ledger.InItsPlace("Reserve");
        long buffer = life.Book.Ledger.Has(ModelLedger.Buffer);
        switch (turn % 8)
        {
            case 0 when reserve > 5000:
                life.Move("Reserve", "Clothes", 1250, isUndone: turn % 3 == 1);
                life.Enter("interest", "buffer", 135);
                break;
            case 1 when buffer > 5000:
                life.Enter("fee", "buffer", -290, isUndone: turn % 3 == 0);
                life.Move("buffer", "Odds", 1000);
                break;
            case 2 when reserve > 5000:
                life.Enter("payment", "Reserve", -1875);
                life.Enter("gift", "Clothes", 2000, isUndone: turn % 3 == 2);
                break;
            case 3 when reserve > 5000 && life.Book.Ledger.OwedOn("Blue card") > 20000:
                life.Move("Reserve", "Blue card", 1500);
                break;
            case 4 when life.Book.Ledger.Has(ModelLedger.Wallet("Food")) > 3000:
                life.Move("Food", "Reserve", 1000);
                break;
        }

        life.Look();
    }

    // One purchase that stays, and one that is undone two days later.
    private static void Shop(Life life, int turn, DateOnly day)
    {
        if (life.Book.Ledger.Has(ModelLedger.Wallet("Food")) > 4000)
        {
            life.Spend("Food", 1234 + (turn * 10), day.AddDays(-1));
        }

        if (turn % 3 == 0 && life.Book.Ledger.Has(ModelLedger.Wallet("Bus")) > 2000)
        {
            life.Spend("Bus", 1020, day);
        }

        foreach (string pot in (string[])["Coat", "Trip"])
        {
            if (life.Book.Ledger.InItsPlace(pot) == life.Book.Pot(pot).Amount)
            {
                life.Spend(pot, life.Book.Pot(pot).Amount);
            }
        }
    }

    private static void Return(Life life, string[] stays)
    {
        if (life.Book.Owed.Any(owed => !stays.Contains(owed.Pot)))
        {
            life.Return(stays);
        }
    }

    // A purchase is undone; then a count for a day on which it still stood.
    private static void Regret(Life life, DateOnly day)
    {
        if (life.Book.Purchases.LastOrDefault() is { Pot: "Bus", Undone: false } purchase && purchase.On == day.AddDays(-2))
        {
            life.Undo(purchase);
            life.Count(day.AddDays(-1), new() { ["Bus"] = life.Weeks.Proposal(life.Book.Pot("Bus"), day.AddDays(-1)).Expected });
            life.Look();
        }
    }

    // Now and then a week late, for the day on which the week ended; with something missing or found.
    private static void Count(Life life, int turn, DateOnly day)
    {
        DateOnly on = turn % 5 == 2 ? day.AddDays(-7) : day;
        var left = new Dictionary<string, long>();
        var odd = new Dictionary<string, long>();
        foreach (ModelPot pot in life.Book.Pots.Where(pot => pot.InWallet && !(life.Book.LastCount(pot.Name)?.On > on)))
        {
            long expected = life.Weeks.Proposal(pot, on).Expected;
            left[pot.Name] = expected / 3 / 5 * 5;
            if (pot.Name == "Food" && turn % 4 == 0 && expected > 5000)
            {
                odd[pot.Name] = turn % 8 == 0 ? 150 : -275;
                left[pot.Name] = turn % 8 == 0 ? left[pot.Name] : expected + 275;
            }
        }

        if (left.Count > 0)
        {
            life.Count(on, left, odd, turn % 6 == 0 && left.GetValueOrDefault("Food") > 0 ? new() { ["Food"] = "Odds" } : null);
        }
    }
}
