using System.Globalization;
using System.Text;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Answers;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Sums;
using Payday.Statements.Tests.Made;
using Payday.Statements.Tests.Writers;

namespace Payday.Statements.Tests.Reading;

/// <summary>Whatever the bytes are, reading ends, throws nothing, takes bounded memory and lets no control character through.</summary>
public sealed class HostileTests
{
    // A file a hundred times as large in memory would be 1.6 GB at the limit; all that is ever allocated stays below this.
    private const long MostAllocatedPerByte = 250;
    private const long MostAllocatedAtAll = 40_000_000;

    private static readonly ReadingOptions Options = new() { Currency = Currency.FromCode("EUR"), Today = new LocalDate(2026, 12, 31) };

    private static readonly Gen<string> Written =
        from statement in MadeStatements.Any
        from format in Gen.Int[0, 5]
        select format switch
        {
            0 => OfxWriter.Write(statement, asXml: false),
            1 => OfxWriter.Write(statement, asXml: true),
            2 => CamtWriter.Write(statement, 2),
            3 => CamtWriter.Write(statement, 8),
            4 => Mt940Writer.Write(statement, hasEnvelope: true),
            _ => CsvWriter.Write(statement, new CsvDialect(';', ',', ".", "dd.MM.uuuu", AmountShape.Signed, true, true, true)),
        };

    private static readonly Gen<string> Scraps = Gen.OneOf(
        "<", ">", "&", "\"", ";", ",", "\n", "\r", ":61:", ":86:", "-}", "{4:", "<![CDATA[", "]]>", "<!--", "<STMTTRN>", "</BANKTRANLIST>", "<Ntry>", "&#x41;",
        "9999999999999999999", "-", "\u0000", "\u001b[2J", "\u202e", "\ud800", "\ufeff", "0,", "31.02.2026", ".", "EUR", "<Amt Ccy=\"EUR\">", "<?xml?>", "<!DOCTYPE a>");

    [Fact]
    public void Read_DamagedFile_ThrowsNothingAndIsClean() =>
        Gen.Select(Written, Gen.Select(Gen.Int[0, 5], Gen.Int[0, 100_000], Gen.Int[1, 400], Scraps).Array[1, 6], Gen.Bool).Sample((text, damages, asUtf16) =>
        {
            foreach ((int kind, int at, int length, string scrap) in damages)
            {
                text = Damaged(text, kind, at, length, scrap);
            }

            AssertHarmless(asUtf16 ? Encoding.Unicode.GetBytes(text) : Encoding.UTF8.GetBytes(text));
        });

    [Fact]
    public void Read_DamagedBytes_ThrowsNothingAndIsClean() =>
        Gen.Select(Written, Gen.Select(Gen.Int[0, 100_000], Gen.Byte).Array[1, 20]).Sample((text, damages) =>
        {
            byte[] bytes = Encoding.UTF8.GetBytes(text);
            foreach ((int at, byte value) in damages)
            {
                bytes[at % bytes.Length] = value;
            }

            AssertHarmless(bytes);
        });

    [Fact]
    public void Read_RandomScraps_ThrowsNothingAndIsClean() =>
        Gen.Select(Gen.OneOf("", "<OFX><STMTRS><CURDEF>EUR", "<BkToCstmrStmt><Stmt>", ":20:1\n:60F:C260101EUR1,\n", "Date;Amount\n2026-01-01;1,00\n"), Scraps.Array[0, 60])
            .Sample((start, scraps) => AssertHarmless(Encoding.UTF8.GetBytes(start + string.Concat(scraps))));

    [Fact]
    public void Read_RandomBytes_ThrowsNothingAndIsClean() => Gen.Byte.Array[0, 2_000].Sample(AssertHarmless);

