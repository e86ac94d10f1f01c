using System.Text;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;
using Payday.Tests.Slips;
using Payday.Tests.Stored;
using Payday.Texts;

namespace Payday.Tests.Sentences;

/// <summary>What is said of household files with one thing wrong in each: where, on which line, and how the same reads in the forms.</summary>
public sealed class HouseholdFaultTests
{
    private static readonly string Good = File.ReadAllText(StoreFixture.PathOf(4, Path.Combine("..", "households", "every-kind.json")));

    /// <summary>One place each, and what stands there instead; nothing where the field is taken out. Several belong together where there is an &amp;.</summary>
    private static readonly string[] Changes =
    [
        // What kind of value stands there, and what should.
        "version", "name", "start", "currency", "fillDay", "holidays", "sources", "notes[0] = 100", "notes = {}", "notes = \"100\"", "notes = []", "notes = [\"20\",\"20\"]",
        "notes = null", "notes = true", "notes = false", "version = \"2\"", "version = {}", "version = 0", "version = 4", "version = 2.5", "version = 99999999999", "name = 5", "name = []", "name = {}", "name = null",
        "name = true", "start = 20260305", "start = {}", "start = null", "currency = 5", "currency = \"usd\"", "currency = \"XXX\"", "currency = null", "opening = []", "opening = null", "opening = \"0\"",
        "fillDay = 5", "fillDay = \"friday\"", "numbers = \"1.234.56\"", "numbers = 1", "setAsides = \"even\"", "cardRounding = \"down\"", "surplusOrder = \"name\"", "bills[0].shift = \"later\"", "bills[0].shift = null",
        "bills[0].essential = \"yes\"", "bills[0].essential = 1", "bills[0].essential", "bills[0].amount = 410", "bills[0].amount = 1e3", "bills[0].amount = {}", "bills[0].amount = null", "bills[0].amount = false", "bills[0].amount",
        "bills[0] = \"Rent\"", "bills[0] = null", "bills = {}", "sources = {}", "sources = null", "debts = 1", "pots = \"\"", "slipLines = \"one\"", "slipLines = [\"1\",\"2\",\"3\",\"4\",\"5\",\"6\",\"7\"]",
        "surprise = 1", "opening.cash = \"1\"", "sources[0].wage = \"1\"", "bills[0].nmae = \"x\"", "debts[0].intrest = \"1\"", "pots[0].step = 1", "bank.cash = true", "holidays.sets = \"US\"", "sources[0].schedule.day = 1",
        "debts[0].minimum.percent = \"0.1\"", "debts[1].minimum.fix = \"0.1\"", "pots[0].small.most = \"1\"", "pots[0].leftOver.bill = \"x\"", "bills[2].schedule.day.week = 1", "a\\u0007b = 1",

        // Texts and names.
        "name = \"\"", "name = \"   \"", "name = \"0123456789012345678901234567890123456789012345678901234567890\"", "name = \"A\\u001b[31mB\"", "name = \"A\\u200BB\"", "name = \"A\\u3164B\"", "name = \"A\\u202eB\"",
        "slipLines[0] = \"\"", "slipLines[0] = \"a\\nb\"", "bills[0].name = \"\"", "bills[0].name", "bills[0].name = 7", "bills[1].name = \"ground RENT\"", "sources[1].name = \"Mill\"", "debts[1].name = \"Roof loan\"", "pots[1].name = \"Food\"",
        "pots[0].name = \"Buffer\"", "pots[0].name = \"kept-back\"", "pots[0].name = \"Owed_back\"", "pots[0].name = \"left to place\"", "pots[0].name = \"Overdraft\"", "pots[0].name = \"wallet\"", "pots[0].name = \"Loose notes\"",
        "pots[0].name = \"set aside\"", "bills[0].name = \"buffer\"", "debts[0].name = \"buffer\"", "sources[0].name = \"buffer\"", "pots[0].name = \"F\\u200Bood\"", "bills[0].name = \"R\\u2800ent\"",
        "bills[0].id = \"Rent\"", "bills[0].id = \"a--b\"", "bills[0].id = \"\"", "bills[0].id = 5", "bills[0].id = \"water\"", "pots[3].id = \"food\"", "pots[0].id = \"0123456789012345678901234567890123456789012345678901234567890\"",

        // Amounts.
        "bills[0].amount = \"-1\"", "bills[0].amount = \"\"", "bills[0].amount = \"-\"", "bills[0].amount = \"+\"", "bills[0].amount = \"1,50\"", "bills[0].amount = \"1.234\"", "bills[0].amount = \"1.\"", "bills[0].amount = \".\"",
        "bills[0].amount = \"twelve\"", "bills[0].amount = \"twelve and a good deal more than that\"", "bills[0].amount = \"12 USD\"", "bills[0].amount = \"12 eur\"", "bills[0].amount = \"1\\u001b2\"", "bills[0].amount = \"1\\u202e2\"", "bills[0].amount = \"1+2\"",
        "bills[0].amount = \"92233720368547758.08\"", "bills[0].amount = \"92233720368547758.07\"", "bills[0].amount = \"999999999999999999999999999999999999999999999999999999\"",
        "bills[0].amount = \"" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1111111111" + "1\"",
        "notes[0] = \"0\"", "notes[0] = \"-5\"", "coins[0] = \"0\"", "coins = [\"0.25\",\"0.250\"]", "coins = [\"0.25\",\"0.25\"]", "pots[5].target = \"0\"", "pots[8].unit = \"0\"", "pots[11].level = \"0\"", "pots[11].perPayday = \"0.00\"", "pots[0].small.atLeast = \"0\"",
        "bank.limit = \"0\"", "opening.account = \"-1\"", "opening.account", "bufferKeeps = \"-1\"", "bufferKeeps = 5", "opening.account = 5120.75", "debts[0].balance = \"-1\"", "pots[0].floor = \"-1\"", "pots[0].has = \"-1\"", "bills[0].setAside = \"-1\"",
        "debts[0].rate = 0.045", "debts[0].rate = \"4.5 %\"", "debts[0].rate = \"-0.1\"", "debts[0].rate = \"0.1234567\"", "debts[0].rate = \"19.99\"", "debts[0].rate = null", "debts[0].rate", "debts[0].rate = \"\"", "debts[1].minimum.percent = \"2\"",
        "debts[1].minimum.percent = 2", "debts[1].minimum.percent", "debts[1].minimum.floor", "debts[0].minimum = {}", "debts[0].minimum = \"160\"", "debts[0].minimum.fixed = \"-1\"", "debts[0].minimum",

        // Dates.
        "start = \"5.3.2026\"", "start = \"2026-3-5\"", "start = \"2026-13-05\"", "start = \"2026-00-05\"", "start = \"2026-02-30\"", "start = \"2026-04-31\"", "start = \"2026-04-00\"", "start = \"1899-12-31\"", "start = \"2200-01-01\"", "start = \"\\u001b2026\"",
        "sources[1].until = \"2026-01-30\"", "sources[1].until = \"2126-02-01\"", "bills[2].until = \"2026-01-30\"", "pots[5].by = \"2026-01-30\"", "pots[5].by = \"2126-02-01\"", "pots[6].settledTo = \"2026-01-01\"", "pots[5].by",
        "pots[7].finished = \"yes\"", "holidays.extra[0] = \"2026-08-32\"", "holidays.extra = \"2026-08-03\"", "holidays.set = \"DE\"", "holidays.set", "holidays = \"DE\"", "holidays = 5", "holidays = [\"2026-01-01\"]",

        // Amounts that change.
        "bills[0].later = \"1480\"", "bills[0].later = {\"from\":\"2027-01-01\",\"amount\":\"1480\"}", "bills[0].later = [5]", "bills[0].later = [{\"from\":\"2027-01-01\"}]", "bills[0].later = [{\"amount\":\"1480\"}]",
        "bills[0].later = [{\"from\":\"1.1.2027\",\"amount\":\"1480\"}]", "bills[0].later = [{\"from\":\"2027-01-01\",\"amount\":1480}]", "bills[0].later = [{\"from\":\"2027-01-01\",\"amount\":\"-1\"}]",
        "bills[0].later = [{\"from\":\"2026-01-30\",\"amount\":\"1480\"}]", "sources[0].later = [{\"from\":\"2126-02-01\",\"amount\":\"1480\"}]", "bills[0].later = [{\"from\":\"2027-01-01\",\"amount\":\"1480\",\"until\":\"2028-01-01\"}]",
        "bills[0].later = [{\"from\":\"2027-01-01\",\"amount\":\"1480\"},{\"from\":\"2027-01-01\",\"amount\":\"1500\"}]", "sources[0].later = [{\"from\":\"2027-01-01\",\"amount\":\"1480\"},{\"from\":\"2026-12-31\",\"amount\":\"1500\"}]",
        "pots[5].later = [{\"from\":\"2027-01-01\",\"amount\":\"0\"}]", "pots[8].later = [{\"from\":\"2027-01-01\",\"amount\":\"6\"}]", "debts[0].later = [{\"from\":\"2027-01-01\",\"amount\":\"6\"}]", "overdraft = \"-1\"", "overdraft = 300", "opening.account = \"-1.005\"",

        // Schedules.
        "sources[0].schedule", "sources[0].schedule = \"weekly\"", "sources[0].schedule.kind", "sources[0].schedule.kind = \"daily\"", "sources[0].schedule.kind = 7", "sources[0].schedule.anchor", "sources[0].schedule.anchor = \"Friday\"",
        "sources[2].schedule.weeks", "sources[2].schedule.weeks = 0", "sources[2].schedule.weeks = 521", "sources[2].schedule.weeks = \"4\"", "sources[3].schedule.days = [15]", "sources[3].schedule.days = [15,15]", "sources[3].schedule.days = [1,2,3]",
        "sources[3].schedule.days = 15", "sources[3].schedule.days", "sources[4].schedule.day = 0", "sources[4].schedule.day = 32", "sources[4].schedule.day = \"first\"", "sources[4].schedule.day = true", "sources[4].schedule.day",
        "sources[5].schedule.months = 0", "sources[5].schedule.months = 121", "sources[7].schedule.dates = \"2026-02-20\"", "sources[7].schedule.dates", "bills[2].schedule.day.nth = 6", "bills[2].schedule.day.nth", "bills[2].schedule.day.weekday = \"Tue\"",
        "bills[2].schedule.day.weekday", "debts[0].due = 32", "debts[0].due", "debts[0].due = null", "pots[5].repeats = \"yearly\"", "pots[5].repeats.kind = \"often\"",

        // Lists that depend on each other.
        "sources = []", "currency = \"CLP\" & notes & coins & bank & opening & debts & pots & bills & bufferKeeps", "currency = \"JPY\"", "opening.notesOnHand = {\"3\":1}", "opening.notesOnHand = {\"0\":1}", "opening.notesOnHand = {\"-5\":1}", "opening.notesOnHand = {\"five\":1}", "opening.notesOnHand = {\"20\":-1}",
        "opening.notesOnHand = {\"20\":1.5}", "opening.notesOnHand = {\"20\":1000001}", "opening.notesOnHand = {\"20\":\"1\"}", "opening.notesOnHand = {\"20\":1,\"20.00\":2}", "opening.notesOnHand = []",
        "notes = [] & opening.notesOnHand = {\"0\":1}", "bank.kind = \"robot\"", "bank.kind", "bank = \"teller\"", "bank.kind = \"teller\"", "bank.notes = [\"3\"]", "bank.notes = []", "bank.notes", "bank.limit = \"15\"", "bank.limit = 400",
        "pots[0].topNote = \"25\"", "pots[0].topNote = 20", "pots[0].topNote = \"0\"", "pots[0].small.note = \"3\"", "pots[0].small.note", "pots[0].small.atLeast", "pots[0].small = \"5\"", "pots[0].small.atLeast = \"120.01\"", "pots[12].small.atLeast = \"5.50\"", "pots[8].small = {\"note\":\"5\",\"atLeast\":\"131\"}", "pots[5].small = {\"note\":\"5\",\"atLeast\":\"901\"}",
        "pots[4].topNote = \"20\"", "pots[4].small = {\"note\":\"5\",\"atLeast\":\"5\"}", "pots[4].weeks = \"split\"", "pots[4].leftOver = \"buffer\"", "pots[0].weeks = \"once\"", "pots[1].weeks = \"never\"", "pots[0].held = \"bank\"", "pots[0].held", "pots[0].kind", "pots[0].kind = \"saving\"", "pots[0].kind = 3",
        "pots[0].per = \"day\"", "pots[0].per", "pots[0].rank = 0", "pots[0].rank = 10001", "pots[0].rank = \"1\"", "pots[1].rank = 1", "pots[0].leftOver = \"food\"", "pots[0].leftOver = {\"pot\":\"food\"}", "pots[0].leftOver = {\"pot\":\"tent\"}", "pots[0].leftOver = {\"debt\":\"tent\"}", "pots[0].leftOver = {}", "pots[0].leftOver = 5",
        "pots[0].leftOver = {\"pot\":5}", "pots[8].steps = 0", "pots[8].steps = 1001", "pots[8].order = \"up\"", "pots[8].steps", "pots[11].level", "pots[11].perPayday", "pots[5].target",
        "opening.account = \"100\"", "opening", "bills[0].setAside = \"5000\"", "pots[11].has = \"5000\"", "bills[0].amount = \"92233720368547.75\"", "pots[8].unit = \"992233720368.54\"",
    ];

