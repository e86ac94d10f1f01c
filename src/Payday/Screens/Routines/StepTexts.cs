namespace Payday.Screens.Routines;

/// <summary>What bills and minimums say alike.</summary>
internal static class StepTexts
{
    /// <summary>Of one that is ticked, whether it left the account already or does so on that day.</summary>
    public const string Paid = "Paid: with the closing of the payday the account here has it no more.";

    /// <summary>What Space does to one that is ticked.</summary>
    public const string NotPaid = "not paid";
}