    [Theory]
    [InlineData("", ";", "")]
    [InlineData("", "2026-01-01;1,00\n", "")]
    [InlineData("", "\"", "")]
    [InlineData("2026-01-01;1,00\n\"", "x;y\n", "")]
    [InlineData("<OFX><STMTRS><CURDEF>EUR", "<STMTTRN><TRNAMT>1<DTPOSTED>20260101", "")]
    [InlineData("<OFX><STMTRS><CURDEF>EUR<STMTTRN>", "<MEMO>x", "")]
    [InlineData("<OFX><STMTRS><MEMO>", "<BR>", "")]
    [InlineData("<OFX><STMTRS><MEMO>", "<![CDATA[", "")]
    [InlineData("<OFX><STMTRS><MEMO>", "&amp", "")]
    [InlineData("<OFX><STMTRS><MEMO>", "<", "")]
    [InlineData("<BkToCstmrStmt><Stmt>", "<a>", "")]
    [InlineData("<BkToCstmrStmt><Stmt>", "<Ntry/>", "</Stmt></BkToCstmrStmt>")]
    [InlineData("<BkToCstmrStmt><Stmt><Ntry>", "<a/>", "</Ntry></Stmt></BkToCstmrStmt>")]
    [InlineData("<BkToCstmrStmt><Stmt><Id>", "<![CDATA[x]]>", "</Id></Stmt></BkToCstmrStmt>")]
    [InlineData("<BkToCstmrStmt>", "<Stmt/>", "</BkToCstmrStmt>")]
    [InlineData(":20:1\n:60F:C260101EUR1,\n", ":61:260101D1,NTRFX\n", ":62F:C260101EUR1,\n")]
    [InlineData(":20:1\n:60F:C260101EUR1,\n:61:260101D1,NTRFX\n", ":86:/NAME/", "")]
    [InlineData(":20:1\n:60F:C260101EUR1,\n:61:260101D1,NTRFX\n:86:", "?20x", "")]
    [InlineData("", ":20:1\n", "")]
    [InlineData("", "@@", "")]
    [InlineData("", "{4:", "")]
    public void Read_SamePieceOverAndOver_TakesBoundedMemory(string before, string piece, string after)
    {
        const int size = 2_000_000;
        string text = before + string.Concat(Enumerable.Repeat(piece, size / piece.Length)) + after;
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        long allocated = GC.GetAllocatedBytesForCurrentThread();

        StatementFile read = StatementReader.Read(bytes, Options);

        allocated = GC.GetAllocatedBytesForCurrentThread() - allocated;
        Assert.True(allocated < MostAllocatedAtAll + (MostAllocatedPerByte * bytes.Length), $"{allocated:N0} bytes");
        Assert.True(read.Faults.Length <= 1_000);
    }

    [Fact]
    public void Read_LargerThanTheLimit_IsRefusedUnread()
    {
        StatementFile read = StatementReader.Read(new byte[(16 * 1024 * 1024) + 1], Options);

        Assert.Equal("The file is larger than 16 MB; ask the bank for a shorter period.", FaultTexts.Of(Assert.Single(read.Faults)));
    }

    [Theory]
    [InlineData("<!DOCTYPE Document [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><Document><BkToCstmrStmt><Stmt><Id>&b;</Id></Stmt></BkToCstmrStmt></Document>")]
    [InlineData("<!DOCTYPE Document SYSTEM \"file:///etc/passwd\"><Document><BkToCstmrStmt><Stmt/></BkToCstmrStmt></Document>")]
    [InlineData("<Document><BkToCstmrStmt><Stmt><Id>&unknown;</Id></Stmt></BkToCstmrStmt></Document>")]
    public void Read_XmlWithDtdOrEntities_IsRefused(string text)
    {
        StatementFile read = StatementReader.Read(Encoding.UTF8.GetBytes(text), Options);

        Assert.Empty(read.Statements);
        Assert.Equal(FaultKind.BrokenXml, Assert.Single(read.Faults).Kind);
    }

    [Fact]
    public void Read_XmlNestedTooDeep_IsRefusedWithItsLine()
    {
        string text = "<Document><BkToCstmrStmt>\n<Stmt>\n" + string.Concat(Enumerable.Repeat("<x>", 80));

        StatementFault fault = Assert.Single(StatementReader.Read(Encoding.UTF8.GetBytes(text), Options).Faults);

        Assert.Equal((FaultKind.TooDeep, 3), (fault.Kind, fault.Line));
    }

