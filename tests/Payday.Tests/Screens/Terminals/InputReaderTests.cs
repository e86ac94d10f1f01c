using CsCheck;
using Payday.Screens.Terminals;

namespace Payday.Tests.Screens.Terminals;

/// <summary>What terminals send, cut into whole pieces; shapes as in ECMA-48, 5.4 and 5.6, keys and marks as xterm sends them.</summary>
public class InputReaderTests
{
    private static readonly string[] Parts = ["\e", "[", "O", "]", "200~", "201~", "\e[200~", "\e[201~", "1;5", "A", "M", "\a", "\\", "x", "\r", "<", "?", "99999", "\u0085", "\uFFFF", "🙂"];

    // A paste is shown in round brackets, a sequence in angle ones, the Esc key as Esc.
    [Theory]
    [InlineData("abc", "abc")]
    [InlineData("\e[A\e[1;5C\e[3~\eOP", "<[A><[1;5C><[3~><OP>")]
    [InlineData("\e\ea\e[A", "EscEsca<[A>")]
    [InlineData("\e\r", "Esc\r")]
    [InlineData("x\e[200~one\ntwo\e[201~y", "x(one\ntwo)y")]
    [InlineData("\e[201~x", "x")]
    [InlineData("\e[200~\e[201~", "()")]
    [InlineData("\e[200~a\e[200~b\e[201~c\e[201~d", "(ab)cd")]
    [InlineData("\e[200~a\e[201\e[201~b", "(a\e[201)b")]
    [InlineData("\e[200~\e[31m\e[A\e[201~", "(\e[31m\e[A)")]
    [InlineData("\e[99~\e[0~\e[99999999999999999999~\e[;;;;;~x", "x")]
    [InlineData("\e[1;99999999A\e[38;5;1mx", "x")]
    [InlineData("\e[<0;10;5M\e[<0;10;5m\e[M !!x", "x")]
    [InlineData("\e[I\e[O\e[x", "")]
    [InlineData("\e[?62;22c\e[8;24;80t\e[?31u\e[24;80R", "<[?62;22c><[8;24;80t><[?31u><[24;80R>")]
    [InlineData("\e]11;rgb:0000/0000/0000\a\e]10;?\e\\x", "<]11;rgb:0000/0000/0000\a><]10;?\e\\>x")]
    [InlineData("\e]11;rgb\e[Ax", "<[A>x")]
    [InlineData("\e[12\ra", "\ra")]
    [InlineData("\e[1\e[A", "<[A>")]
    [InlineData("\0\u0085\u009b31m\uFFFF\uFFFE\uFFFDx", "31mx")]
    [InlineData("🙂é", "🙂é")]
    public void Take_Whole_GivesPieces(string sent, string pieces)
    {
        Assert.Equal(pieces, Shown(new InputReader().Take(sent)));
    }

    [Theory]
    [InlineData("\e", "Esc")]
    [InlineData("\e[", "")]
    [InlineData("\e[20", "")]
    [InlineData("\eO", "")]
    [InlineData("\e]52;c;", "")]
    public void Release_OfHalfASequence_GivesNoMoreThanEsc(string sent, string pieces)
    {
        var reader = new InputReader();
        Assert.Empty(reader.Take(sent));
        Assert.True(reader.IsHolding);
        Assert.Equal(pieces, Shown(reader.Release()));
        Assert.False(reader.IsHolding);
        Assert.Equal("x", Shown(reader.Take("x")));
    }

    [Theory]
    [InlineData("\e", true)]
    [InlineData("\e[", false)]
    [InlineData("\eO", false)]
    [InlineData("a", false)]
    public void HoldsEscape_AfterWhatCame_OnlyWhereItIsAlone(string came, bool expected)
    {
        var reader = new InputReader();
        _ = reader.Take(came).ToList();
        Assert.Equal(expected, reader.HoldsEscape);
    }

    [Fact]
    public void EndPaste_WithoutItsMark_GivesWhatCame()
    {
        var reader = new InputReader();
        Assert.Empty(reader.Take("\e[200~half\e[20"));
        Assert.True(reader.IsPasting);
        Assert.Equal("(half\e[20)", Shown(reader.EndPaste()));
        Assert.Equal("1~", Shown(reader.Take("1~")));
    }

    [Theory]
    [InlineData(InputReader.MostPasted)]
    [InlineData(InputReader.MostPasted + 1)]
    [InlineData(InputReader.MostPasted + 3)]
    [InlineData(InputReader.MostPasted + 100)]
    public void Take_LongPaste_IsHeldUpToItsMost(int length)
    {
        var paste = Assert.IsType<InputPiece.Paste>(Assert.Single(new InputReader().Take("\e[200~" + new string('x', length) + "\e[201~")));
        Assert.Equal(Math.Min(length, InputReader.MostPasted + 1), paste.Text.Length);
        Assert.DoesNotContain('\e', paste.Text);
    }

    [Fact]
    public void Take_ASequenceWithoutEnd_HoldsLittleOfIt()
    {
        var reader = new InputReader();
        Assert.Empty(reader.Take("\e]" + new string('x', 2_000_000)));
        Assert.Empty(reader.Take("\a"));
        Assert.Equal("a", Shown(reader.Take("a")));
    }

    // However a terminal's bytes are cut, the pieces are the same, and nothing throws.
    [Fact]
    public void Take_CutAnywhere_GivesTheSamePieces() => Gen.Select(
            Gen.Int[0, Parts.Length - 1].Select(at => Parts[at]).Array[0, 40].Select(string.Concat),
            Gen.Int[1, 7])
        .Sample((sent, size) =>
        {
            var whole = new InputReader();
            var cut = new InputReader();
            string pieces = Shown(whole.Take(sent).ToList());
            string parts = Shown(sent.Chunk(size).SelectMany(part => cut.Take(new string(part))).ToList());
            return pieces == parts && whole.IsHolding == cut.IsHolding && whole.IsPasting == cut.IsPasting;
        });

    private static string Shown(IEnumerable<InputPiece> pieces) => string.Concat(pieces.Select(piece => piece switch
    {
        InputPiece.Typed typed => typed.Value.ToString(),
        InputPiece.Paste paste => $"({paste.Text})",
        InputPiece.Sequence sequence => $"<{sequence.Text[1..]}>",
        _ => "Esc",
    }));
}
