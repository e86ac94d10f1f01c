using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Cash;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Forms;

/// <summary>What was entered of one kind so far, the latest first; one more, or one undone.</summary>
/// <typeparam name="T">A record of the book, numbered from 1 in the order in which it was entered.</typeparam>
/// <param name="session">The book.</param>
internal abstract class EnteredScreen<T>(BookSession session) : CursorScreen
    where T : class
{
    /// <summary>The book.</summary>
    protected BookSession Session => session;

    /// <summary>All of them, undone ones too, in the order in which they were entered.</summary>
    protected abstract ImmutableArray<T> All { get; }

    /// <summary>What the key for one more says, and the form it leads to.</summary>
    protected abstract (string Does, string Help, Func<Screen> Form) More { get; }

    /// <summary>What one is called before its number.</summary>
    protected abstract string Noun { get; }

    /// <summary>The columns after number and date.</summary>
    protected abstract ImmutableArray<TextColumn> Columns { get; }

    /// <inheritdoc/>
    protected sealed override int Count => All.Length;

    /// <inheritdoc/>
    protected sealed override IReadOnlyList<Binding> Keys =>
    [
        session.Changing(this, Letters.Add.Does(More.Does, More.Help, () => new Way.To(More.Form()))),
        .. Here is { } one && !Of(one).Undone
            ? [session.Changing(this, Letters.Undo.Does("undo", $"Undo this {Noun}, after a question: all is as if it had not been.", () => new Way.To(TakeBack(one))))]
            : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected sealed override string Detail => Here is { } one && Of(one) is var facts
        ? CleanText.OneLine($"{DateText.Long(facts.Date)}: {facts.Text}.{(facts.Undone ? " Undone." : facts.Notes is { } notes ? $" {NoteText.Listed(notes, session.Book.Household.Currency, session.Style)}." : "")}")
        : "";

    /// <summary>What is said of one, wherever it is.</summary>
    protected abstract EnteredFacts Of(T one);

    /// <summary>Its cells after number and date.</summary>
    protected abstract ImmutableArray<string> Cells(T one);

    /// <summary>The question whether to undo it.</summary>
    protected abstract TakeBackScreen TakeBack(T one);

    /// <inheritdoc/>
    protected sealed override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new("", Align.Right), new("date"), .. Columns],
            [.. Enumerable.Range(0, Count).Select(At).Select(one => ImmutableArray.Create([Of(one).Number.ToString(CultureInfo.InvariantCulture), DateText.Day(Of(one).Date), .. Cells(one)]))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected sealed override (char Sign, Ink Ink) Mark(int row) => Of(At(row)).Undone ? ('x', Ink.Quiet) : (' ', Ink.Plain);

    private T? Here => Count == 0 ? null : At(Math.Clamp(Cursor, 0, Count - 1));

    private T At(int row) => All[Count - 1 - row];
}

/// <summary>What a list says of a record that was entered.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Date">Its day.</param>
/// <param name="Text">All of it in one line.</param>
/// <param name="Notes">The notes, where it is cash and they are known.</param>
/// <param name="Undone">Whether it was undone.</param>
internal readonly record struct EnteredFacts(long Number, LocalDate Date, string Text, Notes? Notes, bool Undone);
