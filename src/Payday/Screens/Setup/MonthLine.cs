using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Screens.Frames;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup;

/// <summary>What comes in and what is asked for in a month, in view while a household is entered; see <see cref="UsualMonth"/>.</summary>
/// <param name="facts">The household.</param>
internal sealed class MonthLine(SetupFacts facts)
{
    // A screen asks for it at each key; it is as it was until something is changed.
    private (HouseholdDraft Draft, UsualMonth? Month)? known;

    /// <summary>The lines; none before the household has income and a currency.</summary>
    /// <param name="draft">The household, with what is about to be taken.</param>
    /// <param name="width">In columns.</param>
    public IEnumerable<FrameLine> Lines(HouseholdDraft draft, int width)
    {
        if (known is not { } last || !ReferenceEquals(last.Draft, draft))
        {
            known = (draft, Of(draft));
        }

        if (known.Value.Month is not { } month)
        {
            return [];
        }

        bool isMissing = month.Left < Money.Zero(month.Left.Currency);
        string[] parts =
        [
            $"A month of the next 12: in {Shown(month.ComesIn)}", $"bills {Shown(month.Bills)}", $"minimums {Shown(month.Minimums)}", $"pots {Shown(month.Pots)}",
            isMissing ? $"missing {Shown(-month.Left)}" : $"left {Shown(month.Left)}",
        ];
        return Wrapped(parts, width - 2).Select(line => FrameLine.Of(" " + line, isMissing ? Ink.Alert : Ink.Plain));
    }

    // A word stays with its figure.
    private static IEnumerable<string> Wrapped(IEnumerable<string> parts, int width)
    {
        string line = "";
        foreach (string part in parts)
        {
            string longer = line.Length == 0 ? part : $"{line}, {part}";
            if (line.Length > 0 && TextColumns.Width(longer) > width)
            {
                yield return line + ",";
                longer = part;
            }

            line = longer;
        }

        yield return line;
    }

    // What the account holds is often entered last: it doesn't matter here.
    private UsualMonth? Of(HouseholdDraft draft)
    {
        decimal has = (draft.Bills ?? []).Sum(bill => bill.SetAside ?? 0) + (draft.Pots ?? []).Sum(pot => pot.Has ?? 0);
        Result<Household> household = HouseholdCheck.Of(draft with { Opening = (draft.Opening ?? new()) with { Account = has } });
        return household.Ok ? UsualMonth.Of(household.Value, facts.Today) : null;
    }

    private string Shown(Money amount) => amount.ToString(facts.Style);
}
