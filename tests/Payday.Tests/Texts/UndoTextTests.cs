using System.Runtime.CompilerServices;
using Payday.Core.Undo;
using Payday.Texts;

namespace Payday.Tests.Texts;

/// <summary>What can be in the way can be taken back itself: each sort of entry has a way on the screen and a command.</summary>
public class UndoTextTests
{
    public static TheoryData<string> Entries => [.. typeof(BookEntry).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(BookEntry))).Select(type => type.FullName!)];

    [Theory]
    [MemberData(nameof(Entries))]
    public void Entry_OfAnySort_HasAWayOnScreenAndByCommand(string name)
    {
        var entry = (BookEntry)RuntimeHelpers.GetUninitializedObject(typeof(BookEntry).Assembly.GetType(name)!);
        Assert.StartsWith("On home: ", UndoTexts.Keys(entry), StringComparison.Ordinal);
        Assert.StartsWith("payday ", UndoTexts.Command(entry), StringComparison.Ordinal);
    }
}
