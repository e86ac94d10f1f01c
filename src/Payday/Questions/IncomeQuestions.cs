using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Routines;
using Payday.Screens.Shell;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Step 1: what came in.</summary>
internal sealed class IncomeQuestions(RoutineWork work) : StepQuestions(work)
{
    private readonly IncomeView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Income;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening => [view.Note.Text];

    /// <inheritdoc/>
    public override IEnumerable<Question> All
    {
        get
        {
            // The rows are those of the view, in its order: the lines, then the overdraft and the buffer where they are there.
            var rows = new Queue<StepRow>(view.Rows);
            foreach (IncomeLine line in Plan.Income.Lines)
            {
                yield return Of(line, rows.Dequeue());
            }

            yield return Other();
            if (!Plan.Income.Overdraft.Owed.IsZero)
            {
                yield return Of(Plan.Income.Overdraft, rows.Dequeue());
            }

            if (rows.Count > 0)
            {
                yield return Of(Plan.Income.Buffer, rows.Dequeue());
            }
        }
    }

    private Question Of(IncomeLine line, StepRow row)
    {
        string id = line.SourceId is { } source ? $"source {source.Text}" : $"once {line.Name}";
        string text = line.SourceId is null ? $"{line.Name}: {Shown(line.Amount)}, a one-off."
            : line.Changed ? $"{line.Name}: {Shown(line.Amount)} as you said, {Shown(line.Expected)} expected."
            : $"{line.Name}: {Shown(line.Expected)} expected.";
        Question question = Amount(id, text + " How much came in?", row, () => $"{line.Name}: {Shown(Now(line)?.Amount ?? Money.Zero(line.Amount.Currency))}.");
        return question with { Words = view.Words, Help = [.. question.Help, .. line.SourceId is null ? ["0 takes it off the list."] : Array.Empty<string>()] };
    }

    private IncomeLine? Now(IncomeLine line) => Plan.Income.Lines.FirstOrDefault(one => one.SourceId == line.SourceId && one.Name == line.Name);

    private Question Other() => new("anything else", "Did anything else come in? Nothing proposed; else its name and amount, like Gift=50.", answer =>
    {
        if (answer.Length == 0 || IsWord(answer, "no"))
        {
            return Taken.On;
        }

        var add = (Way.Edit)view.Keys[0].Do();
        return add.Cell.Accept(answer) is { } fault ? new Taken.Refused(fault) : new Taken.Again($"{Shown(Plan.Income.CameIn)} came in, all together.");
    })
    {
        Help = ["Income that no source pays is typed as its name, an equals sign and the amount; 0 takes it off the list."],
        Words = view.Words,
    };

    private Question Of(OverdraftPayoff overdraft, StepRow row)
    {
        Question question = Amount(
            "overdraft",
            $"The overdraft is {Shown(overdraft.Owed)}: {Shown(overdraft.Amount)} {(overdraft.Changed ? "as you said" : "proposed")} pays it off. How much?",
            row,
            () => $"{Shown(Plan.Income.Overdraft.Amount)} pays off the overdraft, {Shown(Plan.Income.Overdraft.Rest)} of it is left.");
        return question with { Help = [.. question.Help, Cautions.Overdraft], Words = view.Words };
    }

    private Question Of(BufferHelp buffer, StepRow row)
    {
        string lacks = buffer.Short.IsPositive ? $"{Shown(buffer.Short)} is missing today." : "Nothing is missing today.";
        Question question = Amount(
            "buffer",
            $"From the buffer, which has {Shown(buffer.Has)}: {Shown(buffer.Amount)} {(buffer.Changed ? "as you said" : "proposed")}. {lacks} How much?",
            row,
            () => $"The buffer gives {Shown(Plan.Income.Buffer.Amount)} and keeps {Shown(Plan.Income.Buffer.Has - Plan.Income.Buffer.Amount)}.");
        return question with
        {
            Take = answer => answer.Length == 0 && Plan.Income.Buffer.IsAsked ? new Taken.Refused("What the buffer keeps isn't set: say what it gives; 0 for nothing.") : question.Take(answer),
            Help = [.. question.Help, buffer.Keeps is { } keeps ? $"It helps by itself down to {Shown(keeps)}." : "What it keeps isn't set, so it gives only what you say."],
            Words = view.Words,
        };
    }
}
