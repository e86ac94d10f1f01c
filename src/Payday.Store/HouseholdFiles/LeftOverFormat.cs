using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.Json;
using Members = Payday.Core.Drafts.LeftOverDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// What becomes of what a count finds left of a cash pot: <c>"stays"</c>, <c>"buffer"</c>, <c>{"pot":"boots"}</c> or
/// <c>{"debt":"card"}</c>, each by id or name.
/// </summary>
internal sealed class LeftOverFormat : FileValue<LeftOverDraft?>
{
    private const string Debt = "debt";

    private static readonly WordValue<LeftOverTo> Ways = new(Words.LeftOvers);

    private static readonly PartFormat<LeftOverDraft> Format = new(
        FileField.Always(Members.Debt, Debt, FileValues.Line),
        FileField.Of(Members.Pot, "pot", FileValues.Line))
    {
        Begin = fields => new() { To = fields.Has(Debt) ? LeftOverTo.Debt : LeftOverTo.Pot },
    };

    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Either([Ways.Shape, Format.Shape]);

    public override JsonWanted Wanted(FileReading reading) => Ways.Wanted(reading);

    public override LeftOverDraft? Read(JsonCursor at, FileReading reading) =>
        at.Kind == JsonValueKind.Object ? Format.Read(at, reading)
        : Ways.Read(at, reading) is { } way ? new LeftOverDraft { To = way }
        : null;

    public override void Write(Utf8JsonWriter json, LeftOverDraft? value, Currency currency)
    {
        if (value!.To is LeftOverTo.Stays or LeftOverTo.Buffer)
        {
            Ways.Write(json, value.To, currency);
            return;
        }

        json.WriteStartObject();
        Format.WriteFields(json, value, currency);
        json.WriteEndObject();
    }

    internal override IEnumerable<DraftMember> AllMembers => Format.AllMembers;

    internal override IEnumerable<string> AllNames => Format.AllNames;

    internal override FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) => Format.Find(around, rest, reading);
}
