using System.Collections.Immutable;
using System.Reflection;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Store.Json;
using Payday.Tests.Slips;
using Payday.Texts;

namespace Payday.Tests.Sentences;

/// <summary>Each fault of a draft, and of what is typed into a form, has its texts: one for a file, one for a form.</summary>
public sealed class DraftTextTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Fact]
    public void Texts_OfEachFaultOfADraft_AreAsRecorded() => Golden.Equal("draft-texts", Kinds(typeof(DraftFault)).SelectMany(kind =>
    {
        Fault fault = Sample(kind);
        return (string[])
        [
            kind.Name,
            "  file: " + (fault is DraftFault.Missing ? "what belongs there, see the sentences of files" : JsonTexts.Of(fault)),
            "  form: " + FormTexts.Of(fault, NumberStyle.PointComma),
        ];
    }));

    [Fact]
    public void Texts_OfEachFaultOfWhatWasTyped_AreAsRecorded() =>
        Golden.Equal("typed-texts", Kinds(typeof(TypedFault)).Select(kind => $"{kind.Name}: {FormTexts.Of(Sample(kind), NumberStyle.PointComma)}"));

    // Pieces and lines have texts of their own where there are too many, or one that is none.
    [Fact]
    public void Texts_OfAList_AreItsOwn()
    {
        DraftPlace notes = DraftPlace.Of(SettingsDraft.Members.Notes);
        DraftPlace machine = DraftPlace.Of(SettingsDraft.Members.Bank).Then(BankDraft.Members.Notes);
        DraftPlace dates = DraftPlace.Of(SettingsDraft.Members.Holidays).Then(HolidayDraft.Members.Extra);

        Assert.Equal(
            [
                "Write 1 to 30 values with blanks between them, such as 50 20 10 5.",
                "-5,5 is no value of a note or coin; write one above zero.",
                "0 is no value of a note or coin; write one above zero.",
                "Write 1 to 500 dates like 2026-03-05, with blanks between them, or like 5 Mar 2026, with commas.",
                "There are 7 lines; at most 6 are taken.",
            ],
            new Fault[]
            {
                new DraftFault.TooMany(notes, 31, 30),
                new DraftFault.AmountBelowZero(machine, -5.5m),
                new DraftFault.AmountZero(notes),
                new DraftFault.TooMany(dates, 501, 500),
                new DraftFault.TooMany(DraftPlace.Of(SettingsDraft.Members.SlipLines), 7, 6),
            }.Select(fault => FormTexts.Of(fault, NumberStyle.PointComma)));
    }

    private static IEnumerable<Type> Kinds(Type faults) =>
        faults.GetNestedTypes().Where(type => type.IsSubclassOf(faults)).OrderBy(type => type.Name, StringComparer.Ordinal);

    private static Fault Sample(Type kind)
    {
        ConstructorInfo made = kind.GetConstructors().Single(one => one.GetParameters() is not [{ ParameterType: var only }] || only != kind);
        return (Fault)made.Invoke([.. made.GetParameters().Select(Sample)]);
    }

    private static object Sample(ParameterInfo of) => of.ParameterType switch
    {
        var type when type == typeof(DraftPlace) => DraftPlace.Of(HouseholdDraft.Members.Bills, 2),
        var type when type == typeof(string) => of.Name == "Typed" ? "typed" : "Given",
        var type when type == typeof(int) => of.Name switch { "Character" => 0x200B, "Least" => 1, "Most" or "MostYears" => 100, "Highest" => 10, "MostDecimals" => 6, "Rank" => 3, _ => 101 },
        var type when type == typeof(decimal) => of.Name == "Rate" ? 19.99m : -5m,
        var type when type == typeof(bool) => true,
        var type when type == typeof(Currency) => Usd,
        var type when type == typeof(Money) => Money.FromMinorUnits(of.Name is "Account" or "Note" ? 50 : 1_234_560, Usd),
        var type when type == typeof(LocalDate) => new LocalDate(2026, 3, of.Name == "Date" ? 4 : 5),
        var type when type == typeof(ImmutableArray<Money>) => ImmutableArray.Create(Money.FromUnits(20, Usd), Money.FromUnits(10, Usd)),
        var type when type == typeof(ImmutableArray<string>) => ImmutableArray.Create("one", "two"),
        var type when type == typeof(Fault) => new TypedFault.NotADay("32"),
        var type => throw new ArgumentOutOfRangeException(nameof(of), type, "There is no sample of it."),
    };
}
