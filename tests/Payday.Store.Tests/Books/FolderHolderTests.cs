using NodaTime;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

public class FolderHolderTests
{
    private static readonly FolderHolder Known = new(4711, new LocalDateTime(2026, 3, 2, 8, 15));

    [Fact]
    public void ToString_OfAKnownOne_IsReadAgain()
    {
        Assert.Equal("process 4711, since 2026-03-02 08:15", Known.ToString());
        Assert.Equal(Known, FolderHolder.Of(Known.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("by whom is not known")]
    [InlineData("process 4711")]
    [InlineData("process -1, since 2026-03-02 08:15")]
    [InlineData("process 99999999999, since 2026-03-02 08:15")]
    [InlineData("process 4711, since yesterday")]
    [InlineData("process 4711, since 2026-03-02 08:15\u001b[31m")]
    [InlineData("\0\0\0\0\0\0\0\0")]
    public void Of_OtherWords_IsUnknown(string words) => Assert.Equal(FolderHolder.Unknown, FolderHolder.Of(words));

    [Fact]
    public void Look_WhileItIsOpen_SaysByWhomAndSinceWhen()
    {
        using var scratch = new ScratchFolder();
        LocalDateTime before = Now();
        using BookStore store = Samples.Begun(scratch.Data);

        FolderHolder holder = BookStore.Peek(scratch.Data).Holder;

        Assert.Equal(Environment.ProcessId, holder.Process);
        Assert.InRange(holder.Since!.Value, before, Now());
    }

    [Fact]
    public void Look_HolderDamaged_StillSeesTheBook()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        File.WriteAllBytes(scratch.Data.Holder, [.. Enumerable.Range(0, 300).Select(i => (byte)(i % 256))]);

        BookPeek look = BookStore.Peek(scratch.Data);

        Assert.Equal(FolderHolder.Unknown, look.Holder);
        Assert.NotNull(look.Book);
    }

    // The system's wall clock to the minute, as the holder has it.
    private static LocalDateTime Now()
    {
        DateTime now = DateTime.Now;
        return new LocalDateTime(now.Year, now.Month, now.Day, now.Hour, now.Minute);
    }
}
