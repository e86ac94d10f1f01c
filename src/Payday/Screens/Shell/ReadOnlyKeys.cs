namespace Payday.Screens.Shell;

/// <summary>Keys that change something, on screens that may only look.</summary>
internal static class ReadOnlyKeys
{
    /// <summary>How the help begins of a key that waits.</summary>
    public const string Waits = "Not while only looking: ";

    private const string Why = "Nothing can be changed while another Payday has it open; once that has ended, Ctrl+R on home opens it here.";

    /// <summary>A key that changes something: where there is only a look, it says why not, and is not on the bottom line.</summary>
    public static Binding Changing(this BookSession session, Screen on, Binding binding) => session.IsReadOnly
        ? binding with
        {
            Label = "",
            Help = Waits + char.ToLowerInvariant(binding.Help[0]) + binding.Help[1..],
            Do = () =>
            {
                on.Message = Why;
                return Way.Stay;
            },
        }
        : binding;
}
