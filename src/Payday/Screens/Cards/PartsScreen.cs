using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Cards;

/// <summary>A purchase over several pots: what each has of it, and one the rest.</summary>
internal sealed class PartsScreen : CursorScreen
{
    private readonly BookSession session;
    private readonly Money total;
    private readonly Action<ImmutableArray<SaidPart>> take;
    private readonly ImmutableArray<PotId?> pots;
    private readonly List<SaidPart> parts;

    /// <param name="session">The book.</param>
    /// <param name="title">What is split.</param>
    /// <param name="total">What was paid in all; below zero what came back.</param>
    /// <param name="parts">What was said so far, one at least.</param>
    /// <param name="take">Takes what was said, one part or more, once it adds up.</param>
    public PartsScreen(BookSession session, string title, Money total, ImmutableArray<SaidPart> parts, Action<ImmutableArray<SaidPart>> take)
    {
        this.session = session;
        this.total = total;
        this.take = take;
        pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
        this.parts = [.. parts];
        Title = title;
        if (parts.Length == 1)
        {
            Add();
        }
    }

    /// <inheritdoc/>
    public override string Title { get; }

    /// <inheritdoc/>
    protected override string Aside => $"{total.ToString(session.Style)} in all";

    /// <inheritdoc/>
    protected override int Count => parts.Count;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "pot", "Pick the pot of this part. A letter goes to the next one that begins with it, a digit types its amount.", () => new Way.To(Picks())),
        .. parts.Count < pots.Length ? [new Binding(Key.N.WithCtrl, "Ctrl+N", "another", "Add a part for another pot.", Another)] : Array.Empty<Binding>(),
        .. parts.Count > 1 ? [new Binding(Key.X.WithCtrl, "Ctrl+X", "leave out", "Take this part away: what it had is in the rest again.", LeaveOut)] : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        new(Key.CursorRight, "Right", "take it", "Take these parts, if they come to all that was paid.", Take),
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; it stays as it was before.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => parts[Cursor].Amount is null
        ? "It has the rest of what was paid, once the others have their amounts; or type its own."
        : "What this pot has of it; emptied, it has the rest.";

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (text.Any(char.IsLetter))
        {
            SaidPart here = parts[Cursor];
            parts[Cursor] = here with { PotId = pots[NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], pots.IndexOf(here.PotId), text)] };
            return null;
        }

        return new CellEdit($"What {WeekText.PotName(session.Book, parts[Cursor].PotId)} has of it", text, Amount);
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines table = new TextTable(
            [Report.Names("pot"), Report.Amounts("amount"), new("")],
            [.. parts.Select(part => ImmutableArray.Create(
                WeekText.PotName(session.Book, part.PotId),
                (part.Amount ?? Rest)?.ToString(session.Style) ?? "-",
                part.Amount is null ? "the rest" : ""))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (table.Header, table.Rows);
    }

    // Of several without an amount nobody knows which has what.
    private Money? Rest => parts.Count(part => part.Amount is null) == 1
        ? total - Money.Sum(parts.Select(part => part.Amount).OfType<Money>(), total.Currency)
        : null;

    private string? Amount(string text)
    {
        if (text.Trim().Length == 0)
        {
            parts[Cursor] = parts[Cursor] with { Amount = null };
            return null;
        }

        Result<Money> read = Money.ParseSum(text, total.Currency, session.Style);
        if (!read.Ok)
        {
            return FaultTexts.Of(read.Fault, session.Style);
        }

        // All of what came back is below zero, with a minus or without.
        Money amount = read.Value;
        parts[Cursor] = parts[Cursor] with { Amount = total.IsNegative && amount.IsPositive ? -amount : amount };
        return null;
    }

    private void Add() => parts.Add(new SaidPart(pots.Except(parts.Select(part => part.PotId)).First(), null));

    private Way Another()
    {
        Add();
        Cursor = parts.Count - 1;
        return Way.Stay;
    }

    private Way LeaveOut()
    {
        parts.RemoveAt(Cursor);
        return Way.Stay;
    }

    private PickScreen<PotId?> Picks()
    {
        int at = Cursor;
        return new PickScreen<PotId?>("Which pot", PotPicks.Of(session), parts[at].PotId, pot =>
        {
            parts[at] = parts[at] with { PotId = pot };
            return Way.Back;
        });
    }

    private Way Take()
    {
        Result<ImmutableArray<PurchasePart>> all = PurchaseParts.Of([.. parts.Select(part => (part.PotId, part.Amount))], total);
        if (!all.Ok)
        {
            Message = FaultTexts.Of(all.Fault, session.Style);
            return Way.Stay;
        }

        take([.. parts]);
        return Way.Back;
    }
}
