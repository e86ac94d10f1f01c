using LiteDB;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Store.Documents;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Contents;

/// <summary>All movements in the order of the ledger: numbered from 1 and only ever added to, so no digest is kept of them.</summary>
internal sealed class MovementColumn : IColumn
{
    // What came of a snapshot, and what came in since or of documents.
    private readonly List<Movement> further = [];
    private MovementColumns? packed;

    public string Collection => MovementDocument.Form.Collection;

    public int Count => (packed?.Count ?? 0) + further.Count;

    public IEnumerable<KeyValuePair<object, Digest>> Digests => [];

    public IEnumerable<BsonDocument> Documents => All.Select(MovementDocument.Form.From);

    private IEnumerable<Movement> All => Enumerable.Range(0, packed?.Count ?? 0).Select(at => packed!.Make(at)).Concat(further);

    /// <summary>The number of the first movement that is missing; null where none is.</summary>
    public int? Missing
    {
        get
        {
            int before = packed?.Count ?? 0;
            int at = further.FindIndex(movement => movement.Number != ++before);
            return at < 0 ? null : before;
        }
    }

    /// <summary>The ledger that they come to, where none is missing.</summary>
    /// <exception cref="Exception">They are no movements of a ledger.</exception>
    public Ledger Ledger(Currency currency) => packed is null
        ? Core.Ledgers.Ledger.Of(currency, [.. further])
        : Core.Ledgers.Ledger.Of(packed, [.. further]);

    public Digest? Find(object key) => null;

    public void Take(IEnumerable<Stored<BsonDocument>> documents, Currency currency)
    {
        further.AddRange(documents.Select(document => MovementDocument.Form.To(document.Record, currency)));
        further.Sort(MovementDocument.Form.Order);
    }

    public bool Apply(IEnumerable<Edit> edits, Currency currency) => edits.All(edit => Grow(edit, currency));

    public void Write(PackedWriter to)
    {
        to.Count(Count);
        foreach (Movement movement in All)
        {
            MovementDocument.Form.Write(to, movement);
        }
    }

    public void Read(PackedReader from) => packed = MovementDocument.ReadColumns(from);

    private bool Grow(Edit edit, Currency currency)
    {
        if (edit.Document is not { } document || !edit.Id.IsNumber || edit.Id.AsInt64 != Count + 1)
        {
            return false;
        }

        further.Add(MovementDocument.Form.To(document, currency));
        return true;
    }
}
