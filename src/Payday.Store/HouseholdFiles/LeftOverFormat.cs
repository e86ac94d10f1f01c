using System.Text.Json;
using Payday.Core.Pots;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// What becomes of what a count finds left of a cash pot: <c>"stays"</c>, <c>"buffer"</c>, <c>{"pot":"boots"}</c> or
/// <c>{"debt":"card"}</c>, each by id or name.
/// </summary>
internal static class LeftOverFormat
{
    private const string Stays = "stays";
    private const string Buffer = "buffer";
    private const string PotField = "pot";
    private const string DebtField = "debt";

    public static MoveTarget? Read(
        JsonCursor? field, NamedItem pot, Held held, (string Id, string Name)[] pots, (string Id, string Name)[] debts)
    {
        if (field is null)
        {
            return null;
        }

        MoveTarget? target = field.Kind == JsonValueKind.Object ? ReadTarget(field, pots, debts) : ReadWord(field);
        if (field.IsSound && target is not null && held == Held.InTheAccount)
        {
            field.Refuse("A pot held in the account is not counted, so nothing is left over; take this out, or write \"held\": \"cash\".");
        }
        else if (field.IsSound && target == MoveTarget.Pot(pot.Id))
        {
            field.Refuse("A pot can't move on to itself; name another, or write \"stays\".");
        }

        return target;
    }

    public static void Write(Utf8JsonWriter json, MoveTarget? target)
    {
        switch (target)
        {
            case null:
                break;
            case { Target: PlacementTarget.Buffer }:
                json.WriteString("leftOver", Buffer);
                break;
            default:
                json.WriteStartObject("leftOver");
                json.WriteString(target.Target == PlacementTarget.Pot ? PotField : DebtField, target.Id);
                json.WriteEndObject();
                break;
        }
    }

    private static MoveTarget? ReadWord(JsonCursor field) => field.Word(Stays, Buffer) == Buffer ? MoveTarget.Buffer : null;

    private static MoveTarget? ReadTarget(JsonCursor field, (string Id, string Name)[] pots, (string Id, string Name)[] debts)
    {
        JsonFields fields = field.Fields();
        bool isDebt = fields.Optional(DebtField) is not null;
        JsonCursor named = fields.Required(isDebt ? DebtField : PotField);
        string text = named.OneLine(NamedList.LongestName);
        (string Id, string Name)[] known = isDebt ? debts : pots;
        string? id = known.FirstOrDefault(item => item.Id == text).Id
            ?? known.FirstOrDefault(item => string.Equals(item.Name, text, StringComparison.OrdinalIgnoreCase)).Id;
        if (named.IsSound && id is null)
        {
            named.Refuse($"\"{SafeText.Shown(text)}\" is none of the {(isDebt ? "debts" : "pots")}; write the name or id of one.");
        }

        fields.RefuseOthers();
        return id is null ? null : isDebt ? MoveTarget.Debt(id) : MoveTarget.Pot(id);
    }
}
