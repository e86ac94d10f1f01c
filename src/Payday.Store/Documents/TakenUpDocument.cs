using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>What a purchase or a count took up, as its record has it; nothing in one of an earlier version.</summary>
internal static class TakenUpDocument
{
    private const string Name = "takenUp";

    public static void Write(IFieldWriter to, TakenUp taken) => to.OptionalPart(Name, taken.IsEmpty ? null : taken, static (part, some) =>
    {
        part.List("fills", some.Fills, static (item, key) =>
        {
            item.Date("payday", key.Payday);
            item.OptionalDate("week", key.Week);
            item.Text("pot", key.PotId.Text);
        });
        part.List("movements", some.Movements, static (item, number) => item.Whole("number", number));
    });

    public static TakenUp Read(IFieldReader from) => from.OptionalPart(Name, static part => new TakenUp(
        part.List("fills", static item => new FillKey(item.Date("payday"), item.OptionalDate("week"), new(item.Text("pot")))),
        part.List("movements", static item => item.Whole("number")))) ?? TakenUp.Nothing;
}
