namespace Payday.Faults;

/// <summary>Flips, cuts, overwrites, deletes, ages, swaps, doubles and copies the files of a store, and opens it.</summary>
/// <remarks>
/// Half of the stores were closed, half were killed once the log was synced, so that log, holder and an older
/// database are there. Damage to one file, or to several of which only one is the database or the journal, must lose
/// nothing, also where a change is made before a whole look finds it. Damage to both may be refused with a message, but must never come out as another book. What the book is, is
/// said by the digest over all documents that the book as it was loaded comes to.
/// </remarks>
internal static class Damages
{
    public static bool Run(int count, int seed, int from = 0)
    {
        using var scratch = new Scratch();
        var lived = DamagedStore.Live(scratch);
        var tally = new Tally();
        for (int i = from; i < from + count; i++)
        {
            var damaged = DamagedStore.Of(new Random(HashCode(seed, i)), lived);
            scratch.Put(damaged.Files);
            var opening = new Opening(lived.Folder, lived.Sound) { Older = lived.Older, GoesOn = damaged.GoesOn, HasForeignCopy = damaged.HasForeignCopy };
            (string outcome, string detail) = opening.Try();
            if (damaged.IsOfBefore && outcome == "WRONG")
            {
                // Sound copies of before, one change apart at most: as a program leaves them that is killed between the two.
                // Nothing in the folder can tell, where no backup goes further.
                outcome = "older, unsaid";
            }

            if (outcome is "refused" or "older, said" && !damaged.IsBoth)
            {
                outcome = "LOST";
            }

            tally.Add(damaged.Row, outcome, $"seed {seed}, number {i}: {damaged.What}: {detail}");
        }

        return tally.Print("damages");
    }

    private static int HashCode(int seed, int number) => unchecked((seed * 1_000_003) + number);
}
