using Payday.Core.Households;
using Payday.Store.Changes;
using Payday.Store.HouseholdFiles;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class NameRuleTests
{
    private static readonly string[] Nouns = ["source", "bill", "debt", "pot"];

    // Characters by their names in the Unicode Character Database.
    [Theory]
    [InlineData("\u200D", "200D")] // ZERO WIDTH JOINER alone
    [InlineData("Food\u200D", "200D")]
    [InlineData("Fo\u200Dod", "200D")]
    [InlineData("Food\u200B", "200B")] // ZERO WIDTH SPACE
    [InlineData("\u2060Food", "2060")] // WORD JOINER
    [InlineData("Fo\u00ADod", "00AD")] // SOFT HYPHEN
    [InlineData("Food\uFE0F\uFE0F", "FE0F")] // VARIATION SELECTOR-16 twice
    [InlineData("\u2800", "2800")] // BRAILLE PATTERN BLANK
    [InlineData("Food \u3164", "3164")] // HANGUL FILLER
    [InlineData("\u115F\u1160", "115F")] // HANGUL CHOSEONG FILLER
    [InlineData("Fo\u034Fod", "034F")] // COMBINING GRAPHEME JOINER
    [InlineData("Food\U000E0041", "E0041")] // TAG LATIN CAPITAL LETTER A
    public void Refusal_WhatCannotBeSeen_NamesIt(string name, string character) =>
        Assert.Equal($"This name holds a character that can't be seen (U+{character}); take it out.", NameRule.Refusal(name, "bill"));

    [Theory]
    [InlineData("Food")]
    [InlineData("Café ☕")]
    [InlineData("❤️ fund")]
    [InlineData("👩‍👧 club")]
    [InlineData("👩‍❤️‍👨")]
    [InlineData("می‌خواهم")] // a Persian word with a ZERO WIDTH NON-JOINER
    [InlineData("ක්‍රීඩා")] // a Sinhala word with a ZERO WIDTH JOINER
    [InlineData("Buffers")]
    [InlineData("The buffer")]
    [InlineData("Account")]
    [InlineData("x\u00A0y")]
    public void Refusal_NameOfAThing_IsNone(string name) => Assert.Null(NameRule.Refusal(name, "pot"));

    [Theory]
    [InlineData("Buffer")]
    [InlineData("BUFFER")]
    [InlineData("kept back")]
    [InlineData("Kept  Back")]
    [InlineData("kept-back")]
    [InlineData("Owed back")]
    [InlineData("left to place")]
    [InlineData("Left-to-place")]
    public void Refusal_WhatPaydayCallsSomethingElse_SaysSo(string name)
    {
        string expected = $"\"{name}\" is what Payday calls something else; choose another name.";
        Assert.All(Nouns, noun => Assert.Equal(expected, NameRule.Refusal(name, noun)));
    }

    [Theory]
    [InlineData("Overdraft")]
    [InlineData("Wallet")]
    [InlineData("Loose notes")]
    [InlineData("set aside")]
    public void Refusal_WhatStandsBesidePots_IsTakenElsewhere(string name)
    {
        Assert.NotNull(NameRule.Refusal(name, "pot"));
        Assert.Null(NameRule.Refusal(name, "debt"));
    }

    [Fact]
    public void Read_PotCalledBuffer_SaysWhere() => Assert.Equal(
        ["pots[1].name, line 99: \"Buffer\" is what Payday calls something else; choose another name."],
        HouseholdFile.Read(SmallHousehold.With("\"Roof\"", "\"Buffer\"")).Faults.Select(fault => fault.ToString()));

    [Theory]
    [InlineData("Buffer")]
    [InlineData("Food\u200D")]
    [InlineData("\u2800")]
    public void Open_StoreThatHasSuchAName_OpensAndGoesOn(string name)
    {
        // Stored once by a program that took such names.
        using var scratch = new ScratchFolder();
        Household household = Samples.Household with { Pots = [.. Samples.Household.Pots.Select((pot, i) => i == 1 ? pot with { Name = name } : pot)] };
        Assert.False(HouseholdFile.Read(HouseholdFile.Write(household)).Ok);
        using (BookStore store = BookStore.Open(scratch.Data))
        {
            store.Save(Samples.Beginning with { Household = household });
        }

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.Equal(name, store.Load()!.Household.Pots[1].Name);
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
        }

        File.Delete(scratch.Data.Database);
        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Equal(name, again.Load()!.Household.Pots[1].Name);
    }
}
