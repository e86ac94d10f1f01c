using System.Text;

namespace Payday.Screens.Terminals;

/// <summary>
/// Cuts what a terminal sends into whole pieces: characters, the Esc key, sequences of known kinds, pastes. What is none of
/// them - half a sequence, one of no known kind, the mark of a paste's end without a paste - is dropped here, so that
/// nothing behind this ever meets it. What is held is bounded, whatever comes.
/// </summary>
/// <remarks>
/// ECMA-48, 5.4 and 5.6, has the shapes of sequences; pastes are marked as xterm does ("Bracketed Paste Mode"). Alt is no
/// part of any key here, so an escape character before another key is the Esc key: over a slow line the two come together.
/// </remarks>
internal sealed class InputReader
{
    /// <summary>A paste of more characters is told as one that is too long.</summary>
    public const int MostPasted = 1_000_000;

    private const char Esc = '\e';
    private const string PasteBegins = "\e[200~";
    private const string PasteEnds = "\e[201~";

    // The longest answer of a terminal that anything here asks for is far shorter.
    private const int LongestSequence = 4096;
    private const int MouseBytes = 3;

    private readonly StringBuilder held = new();
    private readonly StringBuilder pasted = new();
    private Part part = Part.Text;
    private int matched;
    private int skip;
    private bool dropped;

    /// <summary>Whether a paste has begun and not ended.</summary>
    public bool IsPasting => part == Part.Paste;

    /// <summary>Whether something is held that may be the beginning of a sequence.</summary>
    public bool IsHolding => part is not (Part.Text or Part.Paste);

    /// <summary>Whether what is held is an escape character alone: the Esc key, unless more comes at once.</summary>
    public bool HoldsEscape => part == Part.Escape;

    /// <summary>Takes what came.</summary>
    public IEnumerable<InputPiece> Take(string input)
    {
        foreach (char one in input)
        {
            foreach (InputPiece piece in Take(one))
            {
                yield return piece;
            }
        }
    }

    /// <summary>Nothing came for as long as a sequence may take: what is held is no sequence.</summary>
    public IEnumerable<InputPiece> Release()
    {
        if (part == Part.Escape)
        {
            yield return new InputPiece.Escape();
        }

        if (IsHolding)
        {
            Begin(Part.Text);
        }
    }

    /// <summary>The end of a paste stays away: what came of it is all there is.</summary>
    public IEnumerable<InputPiece> EndPaste() => IsPasting ? [Pasted()] : [];

    private IEnumerable<InputPiece> Take(char one) => part switch
    {
        Part.Paste => Paste(one),
        Part.Text => Text(one),
        Part.Escape => AfterEscape(one),
        Part.Single => Single(one),
        Part.Control => Control(one),
        _ => Words(one),
    };

    private IEnumerable<InputPiece> Text(char one)
    {
        if (skip > 0)
        {
            skip--;
            return [];
        }

        if (one == Esc)
        {
            Begin(Part.Escape);
            held.Append(one);
            return [];
        }

        return KnownKeys.IsNone(one) ? [] : [new InputPiece.Typed(one)];
    }

    private IEnumerable<InputPiece> AfterEscape(char one)
    {
        Part next = one switch
        {
            '[' => Part.Control,
            'O' => Part.Single,
            ']' or 'P' or '_' or '^' or 'X' => Part.Words,
            _ => Part.Text,
        };
        if (next == Part.Text)
        {
            Begin(Part.Text);
            return [new InputPiece.Escape(), .. Text(one)];
        }

        part = next;
        held.Append(one);
        return [];
    }

    private IEnumerable<InputPiece> Single(char one)
    {
        string text = held.Append(one).ToString();
        Begin(Part.Text);
        return one switch
        {
            (>= 'A' and <= 'D') or 'F' or 'H' or 'M' or (>= 'P' and <= 'S') or (>= 'j' and <= 'y') => [new InputPiece.Sequence(text)],
            < ' ' => Text(one),
            _ => [],
        };
    }

    private IEnumerable<InputPiece> Control(char one)
    {
        if (one is < ' ' or > '~')
        {
            // Broken off: what comes now begins anew.
            Begin(Part.Text);
            return Text(one);
        }

        dropped |= held.Length >= LongestSequence;
        if (!dropped)
        {
            held.Append(one);
        }

        return one >= '@' ? Whole(one) : [];
    }

    private IEnumerable<InputPiece> Whole(char final)
    {
        string text = held.ToString();
        bool isKnown = !dropped && KnownKeys.Has(text, final);
        Begin(Part.Text);
        if (text == PasteBegins)
        {
            Begin(Part.Paste);
            return [];
        }

        skip = text == "\e[M" ? MouseBytes : 0;
        return isKnown ? [new InputPiece.Sequence(text)] : [];
    }

    // A text of the terminal, such as its colours: up to BEL or ESC \.
    private IEnumerable<InputPiece> Words(char one)
    {
        bool isOver = one == '\a' || (one == '\\' && matched == 1);
        if (matched == 1 && !isOver)
        {
            Begin(Part.Escape);
            held.Append(Esc);
            return AfterEscape(one);
        }

        matched = one == Esc ? 1 : 0;
        dropped |= held.Length >= LongestSequence;
        if (!dropped)
        {
            held.Append(one);
        }

        if (!isOver)
        {
            return [];
        }

        string text = held.ToString();
        bool isWhole = !dropped;
        Begin(Part.Text);
        return isWhole ? [new InputPiece.Sequence(text)] : [];
    }

    private IEnumerable<InputPiece> Paste(char one)
    {
        matched = one == PasteEnds[matched] ? matched + 1 : one == Esc ? 1 : 0;
        if (pasted.Length <= MostPasted + PasteEnds.Length)
        {
            pasted.Append(one);
        }
        else
        {
            dropped = true;
        }

        if (matched < PasteEnds.Length)
        {
            return [];
        }

        // Of a paste that is too long the mark was not kept, and nothing is taken of it.
        pasted.Length = dropped ? pasted.Length : pasted.Length - PasteEnds.Length;
        return [Pasted()];
    }

    private InputPiece.Paste Pasted()
    {
        string text = pasted.Replace(PasteBegins, "").ToString();
        Begin(Part.Text);
        return new InputPiece.Paste(text.Length > MostPasted ? text[..(MostPasted + 1)] : text);
    }

    private void Begin(Part next)
    {
        part = next;
        held.Clear();
        pasted.Clear();
        matched = 0;
        dropped = false;
        if (pasted.Capacity > LongestSequence)
        {
            pasted.Capacity = LongestSequence;
        }
    }

    private enum Part
    {
        Text,
        Escape,
        Single,
        Control,
        Words,
        Paste,
    }
}
