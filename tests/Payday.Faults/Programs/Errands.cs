using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Store.Backups;
using Payday.Store.Fields;
using Payday.Store.HouseholdFiles;

namespace Payday.Faults.Programs;

/// <summary>The commands that would change a book as it stands, so that none is refused.</summary>
internal sealed class Errands(Random random, Scratch scratch)
{
    private int number;

    /// <summary>One of them.</summary>
    /// <param name="book">The book; null where there is none yet.</param>
    public Errand Next(Book? book)
    {
        number++;
        if (book is null)
        {
            return new Errand(["import", Life.Demo()], " is stored in ", now => now.Household.Pots.Length > 0);
        }

        LocalDate today = LocalDate.FromDateTime(DateTime.Now);
        Errand[] all = [Spend(book, today), .. Close(book), .. Fill(book), .. Count(book, today), .. Return(book, today), .. TakeBack(book, today), Import(book), Backup()];
        return all[random.Next(all.Length)];
    }

    private Errand Spend(Book book, LocalDate today)
    {
        string what = $"errand {number}";
        string pot = Purchasing.Enter(book, new PurchaseEntry(today, new PotId("food"), Money.FromMinorUnits(123, book.Household.Currency), what)).Ok ? "Food" : "buffer";
        return new Errand(["spend", pot, "1.23", "--what", what], "Stored.", now => now.Weeks.Purchases.Any(purchase => purchase.What == what));
    }

    private IEnumerable<Errand> Close(Book book)
    {
        if (Routine.Begun(book, null) is { Ok: true } draft && Routine.Plan(book, draft.Value) is { Ok: true } plan && Closing.Of(plan.Value).Ok)
        {
            LocalDate payday = plan.Value.Period.First;
            yield return new Errand(["run", "--accept"], "Closed and stored.", now => now.LastClosed?.Payday == payday);
            yield return new Errand(["run", "--one-off", $"Odd job {number}=61.30", "--accept"], "Closed and stored.", now => now.LastClosed?.Payday == payday);
        }
    }

    private static IEnumerable<Errand> Fill(Book book)
    {
        if (book.LastClosed?.Payday is { } day && WalletFills.Waiting(book, day) is { IsEmpty: false } && WalletFills.FillAll(book, day).Ok)
        {
            yield return new Errand(["fill", "--done", "--on", Iso(day)], " done", now => WalletFills.Waiting(now, day).IsEmpty);
        }
    }

    private static IEnumerable<Errand> Count(Book book, LocalDate today)
    {
        CountPlan plan = CountPlan.Of(book, new CountDraft(today));
        CountRow? row = plan.Rows.FirstOrDefault(row => row.Expected.IsPositive);
        if (row is not null && CountPlan.Of(book, plan.Draft.With(row.Pot.Id, new CountEntry(Money.Zero(book.Household.Currency)) { Then = CountThen.Stays })).Confirm().Ok)
        {
            int counts = book.Weeks.Counts.Count;
            yield return new Errand(["count", row.Pot.Name + "=0", "--move", row.Pot.Name + "=stays", "--on", Iso(today)], "Counted and stored.", now => now.Weeks.Counts.Count == counts + 1);
        }
    }

    private static IEnumerable<Errand> Return(Book book, LocalDate today)
    {
        ReturnPlan plan = ReturnPlan.Of(book, ReturnDraft.AsPlanned);
        if (plan.Total.IsPositive && plan.Confirm(today).Ok)
        {
            int returns = book.Weeks.Returns.Length;
            yield return new Errand(["return", "--confirm"], "Returned and stored.", now => now.Weeks.Returns.Length == returns + 1);
        }
    }

    private static IEnumerable<Errand> TakeBack(Book book, LocalDate today)
    {
        CardPurchase? last = book.Weeks.Purchases.LastOrDefault(purchase => !purchase.Undone);
        if (last is not null && Purchasing.Undo(book, last.Number, today).Ok)
        {
            string name = last.Number.ToString(CultureInfo.InvariantCulture);
            yield return new Errand(["spend", "--undo", name], "Taken back.", now => now.Weeks.Purchases.Single(purchase => purchase.Number == last.Number).Undone);
        }
    }

    private Errand Import(Book book)
    {
        string name = $"Household {number}";
        string file = Path.Combine(scratch.Root, "household.json");
        File.WriteAllText(file, HouseholdFile.Write(book.Household with { Name = name }));
        return new Errand(["import", file], " is changed in ", now => now.Household.Name == name);
    }

    private Errand Backup() => new(["backup"], "read it again", _ => BackupFiles.List(scratch.Folder.Backups) is [var newest, ..] && BackupFiles.TryRead(newest.Path) is not null) { Changes = 0 };

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