    /// <summary>Texts that are no household file at all.</summary>
    private static readonly (string What, string Text)[] Texts =
    [
        ("nothing", ""),
        ("blanks", " \n\t "),
        ("a list", "[]"),
        ("a word", "\"hello\""),
        ("a number", "5"),
        ("null", "null"),
        ("an end too early", "{\n  \"name\": \"Weir\""),
        ("a quote too few", "{\"name"),
        ("a comment", "{\n  // mine\n  \"name\": 1}"),
        ("a comma too many", "{\n  \"name\": \"W\",\n}"),
        ("the other bracket", "{\"a\":[1}"),
        ("single quotes", "{'name':1}"),
        ("no comma", "{\"a\":1 \"b\":2}"),
        ("no colon", "{\"a\" 1}"),
        ("a second value", "{} {}"),
        ("half a character", "{\"name\":\"\\ud83d\"}"),
        ("a field twice", "{\"a\":{\"b\":1,\n\"b\":2}}"),
        ("a field twice, spelt otherwise", "{\"a\":1,\n\"\\u0061\":2}"),
        ("too deep", string.Concat(Enumerable.Repeat("[", 33))),
        ("another program's", "{\"version\": 7, \"whatever\": true}"),
    ];

    [Fact]
    public void Read_FileWithOneFault_SaysItAsRecorded() => Golden.Equal("file-faults", Changes.SelectMany(change => Said(change, change, ChangedFile.Of(Good, change))));