    [Theory]
    [InlineData(new byte[] { 0x25, 0x50, 0x44, 0x46, 0x2D, 0x31 }, "a PDF")]
    [InlineData(new byte[] { 0x50, 0x4B, 0x03, 0x04, 0x14 }, "a spreadsheet or a packed file")]
    [InlineData(new byte[] { 0xD0, 0xCF, 0x11, 0xE0, 0xA1 }, "a spreadsheet")]
    [InlineData(new byte[] { 0x1F, 0x8B, 0x08 }, "a packed file")]
    [InlineData(new byte[] { 0x89, 0x50, 0x4E, 0x47 }, "a picture")]
    public void Read_NoText_SaysWhatItIs(byte[] bytes, string name)
    {
        StatementFault fault = Assert.Single(StatementReader.Read(bytes, Options).Faults);

        Assert.Equal($"The file is {name}; ask the bank for CSV, OFX, camt.053 or MT940.", FaultTexts.Of(fault));
    }

    [Theory]
    [InlineData("", FaultKind.Empty)]
    [InlineData(" \r\n ", FaultKind.Empty)]
    [InlineData("Dear customer, your statement follows.", FaultKind.NotAStatement)]
    [InlineData("<html><body>Please log in</body></html>", FaultKind.NotAStatement)]
    [InlineData("<OFX></OFX>", FaultKind.NoStatement)]
    [InlineData("<Document><BkToCstmrStmt></BkToCstmrStmt></Document>", FaultKind.NoStatement)]
    [InlineData("<Document><BkToCstmrStmt><Stmt>", FaultKind.BrokenXml)]
    [InlineData("<OFX><STMTRS><CURDEF>ZZZ</STMTRS></OFX>", FaultKind.UnknownCurrency)]
    [InlineData(":20:1\n:25:2\n:60F:C260101ZZZ1,\n:62F:C260101ZZZ1,\n", FaultKind.UnknownCurrency)]
    public void Read_NoStatement_IsRefusedByKind(string text, FaultKind kind) =>
        Assert.Equal(kind, Assert.Single(StatementReader.Read(Encoding.UTF8.GetBytes(text), Options).Faults).Kind);

    private static string Damaged(string text, int kind, int at, int length, string scrap)
    {
        at = text.Length == 0 ? 0 : at % text.Length;
        int end = Math.Min(text.Length, at + length);
        return kind switch
        {
            0 => text[..at],
            1 => text[..at] + text[end..],
            2 => text[..at] + text[at..end] + text[at..],
            3 => text[..at] + scrap + text[end..],
            _ => text[..at] + scrap + text[at..],
        };
    }

    private static void AssertHarmless(byte[] bytes)
    {
        StatementFile read = StatementReader.Read(bytes, Options);
        Assert.True(read.Statements.Length + read.Faults.Length + read.Questions.Length > 0);
        Assert.All(read.Faults, fault => AssertClean(FaultTexts.Of(fault)));
        Assert.All(read.Questions, question => AssertClean(question.Written + string.Concat(question.Choices.Select(choice => choice.Reads))));
        foreach (Statement statement in read.Statements)
        {
            AssertClean(statement.Account + statement.Id);
            foreach (StatementLine line in statement.Lines.Concat(statement.Pending))
            {
                AssertClean(line.Party + line.PartyAccount + line.Text + line.Mandate + line.BankId + line.Reference + line.ChequeNumber);
                AssertClean(string.Concat(line.Parts.Select(part => part.Party + part.Text)));
                Assert.Equal(statement.Currency, line.Amount.Currency);
            }

            AddingUp.Of(statement);
            LineKey.Of(statement.Lines);
        }

        StatementChain.Of(read.Statements);
        AssertClean(SummaryJson.Of(StatementSummary.Of(read.Statements)));
    }

    private static void AssertClean(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            Assert.False(
                Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator,
                $"U+{rune.Value:X4} comes through.");
        }
    }
}
