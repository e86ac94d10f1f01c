using Payday.Core.Drafts;

namespace Payday.Core.Tests.Drafts;

public sealed class NameRuleTests
{
    private static readonly DraftPlace Here = DraftPlace.Of(ItemMembers.Name);

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
    public void Fault_WhatCannotBeSeen_NamesIt(string name, string character) =>
        Assert.Equal(new DraftFault.NameUnseen(Here, Convert.ToInt32(character, 16)), NameRule.Fault(name, isPot: false, Here));

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
    public void Fault_NameOfAThing_IsNone(string name) => Assert.Null(NameRule.Fault(name, isPot: true, Here));

    [Theory]
    [InlineData("Buffer")]
    [InlineData("BUFFER")]
    [InlineData("kept back")]
    [InlineData("not in notes")]
    [InlineData("Kept  Back")]
    [InlineData("kept-back")]
    [InlineData("Owed back")]
    [InlineData("To pay back")]
    [InlineData("left to place")]
    [InlineData("Left-to-place")]
    public void Fault_WhatPaydayCallsSomethingElse_SaysSo(string name)
    {
        var expected = new DraftFault.NameReserved(Here, name);
        Assert.Equal(expected, NameRule.Fault(name, isPot: false, Here));
        Assert.Equal(expected, NameRule.Fault(name, isPot: true, Here));
    }

    [Theory]
    [InlineData("Overdraft")]
    [InlineData("Wallet")]
    [InlineData("Loose notes")]
    [InlineData("set aside")]
    public void Fault_WhatStandsBesidePots_IsTakenElsewhere(string name)
    {
        Assert.NotNull(NameRule.Fault(name, isPot: true, Here));
        Assert.Null(NameRule.Fault(name, isPot: false, Here));
    }
}
