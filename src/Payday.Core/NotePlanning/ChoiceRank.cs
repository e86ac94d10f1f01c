namespace Payday.Core.NotePlanning;

/// <summary>What choices of notes for one problem are compared by, most important first.</summary>
/// <param name="Short">Small money missing, in minor units.</param>
/// <param name="Paid">Units paid: the more the better.</param>
/// <param name="Reused">Units paid with notes on hand: the more the better.</param>
/// <param name="Notes">How many notes.</param>
internal readonly record struct ChoiceRank(Int128 Short, Int128 Paid, Int128 Reused, Int128 Notes) : IComparable<ChoiceRank>
{
    /// <summary>The rank of a choice.</summary>
    public static ChoiceRank Of(NoteProblem problem, long[][] counts)
    {
        Int128 missing = 0;
        Int128 paid = 0;
        Int128 notes = 0;
        Int128[] totals = new Int128[problem.Values.Length];
        for (int part = 0; part < counts.Length; part++)
        {
            NoteGoal goal = problem.Goals[part];
            Int128 small = 0;
            for (int i = 0; i < totals.Length; i++)
            {
                totals[i] += counts[part][i];
                notes += counts[part][i];
                Int128 worth = (Int128)counts[part][i] * problem.Values[i];
                paid += worth;
                small += i < goal.Small ? worth : 0;
            }

            missing += Int128.Max(0, ((goal.AtLeast - small) * problem.Unit) - goal.RoundedBy);
        }

        Int128 reused = 0;
        for (int i = 0; i < totals.Length; i++)
        {
            reused += Int128.Min(totals[i], problem.OnHand[i]) * problem.Values[i];
        }

        return new ChoiceRank(missing, paid, reused, notes);
    }

    /// <inheritdoc/>
    public int CompareTo(ChoiceRank other)
    {
        int order = Short.CompareTo(other.Short);
        order = order != 0 ? order : other.Paid.CompareTo(Paid);
        order = order != 0 ? order : other.Reused.CompareTo(Reused);
        return order != 0 ? order : Notes.CompareTo(other.Notes);
    }
}