    [Fact]
    public void Read_NoHouseholdFile_SaysItAsRecorded() => Golden.Equal("file-no-household", Texts.SelectMany(text => Said("", text.What, text.Text)));

    [Fact]
    public void Read_OtherEncodings_AreRefusedAsRecorded() => Golden.Equal("file-bytes", new (string What, byte[] Bytes)[]
    {
        ("no UTF-8", [0x7B, 0xFF, 0xFE, 0x7D]),
        ("UTF-16", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(Good)]),
        ("the mark of UTF-8 before it", [.. Encoding.UTF8.Preamble, .. "[]"u8]),
        ("larger than any household", [.. Enumerable.Repeat((byte)' ', JsonInput.MaxBytes + 1)]),
    }.SelectMany(one => (string[])[one.What, .. HouseholdFile.Read(one.Bytes.AsMemory()).Faults.Select(fault => "  file: " + fault)]));

    /// <summary>More faults than anybody reads.</summary>
    [Fact]
    public void Read_AThousandFaults_SaysThatThereMayBeMore()
    {
        string[] faults = [.. HouseholdFile.Read(ChangedFile.Of(Good, "bills = [" + string.Join(',', Enumerable.Repeat("{}", 400)) + "]")).Faults.Select(fault => fault.ToString())];

        Golden.Equal("file-many-faults", [.. faults[..6], "...", .. faults[^2..]]);
    }

    private static IEnumerable<string> Said(string change, string what, string text)
    {
        JsonReading<Household> read = HouseholdFile.Read(text);
        yield return what.Length > 120 ? what[..120] + "..." : what;
        if (read.Ok)
        {
            yield return "  taken";
            yield break;
        }

        foreach (JsonFault fault in read.Faults)
        {
            yield return "  file: " + fault;
        }

        // What a form can hold is a draft; what is no draft at all is nothing that a form says.
        if (change.Length > 0 && Draft(text) is { } draft)
        {
            foreach (Fault fault in HouseholdCheck.Of(draft).Faults.Where(fault => fault is not DraftFault.Missing))
            {
                // The whole household is told so, where it is set up, see the faults page; and so beside the field that was just typed.
                NumberStyle style = draft.Settings.Numbers ?? NumberStyle.CommaPoint;
                string named = FormTexts.Named(fault, draft, style);
                string cell = FormTexts.Of(fault, style);
                yield return read.Faults.Any(one => one.Sentence == named) ? "  form: the same" : "  form: " + named;
                if (cell != named)
                {
                    yield return "  cell: " + cell;
                }
            }
        }
    }

    private static HouseholdDraft? Draft(string text) => JsonInput.Read(text, root => HouseholdReader.ReadDraft(root, new FileReading())).Value;
}
