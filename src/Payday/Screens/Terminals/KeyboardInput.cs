using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;
using System.Text;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Terminals;

/// <summary>
/// Reads the keyboard, on a thread of the library: waits for something to read, where the library's own reader looks every
/// 20 ms, and passes on whole pieces only.
/// </summary>
/// <remarks>
/// The library's queue takes characters. A piece of several has one that no terminal can send in its place, and waits in a
/// queue of its own, so that pieces stay in order and nobody sees half of one.
/// </remarks>
internal sealed class KeyboardInput : AnsiInput
{
    /// <summary>Stands for the next whole piece. It is no character (Unicode 17, 23.7), and is never read from a terminal.</summary>
    public const char Piece = '\uFFFF';

    // How long leaving the program may have to wait for this thread. A sequence comes at once: what is held so long is none.
    private const int LookUpMilliseconds = 50;

    // An escape character alone is waited for less: what makes a key of it comes in the same packet, and whoever pressed Esc looks at the screen.
    private const int EscapeMilliseconds = 12;

    // A slow line may hold up a paste; what then came of it would be keys.
    private const int PasteMilliseconds = 3000;
    private const short Readable = 0x001;
    private const short Gone = 0x008 | 0x010 | 0x020;

    // Somebody who sends more than the screens can take waits, instead of filling the memory.
    private const int MostWaiting = 10_000;

    private readonly AutoResetEvent news = new(initialState: false);
    private readonly InputReader reader = new();
    private readonly Decoder utf8 = Encoding.UTF8.GetDecoder();
    private readonly byte[] bytes = new byte[4096];
    private readonly char[] characters = new char[4096];
    private readonly ConcurrentQueue<InputPiece> pieces = new();
    private long lastRead = Environment.TickCount64;
    private volatile bool isGone;
    private volatile bool isOver;
    private volatile ExceptionDispatchInfo? fault;

    /// <summary>Whether the terminal is gone.</summary>
    public bool IsGone => isGone;

    /// <summary>How many characters were read that nobody has taken yet.</summary>
    public Func<int> Waiting { private get; set; } = () => 0;

    /// <summary>The piece that the next <see cref="Piece"/> stands for.</summary>
    public InputPiece? Next() => pieces.TryDequeue(out InputPiece? piece) ? piece : null;

    /// <summary>A fault of this thread is thrown where it is seen.</summary>
    public void ThrowIfFaulty() => fault?.Throw();

    /// <summary>Waits until keys were read, the terminal was gone or somebody told of other news.</summary>
    /// <returns>Whether there is any before the time is over.</returns>
    public bool Wait(int milliseconds) => news.WaitOne(milliseconds);

    /// <summary>Ends a waiting.</summary>
    public void Tell() => news.Set();

    /// <summary>Reads no more.</summary>
    public void End() => isOver = true;

    /// <inheritdoc/>
    public override bool Peek()
    {
        var input = new PollFd { Events = Readable };
        while (!isOver)
        {
            if (isGone || fault is not null || Waiting() > MostWaiting)
            {
                Thread.Sleep(LookUpMilliseconds);
            }
            else if (poll(ref input, 1, reader.HoldsEscape ? EscapeMilliseconds : LookUpMilliseconds) > 0)
            {
                isGone = (input.Returned & Gone) != 0;
                if (!isGone)
                {
                    return true;
                }

                Tell();
            }
            else if (reader.IsHolding || (reader.IsPasting && Environment.TickCount64 - lastRead > PasteMilliseconds))
            {
                return true;
            }
        }

        return false;
    }

    /// <inheritdoc/>
    public override IEnumerable<char> Read()
    {
        foreach (char character in Pieces())
        {
            yield return character;
        }

        // Asked for more, the library has taken all there was.
        Tell();
    }

    // Nobody would hear of a fault on this thread.
    private List<char> Pieces()
    {
        try
        {
            var read = new List<char>();
            foreach (InputPiece piece in HasInput() ? reader.Take(Text()) : reader.IsPasting ? reader.EndPaste() : reader.Release())
            {
                if (piece is InputPiece.Typed typed)
                {
                    read.Add(typed.Value);
                }
                else
                {
                    pieces.Enqueue(piece);
                    read.Add(Piece);
                }
            }

            return read;
        }
#pragma warning disable CA1031 // It is thrown again where it is heard.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            fault = ExceptionDispatchInfo.Capture(thrown);
            return [];
        }
    }

    private static bool HasInput()
    {
        var input = new PollFd { Events = Readable };
        return poll(ref input, 1, 0) > 0;
    }

    private string Text()
    {
        nint count = read(0, bytes, (nuint)bytes.Length);
        if (count <= 0)
        {
            // EINTR and EAGAIN (4 and 11 on Linux) only mean another look, and nothing at all is a Ctrl+D that was typed before
            // the terminal was ours; of one that is gone, poll tells.
            isGone = count < 0 && Marshal.GetLastPInvokeError() is not (4 or 11);
            return "";
        }

        lastRead = Environment.TickCount64;
        return new string(characters, 0, utf8.GetChars(bytes, 0, (int)count, characters, 0, flush: false));
    }

    // POSIX.1-2017, poll() and read(); the descriptor 0 is the standard input.
    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int poll(ref PollFd descriptors, nuint count, int milliseconds);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint read(int descriptor, byte[] buffer, nuint count);

    [StructLayout(LayoutKind.Sequential)]
    private struct PollFd
    {
        public int Descriptor;
        public short Events;
        public short Returned;
    }
}
