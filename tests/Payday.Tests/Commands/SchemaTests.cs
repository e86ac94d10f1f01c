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
            ("set", "set|buffer-keeps|250"), ("set", "add|bill|Gym 29.90 5th"), ("set", "order|pot|Food|2"), ("set", "remove|bill|Gym"),
            ("run", "run|--keep|--pot|Fuel=90"), ("run", "run|--accept"), ("undo", "reopen"), ("run", "run|--accept"),
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
