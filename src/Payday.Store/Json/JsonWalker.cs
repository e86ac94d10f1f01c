using System.Text.Json;

namespace Payday.Store.Json;

/// <summary>Walks the tokens of a JSON text and knows the place and the line of each.</summary>
internal ref struct JsonWalker
{
    private readonly ReadOnlySpan<byte> utf8;
    private readonly Stack<Level> levels = new();
    private Utf8JsonReader reader;
    private int countedTo;

    public JsonWalker(ReadOnlySpan<byte> utf8)
    {
        this.utf8 = utf8;
        // One level more than is allowed, so that the walk itself meets what is too deep and can say so.
        reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = JsonInput.MaxDepth + 1 });
    }

    /// <summary>The line of the token, from 1.</summary>
    public int Line { get; private set; } = 1;

    /// <summary>How many objects and lists are open.</summary>
    public readonly int Depth => levels.Count;

    /// <summary>What the token is.</summary>
    public readonly JsonTokenType Token => reader.TokenType;

    /// <summary>Where the token stands; for the name of a field, where its value stands.</summary>
    public readonly string Place => levels.TryPeek(out Level? level) ? level.Current : "";

    /// <summary>Goes to the next token.</summary>
    /// <exception cref="JsonException">The JSON is broken.</exception>
    public bool Next()
    {
        if (Token is JsonTokenType.StartObject or JsonTokenType.StartArray)
        {
            levels.Push(new Level(Place, Token == JsonTokenType.StartArray));
        }

        if (!reader.Read())
        {
            return false;
        }

        int start = (int)reader.TokenStartIndex;
        Line += utf8[countedTo..start].Count((byte)'\n');
        countedTo = start;
        if (Token is JsonTokenType.EndObject or JsonTokenType.EndArray)
        {
            levels.Pop();
        }
        else if (levels.TryPeek(out Level? level) && level.IsList)
        {
            level.Index++;
        }

        return true;
    }

    /// <summary>Reads the text of a string or the name of a field; a name counts for <see cref="Place"/> from here on.</summary>
    /// <param name="isNew">For a name, whether its object has no field of that name yet.</param>
    /// <returns>Whether it is text: an escape can spell half a character.</returns>
    public readonly bool TryText(out bool isNew)
    {
        isNew = true;
        try
        {
            if (Token == JsonTokenType.PropertyName)
            {
                isNew = levels.Peek().Enter(reader.GetString()!);
            }
            else if (reader.ValueIsEscaped)
            {
                reader.GetString();
            }

            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    private sealed class Level(string place, bool isList)
    {
        private readonly HashSet<string> names = new(StringComparer.Ordinal);
        private string? name;

        public bool IsList => isList;

        public int Index { get; set; } = -1;

        public string Current =>
            isList ? JsonPlace.Item(place, Index)
            : name is not null ? JsonPlace.Field(place, name)
            : place;

        public bool Enter(string next)
        {
            name = next;
            return names.Add(next);
        }
    }
}
