using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.Json;
using Members = Payday.Core.Drafts.HolidayDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>Bank holidays: <c>"US"</c>, or <c>{"set":"US","extra":["2026-11-27"]}</c>; written as short as they can be.</summary>
/// <param name="takesDates">Whether a plain list of dates is taken in place of that object, as the paydays calculator does.</param>
public sealed class HolidayFormat(bool takesDates = false) : FileValue<HolidayDraft?>
{
    private static readonly WordValue<HolidaySet> Sets = new(Words.HolidaySets);

    private static readonly PartFormat<HolidayDraft> Format = new(
        FileField.Of(Members.Set, "set", Sets),
        FileField.Of(Members.Extra, "extra", FileValues.Dates));

    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Either([Sets.Shape, takesDates ? FileValues.Dates.Shape : Format.Shape]);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => Sets.Wanted(reading);

    /// <inheritdoc/>
    public override HolidayDraft? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return at.Kind switch
        {
            JsonValueKind.Object when !takesDates => Format.Read(at, reading),
            JsonValueKind.Array when takesDates => new HolidayDraft { Set = HolidaySet.None, Extra = FileValues.Dates.Read(at, reading) },
            _ => Sets.Read(at, reading) is { } set ? new HolidayDraft { Set = set } : null,
        };
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, HolidayDraft? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        if (value is { Set: { } set, Extra: null or { IsEmpty: true } })
        {
            Sets.Write(json, set, currency);
            return;
        }

        json.WriteStartObject();
        Format.WriteFields(json, value!, currency);
        json.WriteEndObject();
    }

    internal override IEnumerable<DraftMember> AllMembers => Format.AllMembers;

    internal override IEnumerable<string> AllNames => Format.AllNames;

    internal override FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) =>
        !takesDates ? Format.Find(around, rest, reading)
        : !rest.IsEmpty && rest[0].Item is { } index ? around.In(JsonPlace.Item(around.Place, index), FileValues.Date.Wanted(reading))
        : around;
}
