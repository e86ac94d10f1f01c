using Humanizer;
using Payday.Core.StatementTaking;
using Payday.Core.Undo;
using Payday.Screens.Asking;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Statements;

/// <summary>Taking statements back as a whole, after a question.</summary>
internal static class TakenBack
{
    /// <summary>Asks whether to take back the statements taken last.</summary>
    public static Way Question(BookSession session)
    {
        if (TakingUndo.Last(session.Book) is not { } last)
        {
            return new Way.Says("No statement was taken yet.");
        }

        int written = last.Lines.Count(line => line.Wrote is not null);
        return new Way.To(new TakeBackScreen(
            session,
            $"Take back the statement to {DateText.Weekday(last.To)}",
            [
                $"{DateText.Long(last.From)} to {DateText.Long(last.To)}: {"line".ToQuantity(last.Lines.Length)}, {(written == 0 ? "none" : written.ToString(System.Globalization.CultureInfo.InvariantCulture))} of them written down by it.",
                "All is as if it had never been taken: what it wrote is undone, and its lines are on their way again.",
                "The rules stay.",
            ],
            () => TakingUndo.InTheWay(session.Book, last, session.Today) as Obstacle,
            () => TakingUndo.Of(session.Book, last, session.Today),
            "The statement is taken back."));
    }
}
