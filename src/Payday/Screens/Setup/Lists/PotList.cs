using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>What money is for; their order is their rank.</summary>
internal sealed class PotList : ListOf<PotDraft>
{
    private const int WidestPurpose = 30;

    public PotList()
        : base(new(HouseholdDraft.Members.Pots, BegunItems.Members.Pot, BegunItems.Members.PotLines, PotFields.All))
    {
    }

    /// <inheritdoc/>
    public override string Noun => "pot";

    /// <inheritdoc/>
    public override string Title => "Pots";

    /// <inheritdoc/>
    public override string Help => "What money is for: everyday spending, a future cost, savings, a reserve. The first is cut last when money is short.";

    /// <inheritdoc/>
    public override string Instead => "With an amount of 0 it is filled no more.";

    /// <inheritdoc/>
    public override bool IsRanked => true;

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [new("", Align.Right), Report.Names("Pot"), new("for"), new("where")];

    /// <inheritdoc/>
    protected override ImmutableArray<string> Cells(PotDraft item, SetupFacts facts) =>
    [
        item.Rank?.ToString(CultureInfo.InvariantCulture) ?? "",
        item.Name!,
        TextColumns.Truncate(Purpose(item, facts), WidestPurpose),
        PotFields.Held.Show(item, facts),
    ];

    /// <inheritdoc/>
    public override int NameColumn => 1;

    /// <inheritdoc/>
    public override string LineExample => "Food 205 a week";

    /// <inheritdoc/>
    public override string LineExamples => "Clothes 60 a month, Holiday 1200 by 1 Jul, Savings 5..100, or Reserve 2000 with 50 a payday";

    /// <inheritdoc/>
    public override ItemSection Section => ItemSection.Pots;

    /// <inheritdoc/>
    protected override string Written(PotDraft item, LineFacts facts) => ItemText.Of(item, facts);

    /// <inheritdoc/>
    protected override Result<PotDraft> Read(string line, LineFacts facts, PotDraft fresh) => ItemLine.Pot(line, facts)
        .Map(pot => pot with
        {
            Name = pot.Name,
            Rank = fresh.Rank,
            Has = pot.Has,

            // What is spent goes through the wallet, what is saved is as safe in the account; the form changes either.
            Place = pot.Place ?? (pot.Kind is PotUse.Spending ? Place.Cash : Place.Account),
        });

    /// <inheritdoc/>
    protected override PotDraft Later(PotDraft fresh, int others) => fresh with { Rank = fresh.Rank + others };

    /// <inheritdoc/>
    protected override PotDraft Fresh(SetupFacts facts) => new()
    {
        Kind = PotUse.Spending,
        Per = FillPer.Week,
        Place = Place.Cash,
        Rank = (facts.Draft.Pots ?? []).Select(pot => pot.Rank ?? 0).DefaultIfEmpty(0).Max() + 1,
    };

    /// <inheritdoc/>
    protected override IEnumerable<(int Index, PotDraft Item)> Order(IEnumerable<(int Index, PotDraft Item)> list) => list.OrderBy(pot => pot.Item.Rank ?? 0);

    /// <inheritdoc/>
    protected override (PotDraft First, PotDraft Second) Exchanged(PotDraft first, PotDraft second) =>
        (first with { Rank = second.Rank }, second with { Rank = first.Rank });

    private static string Purpose(PotDraft pot, SetupFacts facts) => pot.Kind switch
    {
        PotUse.Spending => $"{LaterField.Now(pot.Amount, pot.Later, facts)} a {PotFields.Per.Show(pot, facts)}{LaterField.Next(pot.Later, facts)}",
        PotUse.Sinking => $"{Amount(pot.By is { } by ? LaterDraft.On(pot.Target, pot.Later, by) : pot.Target, facts)} by {PotFields.By.Show(pot, facts)}",
        PotUse.Ladder => $"{PotFields.Steps.Show(pot, facts)} steps of {Amount(pot.Unit, facts)}, {PotFields.Order.Show(pot, facts)}",
        _ => $"{Amount(pot.PerPayday, facts)} a payday to {LaterField.Now(pot.Level, pot.Later, facts)}{LaterField.Next(pot.Later, facts)}",
    };
}
