using Payday.Core.Books;
using Payday.Core.Cash;

namespace Payday.Core.Tests.Lives;

/// <summary>Notes that a bank might give in the place of those on a slip.</summary>
internal static class OtherNotes
{
    private static readonly long[] Values = [5000, 2000, 1000, 500];

    /// <summary>Mostly worth the same; sometimes more or less. Null where there is no slip that asks for something, or other notes were given for it before.</summary>
    public static Notes? Of(Book book, Random chance)
    {
        if (book.LastClosed is not { Withdraw.IsEmpty: false } closed || book.Weeks.ReceivedOn(closed.Payday) is not null)
        {
            return null;
        }

        long left = closed.Withdraw.Sum(note => note.Key * note.Value) + (chance.Next(4) == 0 ? chance.Next(-12, 13) * 500 : 0);
        Notes got = Notes.None;
        while (left >= Values[^1])
        {
            long value = Values[chance.Next(Values.Length)];
            int count = (int)Math.Min(left / value, 1 + chance.Next(6));
            got = got.With(value, got[value] + count);
            left -= value * count;
        }

        return got == closed.Withdraw ? null : got;
    }
}
