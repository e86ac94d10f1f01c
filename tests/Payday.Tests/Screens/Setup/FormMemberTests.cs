using System.Reflection;
using Payday.Core.Drafts;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Lists;

namespace Payday.Tests.Screens.Setup;

/// <summary>What a household can have can be entered: a member of a draft that no form has is one that only a file can change.</summary>
public sealed class FormMemberTests : IDisposable
{
    private readonly DemoBook demo = new();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Fields_OfAllForms_HaveEachMember()
    {
        // An id is the ledger's, a rank is the order of the list; where left-over money goes is one choice; an amount and the date
        // from which it holds are typed as one.
        DraftMember[] without = [PotDraft.Members.Rank, LeftOverDraft.Members.Pot, LeftOverDraft.Members.Debt, LaterDraft.Members.From, LaterDraft.Members.Amount];
        DraftMember[] members =
        [
            .. typeof(HouseholdDraft).Assembly.GetTypes()
                .Where(type => type is { Name: "Members", IsNested: true } && type.DeclaringType != typeof(BegunItems))
                .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public))
                .Select(property => (DraftMember)property.GetValue(null)!),
            ItemMembers.Name,
        ];
        var work = new BookWork(demo.Session);
        DraftMember[] held =
        [
            .. HouseholdFields.All.Concat(HouseholdFields.Opening(work)).SelectMany(Members),
            .. SetupList.All.SelectMany(list => list.Places.SelectMany(place => place.Steps).Select(step => step.Member).Prepend(list.Member)),
        ];

        Assert.Empty(members.Except(without).Except(held).Select(member => member.ToString()));
    }

    private static IEnumerable<DraftMember> Members(SetupField<HouseholdDraft> field) => field.Place.Steps.Select(step => step.Member);
}
