using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Payday.Commands;
using Payday.Json;
using Payday.Store.HouseholdFiles;
using Payday.Tests.House;

namespace Payday.Tests.Commands;

/// <summary>The answers in JSON, their errors and the household file, held against the schemas in <c>demo</c> by an independent validator.</summary>
public sealed class SchemaTests(DemoShell demo) : IClassFixture<DemoShell>
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    private static readonly Lazy<JsonSchema> Household = new(() => JsonSchema.FromText(File.ReadAllText(PathOf("household.schema.json"))));

    [Fact]
    public void Schemas_InDemo_AreThoseOfTheProgram()
    {
        (string File, string Text)[] made = [("answers.schema.json", Text(Schemas.OfAnswers())), ("household.schema.json", Text(Schemas.OfTheHousehold()))];
        if (Environment.GetEnvironmentVariable("PAYDAY_WRITE_GOLDENS") is { Length: > 0 })
        {
            foreach ((string file, string text) in made)
            {
                File.WriteAllText(PathOf(file), text);
            }

            Assert.Fail("The schemas were written; look at them, then run again without PAYDAY_WRITE_GOLDENS.");
        }

        Assert.All(made, one => Assert.Equal(one.Text, File.ReadAllText(PathOf(one.File))));
    }

    [Fact]
    public void Answers_OfTheProgram_HaveASchemaEach()
    {
        Type[] answers = [.. typeof(ResultJson).GetCustomAttributesData().Where(one => one.AttributeType == typeof(System.Text.Json.Serialization.JsonSerializableAttribute)).Select(one => (Type)one.ConstructorArguments[0].Value!)];

        Assert.Equal([], answers.Except(Schemas.Answers.Select(one => one.Type)).Select(type => type.Name));
        Assert.NotEmpty(answers);
    }

    [Theory]
    [InlineData("show", "show")]
    [InlineData("show-pots", "show pots")]
    [InlineData("show-bills", "show bills")]
    [InlineData("debts", "show debts")]
    [InlineData("show-calendar", "show calendar")]
    [InlineData("show-year", "show year")]
    [InlineData("show-months", "show months")]
    [InlineData("report", "report")]
    [InlineData("show-ledger", "show ledger")]
    [InlineData("history", "history Food")]
    [InlineData("run", "run")]
    [InlineData("slip", "slip")]
    [InlineData("ahead", "ahead --paydays 3 --if Rent=1700")]
    [InlineData("status", "status")]
    [InlineData("fill", "fill")]
    [InlineData("count", "count")]
    [InlineData("difference", "difference")]
    [InlineData("return", "return")]
    [InlineData("due", "due")]
    [InlineData("move", "move Reserve Fuel 5 --show")]
    [InlineData("reconcile", "reconcile --balance 1000")]
    [InlineData("statement-rules", "statement --rules")]
    [InlineData("set", "set")]
    [InlineData("set", "change bill Rent")]
    [InlineData("done", "completion bash")]
    [InlineData("check", "check")]
    [InlineData("restore", "restore")]
    [InlineData("split", "split 70 --weeks 4 --unit 10")]
    [InlineData("debts", "debts --extra 50")]
    [InlineData("paydays", "paydays --from 2026-01-01 --to 2026-03-31")]
    [InlineData("error", "run --bill Rnt=5")]
    [InlineData("error", "runn")]
    [InlineData("error", "due --undo 9")]
    public void Answer_OfALook_IsAsItsSchemaSays(string name, string line) => Holds(name, demo.Closed.Run([.. line.Split(' '), "--json"]));

    [Fact]
    public void Answers_OfChanges_AreAsTheirSchemasSay()
    {
        using TestShell shell = TestShell.WithDemo();
        (string Name, string Line)[] life =
        [
            ("done", $"import|{PathOf("household.json")}"),
            ("set", "set|buffer-keeps|250"), ("set", "add|bill|Gym 29.90 5th"), ("set", "order|pot|Food|2"), ("set", "end|bill|Gym|2026-12-31"), ("set", "remove|bill|Gym"),
            ("run", "run|--keep|--pot|Fuel=90"), ("run", "run|--accept"), ("undo", "reopen"), ("run", "run|--accept"), ("undo", "undo|--payday"), ("run", "run|--accept"),
            ("fill-got", "fill|--got|20=30,10=11,5=20"), ("fill", "fill|--done"), ("spend", "spend|Food|7.40|--what|Shop"), ("count", "count|Food=20|--missing|Food=5|--name|jar"),
            ("difference", "difference|Food|--explained"), ("undo", "difference|--undo"), ("return", "return|--confirm"), ("due", "due|Phones"), ("move", "move|Reserve|Fuel|5"),
            ("entry", "entry|out|4.50|--for|buffer|--kind|fee"), ("statement-rules", "statement|--rule|corner shop=Food"), ("backup", "backup"), ("undo", "return|--undo"),
        ];

        Assert.All(life, step =>
        {
            Ran ran = shell.Run([.. step.Line.Split('|'), "--json"]);
            Assert.True(ran.Exit == 0, $"{step.Line}: {ran.Error}");
            Holds(step.Name, ran);
        });
    }

    [Fact]
    public void Answers_OfFilesWrittenAndRead_AreAsTheirSchemasSay()
    {
        using TestShell shell = MarchStatement.Lived();
        string march = shell.File("march.csv", MarchStatement.Csv());
        string[] year = [.. HalfYearExport.Before(new DateOnly(2026, 3, 6)).Select(file => shell.File(file.Name, file.Text))];
        (string Name, string Line)[] life =
        [
            ("done", $"slip|--pdf|{shell.In("slip.pdf")}"), ("done", $"slip|--filling|--pdf|{shell.In("filling.pdf")}"), ("done", $"report|--pdf|{shell.In("report.pdf")}"),
            ("done", $"calendar|--ics|{shell.In("days.ics")}"), ("done", $"export|--csv|{shell.In("csv")}"), ("done", "manual"), ("run", "demo"),
            ("statement-read", $"statement|{march}|--read|--currency|USD"), ("statement", $"statement|{march}"), ("statement", $"statement|{march}|--take|1=Food|--accept"), ("undo", "statement|--undo"),
            ("learn", $"learn|--currency|EUR|{string.Join('|', year)}"), ("spend", $"spend|--list|{shell.File("list.csv", "2026-03-30,12.40,Corner shop")}"),
            ("done", "pot|Week at the lake|--by|2027-06-01"),
            ("restore", "restore"), ("restore", "restore|database"), ("restore", "restore|database|--accept"),
        ];

        Assert.All(life, step =>
        {
            Ran ran = shell.Run([.. step.Line.Split('|'), "--json"]);
            Assert.True(ran.Exit == 0, $"{step.Line}: {ran.Error}");
            Holds(step.Name, ran);
        });
    }

    [Fact]
    public void Answer_OfLearningBesideAHousehold_IsAsItsSchemaSays()
    {
        using var shell = new TestShell();
        shell.Run("import", shell.File("alder.json", LearnCommandTests.Household)).Fine();

        Holds("learn", shell.Run(["learn", .. HalfYearExport.Before(new DateOnly(2026, 3, 6)).Select(file => shell.File(file.Name, file.Text)), "--json"]).Fine());
    }

    [Fact]
    public void Commands_EachWithAnAnswerOfItsOwn_AreHeldHere()
    {
        // What they say is no answer of their own: the questions of a conversation, a text for a person.
        string[] without = ["ask", "help"];
        string source = File.ReadAllText(Path.Combine(Repository.Root, "tests", "Payday.Tests", "Commands", "SchemaTests.cs"));
        using var shell = new TestShell();

        string[] open =
        [
            .. CommandTree.Build(new CommandShell(TextWriter.Null, TextWriter.Null, TextReader.Null, () => shell.Today, () => shell.Data)).Subcommands
                .Where(command => !command.Hidden).Select(command => command.Name).Except(without)
                .Where(name => !System.Text.RegularExpressions.Regex.IsMatch(source, $"\", \\$?\"{name}[ |\"]")),
        ];

        Assert.Equal([], open);
    }

    // The shape of an answer may depend on what there is: none of something, one that ends never, one that is late.
    [Theory]
    [InlineData("notes", "notes -", """{"currency":"USD","notes":["20","10"],"onHand":{"20":3},"source":{"kind":"machine","notes":["20"],"limit":"500"},"pots":[{"name":"Food","amount":"85.00","small":{"note":"10","atLeast":"20.00"}}]}""")]
    [InlineData("notes", "notes -", """{"currency":"EUR","notes":["50","20"],"pots":[{"name":"Food","amount":"60.00"}]}""")]
    [InlineData("setaside", "setaside -", """{"currency":"USD","held":"0.00","paydays":[{"date":"2026-01-02","income":"500.00"},{"date":"2026-01-16","income":"500.00"}],"dues":[{"bill":"Rent","date":"2026-01-20","amount":"600.00"}]}""")]
    [InlineData("setaside", "setaside - --mode as-they-fall", """{"currency":"USD","held":"0.00","paydays":[{"date":"2026-01-02","income":"500.00"}],"dues":[{"bill":"Rent","date":"2026-01-20","amount":"600.00"}]}""")]
    [InlineData("debts", "debts -", """{"currency":"USD","from":"2026-01-01","debts":[{"name":"Store card","balance":"1000.00","rate":"0.24","minimum":{"fixed":"20.00"}}]}""")]
    [InlineData("paydays", "paydays - --from 2026-01-01 --to 2026-12-31", """{"sources":[{"name":"Wage","schedule":{"kind":"fortnightly","anchor":"2026-01-02"},"shift":"none"}]}""")]
    public void Answer_OfACalculator_IsAsItsSchemaSays(string name, string line, string input)
    {
        using var shell = new TestShell();

        Holds(name, shell.RunOn(input, [.. line.Split(' '), "--json"]).Fine());
    }

    [Fact]
    public void Household_AsExportedAndAsTheDemo_IsAsTheSchemaSays()
    {
        JsonNode exported = JsonNode.Parse(demo.Begun.Run("export").Fine().Out)!;
        JsonNode file = JsonNode.Parse(File.ReadAllText(PathOf("household.json")))!;

        Assert.All((JsonNode[])[exported, file], household => Assert.True(IsValid(Household.Value, household)));
    }

    // The schema refuses what the program refuses as no field or no word of it.
    [Theory]
    [InlineData("fillday", "\"Friday\"")]
    [InlineData("fillDay", "\"friday\"")]
    [InlineData("notes", "[20]")]
    [InlineData("bufferKeeps", "300")]
    [InlineData("start", "\"5 Mar 2026\"")]
    [InlineData("bank", "{\"kind\":\"robot\"}")]
    public void Household_WithAFault_IsRefusedByBoth(string field, string value)
    {
        JsonNode household = JsonNode.Parse(HouseholdFile.Write(DemoCommand.Household()))!;
        household[field] = JsonNode.Parse(value);

        Assert.False(IsValid(Household.Value, household));
        Assert.False(HouseholdFile.Read(household.ToJsonString()).Ok);
    }

    [Fact]
    public void Import_OfAFileThatNamesItsSchema_TakesIt()
    {
        using var shell = new TestShell();
        JsonNode household = JsonNode.Parse(HouseholdFile.Write(DemoCommand.Household()))!;
        household.AsObject().Insert(0, "$schema", "household.schema.json");

        shell.Run("import", shell.File("household.json", household.ToJsonString())).Fine();

        Assert.True(IsValid(Household.Value, household));
        Assert.DoesNotContain("$schema", shell.Run("export").Fine().Out, StringComparison.Ordinal);
    }

    private static void Holds(string name, Ran ran)
    {
        JsonNode schemas = JsonNode.Parse(File.ReadAllText(PathOf("answers.schema.json")))!;
        JsonNode definition = schemas["$defs"]![name]!.DeepClone();
        JsonSchema schema = JsonSchema.FromText(new JsonObject { ["$defs"] = new JsonObject { [name] = definition }, ["$ref"] = $"#/$defs/{name}" }.ToJsonString());
        Assert.True(IsValid(schema, JsonNode.Parse(ran.Out)!), $"{name}: {ran.Out}");
    }

    private static bool IsValid(JsonSchema schema, JsonNode document) => schema.Evaluate(document, new EvaluationOptions { OutputFormat = OutputFormat.Flag }).IsValid;

    private static string Text(JsonNode schema) => schema.ToJsonString(Indented) + "\n";

    private static string PathOf(string file) => Path.Combine(Repository.Root, "demo", file);
}
