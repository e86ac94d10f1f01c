using System.Collections.Immutable;
using System.Text.Json;
using Payday.Store.Formats;
using Payday.Store.Json;

namespace Payday.Store.Starts;

/// <summary>How the bank's files of a household that is set up are kept: <c>{"files":[{"path":"…","answers":[0]}],"taken":["…"],"left":["…"],"debts":["…"]}</c>.</summary>
internal static class StatementsFormat
{
    /// <summary>The most files; fewer are for a person to look through.</summary>
    public const int MostFiles = 200;

    private const int MostAnswers = 20;
    private const int MostKeys = 5_000;

    private const string Files = "files";
    private const string Path = "path";
    private const string Answers = "answers";
    private const string Taken = "taken";
    private const string Left = "left";
    private const string Debts = "debts";

    private static readonly LinesValue Keys = new(MostKeys);
    private static readonly CountValue Answer = new(0, int.MaxValue);

    /// <summary>Reads it; what can't be read is reported.</summary>
    public static StartStatements Read(JsonCursor at, FileReading reading)
    {
        JsonFields fields = at.Fields();
        return new StartStatements(
            [
                .. (fields.Find(Files)?.Items(MostFiles) ?? []).Select(file =>
                {
                    JsonFields one = file.Fields();
                    return new StartStatement(
                        one.Find(Path) is { } path ? FileValues.Line.Read(path, reading) ?? "" : "",
                        [.. (one.Find(Answers)?.Items(MostAnswers) ?? []).Select(answer => Answer.Read(answer, reading) ?? -1)]);
                }),
            ],
            Set(fields.Find(Taken), reading),
            Set(fields.Find(Left), reading))
        {
            Debts = Set(fields.Find(Debts), reading),
        };
    }

    /// <summary>Writes it.</summary>
    public static void Write(Utf8JsonWriter json, StartStatements statements)
    {
        json.WriteStartObject();
        json.WriteStartArray(Files);
        foreach (StartStatement file in statements.Files)
        {
            json.WriteStartObject();
            json.WriteString(Path, file.Path);
            json.WriteStartArray(Answers);
            foreach (int answer in file.Answers)
            {
                json.WriteNumberValue(answer);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WritePropertyName(Taken);
        Keys.Write(json, [.. statements.Taken], default);
        json.WritePropertyName(Left);
        Keys.Write(json, [.. statements.Left], default);
        if (!statements.Debts.IsEmpty)
        {
            json.WritePropertyName(Debts);
            Keys.Write(json, [.. statements.Debts], default);
        }

        json.WriteEndObject();
    }

    private static ImmutableSortedSet<string> Set(JsonCursor? at, FileReading reading) =>
        at is null ? StartStatements.None.Taken : (Keys.Read(at, reading) ?? []).ToImmutableSortedSet(StringComparer.Ordinal);
}
