using NodaTime;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Filling the wallet: what waits to be filled today.</summary>
/// <param name="session">The book.</param>
internal sealed class FillsPart(BookSession session) : Part
{
    /// <inheritdoc/>
    public override string Name => "fill";

    /// <inheritdoc/>
    public override string Empty => "Nothing waits to be filled today.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions => [.. WalletFills.Waiting(session.Book, session.Today).Select(Of)];

    private Question Of(FillPart part)
    {
        string what = part.Moves == part.Amount
            ? $"{part.Amount.ToString(session.Style)}, {NoteText.Listed(part.Notes, part.Amount.Currency, session.Style)}"
            : $"{part.Moves.ToString(session.Style)} of {part.Amount.ToString(session.Style)}, as the rest was used at home before";
        return new Question(
            $"{part.Pot.Id.Text} {part.Key.Day:uuuu-MM-dd}",
            $"{part.Pot.Name}, week of {DateText.Weekday(part.Key.Day)}: {what}. Is it filled? yes proposed; or skip, or no.",
            answer => string.Equals(answer, "skip", StringComparison.OrdinalIgnoreCase) ? Mark(part, FillState.Skipped) : YesOrNo.Read(answer, true) switch
            {
                null => new Taken.Refused("Type yes, no or skip."),
                true => Mark(part, FillState.Done),
                _ => Taken.On,
            })
        {
            Under = Name,
            Heading = () => ["Fill the wallet."],
            Help = ["yes: it is filled for this week. skip: not this time, and the cash stays at home. no: it goes on waiting. payday fill --undo takes a mark back."],
        };
    }

    private Taken Mark(FillPart part, FillState state)
    {
        Result<Book> after = WalletFills.Mark(session.Book, part.Key, state, WalletFills.DoneOn(part.Key, session.Today));
        if (!after.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(after.Fault, session.Style));
        }

        session.Take(after.Value);
        return new Taken.Next($"{part.Pot.Name}: {(state == FillState.Done ? "filled" : "skipped")}.");
    }
}
