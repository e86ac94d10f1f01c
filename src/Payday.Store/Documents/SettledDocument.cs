using Payday.Core.Books;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A difference that was cleared up, as it is stored.</summary>
internal static class SettledDocument
{
    public static readonly RecordForm<SettledDifference> Form =
        new(CollectionNames.Settled, settled => settled.Count, (left, right) => left.Movement.CompareTo(right.Movement), Write, Read);

    private static void Write(IFieldWriter to, SettledDifference settled)
    {
        to.Whole("_id", settled.Count);
        to.Choice("how", StoredChoices.DifferenceEnds, settled.How);
        to.Date("date", settled.Date);
        to.Whole("movement", settled.Movement);
    }

    private static SettledDifference Read(IFieldReader from) => new(
        from.Whole("_id"), from.Choice("how", StoredChoices.DifferenceEnds), from.Date("date"), from.Whole("movement"));
}
