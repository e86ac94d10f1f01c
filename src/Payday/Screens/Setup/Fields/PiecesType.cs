using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Store.Formats;

namespace Payday.Screens.Setup.Fields;

/// <summary>Values of notes or coins, with blanks between them.</summary>
internal sealed class PiecesType : FieldType<ImmutableArray<decimal>?>
{
    /// <summary>A value as this household writes it.</summary>
    public static string Shown(decimal piece, SetupFacts facts) => facts.Style.Written(FileValues.PieceText(piece, facts.Currency));

    /// <inheritdoc/>
    public override string Show(ImmutableArray<decimal>? value, SetupFacts facts) => string.Join(' ', value!.Value.Select(piece => Shown(piece, facts)));

    /// <inheritdoc/>
    public override Result<ImmutableArray<decimal>?> Take(string text, SetupFacts facts)
    {
        string[] words = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.TrimEnd(',', ';')).Where(word => word.Length > 0)];
        var pieces = ImmutableArray.CreateBuilder<decimal>();
        foreach (string word in words)
        {
            Result<Money> piece = Money.Parse(word, facts.Currency, facts.Style);
            if (!piece.Ok)
            {
                return Result.Refused<ImmutableArray<decimal>?>(piece.Fault);
            }

            pieces.Add(piece.Value.ToDecimal());
        }

        return pieces.Count == 0
            ? Result.Refused<ImmutableArray<decimal>?>(new TypedFault.NoPieces())
            : Result.Of<ImmutableArray<decimal>?>([.. pieces.OrderDescending()]);
    }
}
