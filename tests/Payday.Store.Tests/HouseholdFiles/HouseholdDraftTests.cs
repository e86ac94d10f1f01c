using System.Reflection;
using System.Text;
using System.Text.Json;
using CsCheck;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class HouseholdDraftTests
{
    [Fact]
    public void Of_AnyHousehold_IsCheckedToTheSame() => GenHousehold.Any.Sample(household =>
    {
        Result<Household> again = HouseholdCheck.Of(HouseholdDraft.Of(household));

        Assert.Empty(again.Faults);
        Assert.Equal(Structure.Of(household), Structure.Of(again.Value!));
    }, iter: 100);

    /// <summary>A new member of a draft has a field in the file, and so goes with export, import and the store.</summary>
    [Fact]
    public void Members_EachOfThem_HasAFieldInTheFile()
    {
        // Which kind of minimum there is the file says by the amounts there are.
        DraftMember[] without = [MinimumDraft.Members.Kind];
        DraftMember[] members =
        [
            .. typeof(HouseholdDraft).Assembly.GetTypes()
                .Where(type => type is { Name: "Members", IsNested: true } && type.DeclaringType != typeof(BegunItems))
                .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public))
                .Select(property => (DraftMember)property.GetValue(null)!),
            ItemMembers.Id,
            ItemMembers.Name,
        ];

        Assert.Equal(
            members.Except(without).Select(member => member.ToString()).Order(StringComparer.Ordinal),
            HouseholdFormat.Fields.AllMembers.Distinct().Select(member => member.ToString()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Write_ADraftThatIsNotComplete_HasWhatThereIs()
    {
        var draft = new HouseholdDraft { Name = "Reed house", Bills = [new() { Name = "Rent", Schedule = new() { Kind = ScheduleKind.Monthly }, Amount = 12.5m }] };
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            HouseholdWriter.Write(json, draft);
        }

        Assert.Equal(
            "{\"version\":3,\"name\":\"Reed house\",\"bills\":[{\"name\":\"Rent\",\"amount\":\"12.5\",\"schedule\":{\"kind\":\"monthly\"}}]}",
            Encoding.UTF8.GetString(stream.ToArray()));
    }
}
