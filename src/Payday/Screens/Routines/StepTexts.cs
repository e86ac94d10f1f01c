namespace Payday.Screens.Routines;

/// <summary>What bills and minimums say alike.</summary>
internal static class StepTexts
{
    /// <summary>Of one that is ticked, whether it left the account already or does so on that day.</summary>
    public const string Paid = "Paid: closing the payday counts it as gone from the account.";

    /// <summary>Of one that is ticked without anybody having said so.</summary>
    public const string TakenAsPaid = "Its day is before this payday, so it is taken as paid: Space says that it isn't.";

    /// <summary>What Space does to one that is ticked.</summary>
    public const string NotPaid = "not paid";
}
