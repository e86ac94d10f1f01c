using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;
using Begun = Payday.Core.Drafts.BegunItems.Members;

namespace Payday.Store.Starts;

/// <summary>
/// The file of a household that is being set up: <c>{"version":1,"parts":[…],"household":{…},"begun":{"bills":{…}},"statements":{…}}</c>, the
/// household and its items as a household file has them, as far as they go, and what it is set up from.
/// </summary>
/// <remarks>The first ones had no version; they are read as those of version 1. Items that were begun, lines that weren't taken yet and the bank's files are there only where there are some.</remarks>
internal static class StartFormat
{
    /// <summary>The version that is written, and the newest that is read.</summary>
    public const int Version = 1;

    private const string VersionField = "version";
    private const string Parts = "parts";
    private const string Household = "household";
    private const string BegunField = "begun";
    private const string Statements = "statements";

    private static readonly LinesValue PartsValue = new(MostParts);
    private static readonly CountValue VersionValue = new(1, int.MaxValue);

    private static readonly LinesValue LinesValue = new(HouseholdLimits.MostItems);

    private static readonly PartFormat<BegunItems> BegunFields = new(
        FileField.Of(Begun.Source, "sources", new PartValue<SourceDraft>(SourceFormat.Fields)),
        FileField.Of(Begun.Bill, "bills", new PartValue<BillDraft>(BillFormat.Fields)),
        FileField.Of(Begun.Debt, "debts", new PartValue<DebtDraft>(DebtFormat.Fields)),
        FileField.Of(Begun.Pot, "pots", new PartValue<PotDraft>(PotFormat.Fields)),
        FileField.Of(Begun.SourceLines, "sourceLines", LinesValue),
        FileField.Of(Begun.BillLines, "billLines", LinesValue),
        FileField.Of(Begun.DebtLines, "debtLines", LinesValue),
        FileField.Of(Begun.PotLines, "potLines", LinesValue));

    private const int MostParts = 100;

    /// <summary>Reads it; null where it isn't one of this version, which is reported.</summary>
    public static StartDraft? Read(JsonCursor root)
    {
        // The first ones kept more of an item than it has in a file.
        var reading = new FileReading { IsLenient = true };
        JsonFields fields = root.Fields();
        if (fields.Find(VersionField) is { } version && VersionValue.Read(version, reading) is { } number && number > Version)
        {
            version.Refuse(new JsonTextFault.OtherVersion(number, Version, Version));
            return null;
        }

        HouseholdDraft? household = fields.Find(Household) is { } there ? HouseholdReader.ReadDraft(there, reading) : null;
        if (household is null)
        {
            fields.Missing<HouseholdDraft>(Household, new JsonWanted.Object());
            return null;
        }

        ImmutableArray<string> passed = fields.Find(Parts) is { } parts ? PartsValue.Read(parts, reading) ?? [] : [];
        BegunItems begun = fields.Find(BegunField) is { } items ? BegunFields.Read(items, reading) : BegunItems.None;
        return new StartDraft(household, passed.ToImmutableSortedSet(StringComparer.Ordinal), WithKind(begun))
        {
            Statements = fields.Find(Statements) is { } statements ? StatementsFormat.Read(statements, reading) : StartStatements.None,
        };
    }

    /// <summary>Writes it.</summary>
    public static void Write(Utf8JsonWriter json, StartDraft start)
    {
        json.WriteStartObject();
        json.WriteNumber(VersionField, Version);
        json.WritePropertyName(Parts);
        PartsValue.Write(json, [.. start.Passed], default);
        json.WritePropertyName(Household);
        HouseholdWriter.Write(json, start.Household);
        if (start.Begun != BegunItems.None)
        {
            json.WriteStartObject(BegunField);
            BegunFields.WriteFields(json, start.Begun, start.Household.Settings.Currency ?? default);
            json.WriteEndObject();
        }

        if (!start.Statements.IsEmpty)
        {
            json.WritePropertyName(Statements);
            StatementsFormat.Write(json, start.Statements);
        }

        json.WriteEndObject();
    }

    // The kind of a minimum is told by its amounts; where there are none yet it is the usual one.
    private static BegunItems WithKind(BegunItems begun) => begun.Debt is { Minimum: null } debt
        ? begun with { Debt = debt with { Minimum = new() { Kind = MinimumKind.Fixed } } }
        : begun;
}
