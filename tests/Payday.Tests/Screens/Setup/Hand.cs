using System.Drawing;
using Payday.Screens.Frames;
using Payday.Screens.Leading;
using Payday.Screens.Shell;

namespace Payday.Tests.Screens.Setup;

/// <summary>Works the screens the way the shell does, key by key.</summary>
internal sealed class Hand
{
    private readonly ScreenStack screens;
    private CellEdit? edit;

    public Hand(Screen first) => screens = new ScreenStack(first, new ScreenMap().Lead);

    public Screen Top => screens.Top;

    /// <summary>What the screen said last.</summary>
    public string Message => Top.Message;

    /// <summary>Presses keys by the names that screens give them.</summary>
    public Hand Press(params string[] keys)
    {
        foreach (string key in keys)
        {
            Assert.Null(edit);
            Top.Message = "";
            Binding binding = Top.Bindings.FirstOrDefault(known => known.Name == key)
                ?? throw new InvalidOperationException($"{Top.Title} has no key {key}; it has {string.Join(", ", Top.Bindings.Select(known => known.Name))}.");
            Follow(binding.Do());
        }

        return this;
    }

    /// <summary>Pastes a text.</summary>
    public Hand Paste(string text)
    {
        Assert.Null(edit);
        Top.Message = "";
        Follow(Top.TakesPaste(text));
        return this;
    }

    /// <summary>Types into the field under the cursor, or into the cell that a key opened, and leaves it by Enter.</summary>
    public string? Try(string text)
    {
        CellEdit cell = edit ?? Top.Typing(text.Length == 0 ? "x" : text[..1]) ?? throw new InvalidOperationException($"Nothing can be typed in {Top.Title}: {Message}");
        edit = null;
        string? fault = cell.Accept(text);
        edit = fault is null ? cell.Next?.Invoke() : null;
        return fault;
    }

    /// <summary>Leaves the cell that a key opened by Enter, as it stands.</summary>
    public Hand Leave()
    {
        CellEdit cell = edit ?? throw new InvalidOperationException("No cell is open.");
        edit = null;
        Assert.Null(cell.Accept(cell.Text));
        return this;
    }

    /// <summary>Types what is taken.</summary>
    public Hand Type(params string[] texts)
    {
        Assert.All(texts, text => Assert.Null(Try(text)));
        return this;
    }

    /// <summary>Types a letter that picks a choice.</summary>
    public Hand Pick(string letter)
    {
        Assert.Null(Top.Typing(letter));
        Assert.Equal("", Message);
        return this;
    }

    /// <summary>Moves the cursor to the first row that has a text.</summary>
    public Hand To(string text)
    {
        for (int i = 0; i < 40; i++)
        {
            Press("Up");
        }

        for (int i = 0; i < 40; i++)
        {
            if (Shown(new Size(120, 60)).Any(line => line is [_, '>', ..] && line.Contains(text, StringComparison.Ordinal)))
            {
                return this;
            }

            Press("Down");
        }

        throw new InvalidOperationException($"{Top.Title} has no row with {text}:\n{string.Join('\n', Shown(new Size(120, 60)))}");
    }

    public string[] Shown(Size size)
    {
        TextFrame frame = Top.Draw(size);
        Assert.Equal(size.Height, frame.Lines.Length);
        Assert.All(frame.Lines, line => Assert.Equal(size.Width, Payday.Text.TextColumns.Width(line.Text)));
        return [.. frame.Lines.Select(line => line.Text.TrimEnd())];
    }

    private void Follow(Way way)
    {
        if (way is Way.Edit start)
        {
            edit = start.Cell;
        }
        else
        {
            screens.Follow(way);
        }
    }
}
