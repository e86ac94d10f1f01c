using System.Runtime.InteropServices;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>The movements of one end as they are met in a ledger, gathered some hundred at a time: lists that grow one by one are copied again and again.</summary>
/// <param name="end">The end.</param>
/// <param name="currency">The currency of its amounts.</param>
internal sealed class EndGathering(LedgerEnd end, Currency currency)
{
    private const int AtOnce = 512;

    private readonly List<Movement> waiting = [];
    private EndLines lines = EndLines.None(end, currency);

    /// <summary>Takes in the next movement.</summary>
    public void Add(Movement movement)
    {
        waiting.Add(movement);
        if (waiting.Count == AtOnce)
        {
            Gather();
        }
    }

    /// <summary>All that were taken in, in order.</summary>
    public EndLines Gathered()
    {
        Gather();
        return lines;
    }

    private void Gather()
    {
        lines = lines.Add(CollectionsMarshal.AsSpan(waiting));
        waiting.Clear();
    }
}
