using System.Collections.Immutable;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Text;

namespace Payday.Screens.Setup.Fields;

/// <summary>What an amount changes to, typed like 1480 from 1 Jan 2027, several with commas or semicolons between them; a month alone is its first day.</summary>
internal sealed partial class LaterType : FieldType<ImmutableArray<LaterDraft>?>
{
    private const string From = " from ";

    /// <inheritdoc/>
    public override int MostTyped => Shell.CellEdit.Long;

    /// <inheritdoc/>
    public override string Show(ImmutableArray<LaterDraft>? value, SetupFacts facts) => Text(value!.Value, facts, DateText.Day);

    /// <inheritdoc/>
    public override string Typed(ImmutableArray<LaterDraft>? value, SetupFacts facts) => Text(value!.Value, facts, LocalDatePattern.Iso.Format);

    /// <inheritdoc/>
    public override Result<ImmutableArray<LaterDraft>?> Take(string text, SetupFacts facts)
    {
        var changes = ImmutableArray.CreateBuilder<LaterDraft>();
        foreach (string change in Parts(text))
        {
            int at = change.IndexOf(From, StringComparison.OrdinalIgnoreCase);
            if (at < 0)
            {
                return Result.Refused<ImmutableArray<LaterDraft>?>(new TypedFault.NotAChange(change));
            }

            Result<Money> amount = Money.ParseSum(change[..at], facts.Currency, facts.Style);
            string typed = change[(at + From.Length)..].Trim();
            Result<LocalDate?> date = TypedDate.Month(typed) is { } month ? Result.Of<LocalDate?>(month.OnDayOfMonth(1)) : DateType.One(typed, facts);
            if (!amount.Ok || !date.Ok)
            {
                return Result.Refused<ImmutableArray<LaterDraft>?>(amount.Ok ? new TypedFault.NotADate(typed, date.Fault!) : amount.Fault!);
            }

            changes.Add(new LaterDraft { From = date.Value, Amount = amount.Value.ToDecimal() });
        }

        return changes.Count == 0
            ? Result.Refused<ImmutableArray<LaterDraft>?>(new TypedFault.NotAChange(text))
            : Result.Of<ImmutableArray<LaterDraft>?>(changes.ToImmutable());
    }

    // A comma parts two changes where a date is before it and another change behind: in an amount or in a date it parts nothing.
    [GeneratedRegex(@";|(?<=\sfrom\s[^,;]*\d)\s*,(?=[^;a-z]*\d\s+from\s)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Between();

    private static string[] Parts(string text) => [.. Between().Split(text).Select(part => part.Trim()).Where(part => part.Length > 0)];

    private static string Text(ImmutableArray<LaterDraft> changes, SetupFacts facts, Func<LocalDate, string> day) =>
        string.Join("; ", changes.Select(change => $"{(change.Amount is { } amount ? AmountType.Shown(amount, facts) : "?")}{From}{(change.From is { } from ? day(from) : "?")}"));
}
