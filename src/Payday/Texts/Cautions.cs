using Payday.Text;

namespace Payday.Texts;

/// <summary>The cautions that a money program owes its user, each in one place.</summary>
internal static class Cautions
{
    private const int Width = 80;

    /// <summary>Whom to talk to where a bill can't be paid.</summary>
    public const string Talk = "Talk to whoever sent the bill before it is due, or to a non-profit debt adviser.";

    /// <summary>What the figures are, and who decides.</summary>
    public const string Advice = "Arithmetic, not financial advice: the lender's statement, the bank's terms and local rules decide.";

    /// <summary>Where cash is planned and no paper that says it follows.</summary>
    public const string Cash = "Cash at home may be uninsured.";

    /// <summary>Where an overdraft is spoken of.</summary>
    public const string Overdraft = "What an overdraft costs and how far it may go, the bank's terms decide.";

    /// <summary>Where something can't be paid.</summary>
    public static IReadOnlyList<string> CannotPay { get; } =
    [
        "  " + Talk,
        "  This payday can be saved, but not closed until everything due is covered.",
    ];

    /// <summary>Under a routine.</summary>
    public static IReadOnlyList<string> Routine { get; } =
        [.. TextWrap.Lines(Advice, Width)];
}
