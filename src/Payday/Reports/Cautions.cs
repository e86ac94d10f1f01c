namespace Payday.Reports;

/// <summary>The cautions that a money program owes its user, each in one place.</summary>
internal static class Cautions
{
    /// <summary>Where something can't be paid.</summary>
    public static IReadOnlyList<string> CannotPay { get; } =
    [
        "  Talk to whoever sent the bill before it is due, or to a non-profit debt adviser.",
        "  This payday can be saved, but not closed until everything due is covered.",
    ];

    /// <summary>Under a routine.</summary>
    public static IReadOnlyList<string> Routine { get; } =
    [
        "Arithmetic, not financial advice: the lender's statement, the bank's terms and",
        "local rules decide.",
    ];

    /// <summary>Where cash is planned and no paper that says it follows.</summary>
    public static string Cash => "Cash at home may be uninsured.";
}
