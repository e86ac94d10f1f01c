using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Files;
using Payday.Store.Fields;
using Payday.Store.Json;
using Payday.Texts;

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
        Result<byte[]> bytes = Bytes(shell, path, JsonInput.MaxBytes);
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
    /// <param name="most">The most bytes it may have.</param>
    /// <param name="then">What to do with the text.</param>
    public static Answer WithText(CommandShell shell, string path, int most, Func<string, Answer> then)
    {
        Result<byte[]> bytes = Bytes(shell, path, most);
        Result<string> text = bytes.Ok ? InputFile.Text(Named(path), bytes.Value) : Result.Refused<string>(bytes.Fault);
        return text.Ok ? then(text.Value) : Answer.Because(text.Fault);
    }

    /// <summary>An amount, zero or more.</summary>
    /// <param name="option">What it was given for.</param>
    /// <param name="text">The amount.</param>
    /// <param name="currency">Its currency.</param>
    /// <param name="style">How the household writes numbers; plain where there is none.</param>
    public static Result<Money> Amount(string option, string text, Currency currency, NumberStyle style = default)
    {
        Result<Money> amount = Money.Parse(text, currency, style);
        if (!amount.Ok)
        {
            return Result.Refused<Money>(new ArgumentFault.Of(option, amount.Fault));
        }

        return amount.Value.IsNegative
            ? Result.Refused<Money>(new ArgumentFault.BelowZero(option, text))
            : amount;
    }

    private static string Named(string path) => path == "-" ? "standard input" : path;

    /// <summary>The bytes of a file, or of standard input for <c>-</c>.</summary>
    public static Result<byte[]> Bytes(CommandShell shell, string path, int most) =>
        path == "-" ? InputFile.Bytes(shell.In, Named(path), most) : InputFile.Bytes(path, most);
}
