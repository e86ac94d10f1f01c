using System.Text;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Commands;

/// <summary>Reads the files and the amounts that commands are given.</summary>
internal static class CommandInput
{
    /// <summary>Reads a file with a JSON text, or standard input for <c>-</c>.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="path">The path as given.</param>
    /// <param name="read">Reads the outermost value.</param>
    /// <param name="then">What to do with it.</param>
    public static Answer WithJson<T>(CommandShell shell, string path, Func<JsonCursor, T> read, Func<T, Answer> then)
        where T : class => WithFile(shell, path, utf8 => JsonInput.Read(utf8, read), then);

    /// <summary>Reads a file, or standard input for <c>-</c>.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="path">The path as given.</param>
    /// <param name="read">Reads the bytes of the file.</param>
    /// <param name="then">What to do with what was read.</param>
    public static Answer WithFile<T>(CommandShell shell, string path, Func<ReadOnlyMemory<byte>, JsonReading<T>> read, Func<T, Answer> then)
        where T : class
    {
        Read<byte[]> bytes = Bytes(shell, path);
        if (!bytes.Ok)
        {
            return Answer.Because(bytes.Fault);
        }

        JsonReading<T> reading = read(bytes.Value);
        return reading.Ok
            ? then(reading.Value)
            : new Answer.Refused([.. reading.Faults.Select(fault => $"{Named(path)}: {fault}")]);
    }

    /// <summary>Reads a file of text, or standard input for <c>-</c>.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="path">The path as given.</param>
    /// <param name="then">What to do with the text.</param>
    public static Answer WithText(CommandShell shell, string path, Func<string, Answer> then)
    {
        Read<byte[]> bytes = Bytes(shell, path);
        if (!bytes.Ok)
        {
            return Answer.Because(bytes.Fault);
        }

        try
        {
            return then(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(bytes.Value));
        }
        catch (DecoderFallbackException)
        {
            return Answer.Because($"{Named(path)}: This is not a text in UTF-8; save it as UTF-8 and try again.");
        }
    }

    /// <summary>An amount, zero or more.</summary>
    /// <param name="option">What it was given for.</param>
    /// <param name="text">The amount.</param>
    /// <param name="currency">Its currency.</param>
    /// <param name="style">How the household writes numbers; plain where there is none.</param>
    public static Read<Money> Amount(string option, string text, Currency currency, NumberStyle style = default)
    {
        Read<Money> amount = Money.Parse(text, currency, style);
        if (!amount.Ok)
        {
            return Read.Refused<Money>($"{option}: {amount.Fault}");
        }

        return amount.Value.IsNegative
            ? Read.Refused<Money>($"{option}: {text} is below zero; write zero or more.")
            : amount;
    }

    private static string Named(string path) => path == "-" ? "standard input" : path;

    private static Read<byte[]> Bytes(CommandShell shell, string path)
    {
        try
        {
            if (path == "-")
            {
                return Read.Of(Encoding.UTF8.GetBytes(shell.In.ReadToEnd()));
            }

            if (Directory.Exists(path))
            {
                return Read.Refused<byte[]>($"{path} is a folder; name a file in it.");
            }

            return new FileInfo(path) is { Exists: true, Length: > JsonInput.MaxBytes }
                ? Read.Refused<byte[]>($"{path} is larger than 50 MB; this can't be the right file.")
                : Read.Of(File.ReadAllBytes(path));
        }
        catch (DecoderFallbackException)
        {
            return Read.Refused<byte[]>($"{Named(path)}: This is not a text in UTF-8; save it as UTF-8 and try again.");
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return Read.Refused<byte[]>($"There is no file {path}.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Read.Refused<byte[]>($"{path} can't be read: {fault.Message.Split('\n')[0]}");
        }
    }
}
