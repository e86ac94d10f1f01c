using Payday.Core.Cash;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>Reckons a plan over again, note by note, from the request alone.</summary>
internal static class PlanAudit
{
    /// <summary>What is wrong with it; null where nothing is.</summary>
    public static string? Fault(NoteRequest request, NotePlan plan) =>
        plan.Parts.Select(part => OfPart(plan, part)).FirstOrDefault(fault => fault is not null)
        ?? OfPots(request, plan) ?? OfNotes(request, plan) ?? OfSource(request, plan);

    private static string? OfPart(NotePlan plan, PartNotes part)
    {
        bool Said(Func<NoteFaultKind, bool> kind) => plan.Faults.Any(fault => fault.Pot == part.Part.Pot && fault.Week == part.Part.Week && kind(fault.Kind));
        return part.KeptBack.IsNegative || part.Amount.MinorUnits != Worth(part) + part.KeptBack.MinorUnits ? $"{part.Part.Pot}: notes and kept back are not the amount"
            : part.Notes.Values.Any(value => value > (part.Part.Wishes.TopNote?.MinorUnits ?? long.MaxValue)) ? $"{part.Part.Pot}: a note above its top note"
            : part.Notes.Values.Any(count => count <= 0) ? $"{part.Part.Pot}: no notes of a value"
            : PlanRank.Missing(part) > 0 && !Said(_ => true) ? $"{part.Part.Pot}: lacks small money, unsaid"
            : PlanRank.Missing(part) == 0 && Said(kind => kind == NoteFaultKind.SmallMoney) ? $"{part.Part.Pot}: has its small money, said to lack it"
            : part.KeptBack.IsZero && Said(kind => kind != NoteFaultKind.SmallMoney) ? $"{part.Part.Pot}: is paid in full, said not to be"
            : null;
    }

    private static string? OfPots(NoteRequest request, NotePlan plan) => plan.Parts
        .GroupBy(part => part.Part.Pot)
        .Any(pot => pot.Sum(part => part.Amount.MinorUnits) != request.Parts.Where(part => part.Pot == pot.Key).Sum(part => part.Amount.MinorUnits))
        ? "a pot's weeks don't come to what it has" : null;

    private static string? OfNotes(NoteRequest request, NotePlan plan)
    {
        IEnumerable<long> values = plan.Parts.SelectMany(part => part.Notes.Values).Concat(request.Loose.Values).Concat(plan.Withdraw.Values).Distinct();
        return values.Any(value =>
        {
            long used = plan.Parts.Sum(part => (long)part.Notes[value]);
            long home = request.Loose[value];
            return used != plan.Withdraw[value] + home - plan.Return[value]
                || home != plan.Reused[value] + plan.Return[value]
                || (plan.Withdraw.Values.Contains(value) && plan.Return.Values.Contains(value));
        }) ? "a note is made or lost" : null;
    }

    private static string? OfSource(NoteRequest request, NotePlan plan) =>
        plan.Withdraw.Values.Except(request.Fetched.Select(note => note.MinorUnits)).Any() ? "a note is fetched that isn't to be had"
        : request.Source is CashSource.Machine { Limit: { } limit } && plan.WithdrawTotal > limit ? "more is fetched than the limit"
        : plan.Faults.Any(fault => fault.Kind == NoteFaultKind.Limit) != plan.LimitShort.IsPositive ? "the limit is short of nothing, or something"
        : null;

    private static long Worth(PartNotes part) => part.Notes.Sum(note => note.Key * note.Value);
}
