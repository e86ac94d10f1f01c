using NodaTime;
using Payday.Core.Households;
using Payday.Screens.Looking;
using Payday.Screens.Shell;
using Payday.Store;

namespace Payday.Commands;

/// <summary>A data folder that another process has open, looked at until it is free.</summary>
internal sealed class LookFolder(StoreFolder folder, LocalDate today) : ILookDoor, IDisposable
{
    private BookStore? held;

    /// <summary>Looks at a folder that somebody has, or null where no household is stored in it yet.</summary>
    public static Seen? First(StoreFolder folder)
    {
        (Book? book, string notice) = BookStore.Look(folder);
        return book is null ? null : new Seen(book, Holder(notice));
    }

    /// <inheritdoc/>
    public Seen Look()
    {
        // Whether a folder is free is only sure once it is taken: its last holder may have been killed.
        try
        {
            held ??= BookStore.Open(folder);
            return new Seen(held.Load() ?? throw Gone(), null);
        }
        catch (StoreException fault) when (fault.IsTaken)
        {
            return First(folder) ?? throw Gone();
        }
        catch
        {
            GiveBack();
            throw;
        }
    }

    /// <inheritdoc/>
    public BookSession Open() => new(held!, held!.Load() ?? throw Gone(), today);

    /// <inheritdoc/>
    public void GiveBack()
    {
        held?.Dispose();
        held = null;
    }

    /// <inheritdoc/>
    public void Dispose() => GiveBack();

    // The store's sentence names the whole path, which has no room on a line of every screen; who has it stands in brackets.
    private static string Holder(string notice)
    {
        const string Before = " open (";
        int from = notice.LastIndexOf(Before, StringComparison.Ordinal) + Before.Length;
        int to = from < Before.Length ? -1 : notice.IndexOf(')', from);
        string holder = to < 0 ? "" : notice[from..to];
        return holder.StartsWith("process ", StringComparison.Ordinal) ? holder.Replace(", since", " since", StringComparison.Ordinal) : "another Payday";
    }

    private StoreException Gone() => new($"There is no household in {folder.Path} any more.");
}
