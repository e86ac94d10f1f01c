using Payday.Core.Outlooks;

namespace Payday.Texts;

/// <summary>What is said of something that can't be tried.</summary>
internal static class OutlookTexts
{
    public static string Of(OutlookFault fault) => fault switch
    {
        OutlookFault.NoPair => "Write a bill or an income source and what it would come to, like Rent=1700.",
        OutlookFault.NoSuchName { Known.IsEmpty: true } none => $"There is no bill or income source '{none.Name}'; there are none yet.",
        OutlookFault.NoSuchName none => $"There is no bill or income source '{none.Name}'; there is {string.Join(", ", none.Known)}.",
        OutlookFault.TwoOfThatName two => $"More than one bill or income source is called {two.Name}; give one of them another name first.",
        OutlookFault.BelowZero below => $"What {below.Name} would come to is below zero; write zero or more.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
