using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Humanizer;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Backups;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Restores;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday restore</c>: what there is to go back to, what that would change, and going back.</summary>
internal static class RestoreCommand
{
    public static Command Build(CommandShell shell)
    {
        var choice = new Argument<string?>("CHOICE") { Description = "A backup's file, a journal kept aside, or journal, database or snapshot for what is there now.", Arity = ArgumentArity.ZeroOrOne };
        var accept = new Option<bool>("--accept") { Description = "Do it. What is there now is kept aside." };
        var command = new PaydayCommand(
            "restore",
            "List what the data can be put back to; with a CHOICE show what would change, and with --accept do it.",
            "payday restore database") { choice, accept };
        return Invocation.Does(command, shell, call => (call.Parsed.GetValue(choice), call.Parsed.GetValue(accept)) switch
        {
            _ when !call.Folder.HasBook && call.Parsed.GetValue(choice) is null => call.NoHousehold(),
            ("", _) => new Answer.WrongUse("CHOICE is empty; name a file, or leave it out."),
            (null, true) => new Answer.WrongUse("--accept needs a CHOICE."),
            (null, _) => List(call.Folder),
            ({ } chosen, var accepted) => Chosen(call.Folder, chosen, accepted),
        });
    }

    private static Answer List(StoreFolder folder)
    {
        using Restoring restoring = Restoring.Begin(folder);
        ImmutableArray<Candidate> all = restoring.List();
        return all.IsEmpty
            ? Answer.Because($"Nothing in {folder.Path} can be read whole: no journal, no database, no backup. Name a backup elsewhere: payday restore FILE.")
            : Told(all, restored: false, "Nothing is changed. See what one would change with payday restore CHOICE.");
    }

    private static Answer Chosen(StoreFolder folder, string chosen, bool accept)
    {
        string choice = chosen is Candidate.Journal or Candidate.Database or Candidate.Snapshot
            ? chosen
            : new[] { chosen + BackupFile.Ends, chosen }
                .SelectMany(name => new[] { Path.GetFullPath(name, folder.Backups), Path.GetFullPath(name, folder.Aside), Path.GetFullPath(name) })
                .FirstOrDefault(Path.Exists) ?? Path.GetFullPath(chosen);
        using Restoring restoring = Restoring.Begin(folder);
        if (restoring.Find(choice) is not { } candidate)
        {
            return Answer.Because(Path.Exists(choice)
                ? $"{chosen} {BackupTexts.Of(Restoring.Unfit(choice))}; nothing was changed. See what there is with payday restore."
                : $"{chosen} is not there, or is damaged; nothing was changed. See what there is with payday restore.");
        }

        if (!accept)
        {
            ImmutableArray<Candidate> now = [.. restoring.List().Where(one => one.Choice is Candidate.Journal or Candidate.Database && one.Choice != choice).Take(1)];
            return Told([.. now, candidate], restored: false, $"Nothing is changed. {Difference(now.FirstOrDefault(), candidate)} Do it with --accept; what is there now would be kept in {folder.Aside}.");
        }

        // Told before it is done: whatever goes wrong in telling, what is done is never told as refused.
        Answer told = Told([candidate], restored: true, $"Restored. What was there before is kept in {folder.Aside}; payday restore lists it too.") with { HasChanged = true };
        restoring.Put(candidate);
        return told;
    }

    private static string Difference(Candidate? now, Candidate then)
    {
        if (now is null)
        {
            return "Nothing else in the folder can be read whole.";
        }

        if (then.IsOfAnotherBook(now))
        {
            return $"It is of another household{(then.Book is { } other ? $", {other.Household.Name}" : "")}, which would take the place of the one here.";
        }

        (string Thing, int Count)[] gone = [("ledger line", Movements(now) - Movements(then)), ("closed payday", Paydays(now) - Paydays(then))];
        string[] changes = [.. Changes("take off", gone), .. Changes("bring back", gone.Select(thing => (thing.Thing, -thing.Count)))];
        return changes.Length > 0
            ? $"It would {string.Join(" and ", changes)}."
            : "It has as many ledger lines and closed paydays as what is there now.";
    }

    private static IEnumerable<string> Changes(string verb, IEnumerable<(string Thing, int Count)> things)
    {
        string[] counted = [.. things.Where(thing => thing.Count > 0).Select(thing => thing.Thing.ToQuantity(thing.Count))];
        return counted.Length > 0 ? [$"{verb} {string.Join(" and ", counted)}"] : [];
    }

    private static Answer.Done Told(IReadOnlyList<Candidate> candidates, bool restored, string last) => new(
        [
            .. Report.Table(
                NumberStyle.CommaPoint,
                [new("last change"), new("ledger lines", Align.Right), new("paydays", Align.Right), new("choice")],
                candidates.Select(one => ImmutableArray.Create(
                    Minutes(one.At), Number(Movements(one)), Number(Paydays(one)), Short(one.Choice)))),
            .. Report.Prose(last),
        ],
        JsonSerializer.Serialize(
            new RestoreResult(restored, [.. candidates.Select(one => new CandidateResult(
                one.Choice,
                one.At,
                one.Changes,
                Movements(one),
                Paydays(one),
                one.Book?.Closed.LastOrDefault() is { } payday ? LocalDatePattern.Iso.Format(payday.Payday) : null))]),
            ResultJson.Readable.RestoreResult));

    // As it is typed, without what all of them end in, so that it fits beside the rest.
    private static string Short(string choice) =>
        Path.GetFileName(choice) is var name && name.EndsWith(BackupFile.Ends, StringComparison.Ordinal) ? name[..^BackupFile.Ends.Length] : name;

    private static string Minutes(string at) => at.Length < "2026-03-06T10:11".Length ? "not known" : at[.."2026-03-06T10:11".Length].Replace('T', ' ');

    private static int Movements(Candidate one) => one.Book?.Ledger.Movements.Count ?? 0;

    private static int Paydays(Candidate one) => one.Book?.Closed.Length ?? 0;

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
