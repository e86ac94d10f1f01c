using System.Globalization;
using System.Text;

namespace Payday.Tests.Commands;

/// <summary>A month of the demo household with its paydays closed, and what a bank of our own invention shows of it.</summary>
internal static class MarchStatement
{
    private static readonly (string Day, string Party, decimal Amount)[] Lines =
    [
        ("2026-03-06", "Oakline Joinery payroll", 2287.64m),
        ("2026-03-06", "Cash, branch 12", -750.00m),
        ("2026-03-09", "Dental plan Brightside", -246.46m),
        ("2026-03-10", "After-school club Fernhollow", -58.00m),
        ("2026-03-10", "Northline phones", -74.00m),
        ("2026-03-12", "Inhaler refill, Hill pharmacy", -36.80m),
        ("2026-03-13", "Sofa card payment", -36.92m),
        ("2026-03-14", "Greenleaf grocer", -23.40m),
        ("2026-03-16", "Fiddle lessons M. Arden", -45.00m),
        ("2026-03-17", "After-school club Fernhollow", -58.00m),
        ("2026-03-18", "Car loan instalment", -214.60m),
        ("2026-03-20", "Oakline Joinery payroll", 2287.64m),
        ("2026-03-20", "Cash, branch 12", -520.00m),
        ("2026-03-23", "Electricity Valley Power", -118.40m),
        ("2026-03-23", "Dental plan Brightside", -293.54m),
        ("2026-03-23", "Sofa card payment", -502.64m),
        ("2026-03-24", "After-school club Fernhollow", -58.00m),
        ("2026-03-25", "School kitchen district 4", 1418.27m),
        ("2026-03-26", "Cash, branch 12", -525.00m),
        ("2026-03-27", "Sofa card payment", -223.76m),
        ("2026-03-28", "Quillby garden", -19.99m),
        ("2026-03-31", "Fernhollow internet", -62.99m),
        ("2026-03-31", "Storage locker 17", -48.00m),
        ("2026-03-31", "Account fee", -4.50m),
    ];

    /// <summary>The demo household on 1 April, its three paydays of March closed.</summary>
    public static TestShell Lived()
    {
        TestShell shell = TestShell.WithDemo();
        foreach ((int month, int day) in new[] { (3, 6), (3, 20), (3, 25) })
        {
            shell.Today = new NodaTime.LocalDate(2026, month, day);
            shell.Run("run", "--accept").Fine();
        }

        shell.Today = new NodaTime.LocalDate(2026, 4, 1);
        return shell;
    }

    /// <summary>The lines of some days as CSV with a running balance.</summary>
    public static string Csv(string from = "2026-03-01", string to = "2026-03-31", string account = "")
    {
        decimal balance = 3318.37m;
        var text = new StringBuilder(account.Length > 0 ? $"Account;{account};;\n" : "").Append("Date;Party;Amount;Balance\n");
        foreach ((string day, string party, decimal amount) in Lines)
        {
            balance += amount;
            if (string.CompareOrdinal(day, from) >= 0 && string.CompareOrdinal(day, to) <= 0)
            {
                text.Append(CultureInfo.InvariantCulture, $"{day};{party};{amount};{balance}\n");
            }
        }

        return text.ToString();
    }
}
