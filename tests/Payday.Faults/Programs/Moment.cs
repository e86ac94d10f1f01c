using System.Diagnostics;
using Payday.Store.Folders;

namespace Payday.Faults.Programs;

/// <summary>The moment of a kill while one command runs.</summary>
/// <param name="folder">The store.</param>
/// <param name="whole">How long such a command takes.</param>
/// <param name="isOver">Whether it has come to its end.</param>
internal sealed class Moment(StoreFolder folder, TimeSpan whole, Func<bool> isOver)
{
    private static readonly TimeSpan MostWriting = TimeSpan.FromMilliseconds(8);

    /// <summary>Waits for it.</summary>
    public void Wait(Random random)
    {
        double part = random.NextDouble();
        long length = Length();
        switch (random.Next(3))
        {
            case 0:
                Spin(whole * (part * 1.2), isOver);
                break;
            case 1:
                Spin(whole * 3, () => isOver() || File.Exists(folder.Holder));
                Spin(whole * (part / 2), isOver);
                break;
            default:
                Spin(whole * 3, () => isOver() || Length() != length);
                Spin(MostWriting * (part * part), isOver);
                break;
        }
    }

    /// <summary>Waits to the tenth of a millisecond, which sleeping can't.</summary>
    public static void Spin(TimeSpan most, Func<bool> isOver)
    {
        for (long start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start) < most && !isOver();)
        {
            Thread.Yield();
        }
    }

    private long Length()
    {
        var file = new FileInfo(folder.Journal);
        return file.Exists ? file.Length : 0;
    }
}
