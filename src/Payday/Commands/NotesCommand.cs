using System.CommandLine;
using System.Text.Json;
using Humanizer;
using Payday.Calculators;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Json;
using Payday.Reports;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday notes</c>: the note plan as a calculator.</summary>
internal static class NotesCommand
{
    public static Command Build(CommandShell shell)
    {
        var file = new Argument<string>("FILE") { Description = "Notes and pots as JSON, - for standard input." };
        var command = new PaydayCommand(
            "notes",
            "Choose the notes for pots: least withdrawn given the notes on hand, then fewest notes.",
            "payday notes pots.json") { file };
        return Invocation.Does(command, shell, call => CommandInput.WithJson(
            shell, call.Parsed.GetRequiredValue(file), NotesFile.Read, Plan));
    }

    private static Answer Plan(NoteRequest request)
    {
        // What no note makes is kept back, so all of it together has to fit, whatever the notes come to.
        _ = Money.Sum(request.Parts.Select(part => part.Amount), request.Parts.IsEmpty ? request.Notes[0].Currency : request.Parts[0].Amount.Currency);
        NotePlan plan = NotePlanner.Plan(request);
        NumberStyle style = NumberStyle.CommaPoint;
        string[] refusals = [.. Refusals(request, plan, style)];
        if (refusals.Length > 0)
        {
            return new Answer.Refused(refusals);
        }

        var result = new NotesResult(
            [.. plan.Parts.Select(part => new NotesPotResult(part.Part.Name, NoteText.Counts(part.Notes, plan.Currency), part.KeptBack.ToPlain()))],
            NoteText.Counts(plan.Withdraw, plan.Currency),
            NoteText.Counts(plan.Return, plan.Currency),
            plan.WithdrawTotal.ToPlain(),
            plan.NoteCount,
            plan.Proven,
            [.. plan.Faults.Select(fault => NoteTexts.Of(fault, style))]);
        return new Answer.Done(
            [
                .. plan.Parts.SelectMany(part => Report.Prose($"{part.Part.Name}: {NoteText.Listed(part.Notes, plan.Currency, style)}{Kept(part, style)}")),
                .. Report.Prose($"Withdraw {plan.WithdrawTotal.ToString(style)}: {NoteText.Listed(plan.Withdraw, plan.Currency, style)}"),
                $"{"note".ToQuantity(plan.NoteCount)} in all, {(plan.Proven ? "proven to be the fewest" : "not proven to be the fewest")}.",
                .. plan.Return.IsEmpty ? [] : Report.Prose($"Not needed of the notes on hand: {NoteText.Listed(plan.Return, plan.Currency, style)}"),
                .. result.Unmet.SelectMany(unmet => Report.Prose("! " + unmet)),
            ],
            JsonSerializer.Serialize(result, ResultJson.Readable.NotesResult));
    }

    private static IEnumerable<string> Refusals(NoteRequest request, NotePlan plan, NumberStyle style)
    {
        if (plan.LimitShort.IsPositive)
        {
            yield return $"The machine's limit is {plan.LimitShort.ToString(style)} too low for what the pots need; raise it, ask a teller, or lower the amounts.";
            yield break;
        }

        // Where a note at home would do and another pot got it, the plan keeps the amount back.
        foreach (PartNotes part in plan.Parts.Where(part => part.Amount.IsPositive && !(request.SmallestFor(part.Part) <= part.Amount)))
        {
            Money smallest = request.SmallestFor(part.Part with { Wishes = NoteWishes.None })!.Value;
            string help = smallest <= part.Amount ? $"raise its top note to {smallest.ToString(style)}" : $"raise the amount to {smallest.ToString(style)}";
            yield return $"No note makes any part of {part.Part.Name}'s {part.Amount.ToString(style)}; add smaller notes, or {help}.";
        }
    }

    private static string Kept(PartNotes part, NumberStyle style) =>
        part.KeptBack.IsZero ? "" : $"  ({part.KeptBack.ToString(style)} not in notes)";
}
