namespace Payday.Reports;

/// <summary>What leads to what waits between paydays, in brackets with a blank before; empty for nothing.</summary>
/// <param name="Count">To the count.</param>
/// <param name="Fill">To the fills.</param>
/// <param name="Return">To the cash return.</param>
/// <param name="Bank">To the reconciliation.</param>
/// <param name="Extra">To the payments that the person makes.</param>
/// <param name="Difference">To the differences of counts.</param>
/// <param name="Slip">To the last slip.</param>
internal sealed record NeedWays(string Count, string Fill, string Return, string Bank, string Extra, string Difference, string Slip)
{
    /// <summary>Keys of home.</summary>
    public static NeedWays Keys { get; } = new(" (w)", " (f)", " (r)", " (@)", " (q)", " (w, then g)", " (v)");

    /// <summary>Commands.</summary>
    public static NeedWays Commands { get; } = new(" (payday count)", " (payday fill)", " (payday return)", " (payday reconcile)", " (payday due NAME --extra yes)", " (payday difference)", " (payday slip)");

    /// <summary>Nothing, where there is only a look.</summary>
    public static NeedWays None { get; } = new("", "", "", "", "", "", "");
}
