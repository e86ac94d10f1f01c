using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;

namespace Payday.Core.Routines;

/// <summary>A due that is written down: by the last closed payday that dealt with it, by payments made on it, or by both.</summary>
/// <param name="Closed">As the closed payday left it; null where only payments are known.</param>
/// <param name="Key">What it is known by.</param>
/// <param name="IsDone">Whether nothing of it is to be paid any more.</param>
/// <param name="Paid">What was paid on it between paydays, in all.</param>
/// <param name="PaidSince">What of that was paid since the payday that dealt with it was closed.</param>
internal sealed record WrittenDue(ClosedDue? Closed, DueKey Key, bool IsDone, Money Paid, Money PaidSince);
