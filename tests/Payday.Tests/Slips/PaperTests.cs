using System.Collections.Immutable;
using CsCheck;
using Payday.Slips;

namespace Payday.Tests.Slips;

public class PaperTests
{
    private static readonly Paper ThreeBlocks = new(["Head", ""], [["a1", "a2"], ["", "b1", "b2"], ["", "c1"]]);

    [Fact]
    public void Pages_AllFits_IsOnePageWithoutNumber() => Assert.Equal([ThreeBlocks.Lines], ThreeBlocks.Pages(9));

    [Fact]
    public void Pages_TooLong_RepeatsTheHeadAndKeepsBlocksTogether() =>
        Assert.Equal(
            [
                ["Head", "", "a1", "a2", "", "", "", "Page 1 of 2"],
                ["Head", "", "b1", "b2", "", "c1", "", "Page 2 of 2"],
            ],
            ThreeBlocks.Pages(8));

    [Fact]
    public void Pages_BlockLongerThanAPage_IsParted() =>
        Assert.Equal(
            [["1", "2", "", "Page 1 of 3"], ["3", "4", "", "Page 2 of 3"], ["5", "", "", "Page 3 of 3"]],
            new Paper([], [["1", "2", "3", "4", "5"]]).Pages(4));

    [Fact]
    public void Pages_HeadOfHalfAPage_StandsOnTheFirstAlone()
    {
        ImmutableArray<ImmutableArray<string>> pages = new Paper(["h1", "h2", "h3"], [["a"], ["b"], ["c"]]).Pages(5);
        Assert.Equal([["h1", "h2", "h3", "", "Page 1 of 2"], ["a", "b", "c", "", "Page 2 of 2"]], pages);
    }

    [Fact]
    public void Pages_AnyHeight_LoseNoLineAndFit() =>
        Gen.Select(Gen.Int[0, 5].Array[0, 8], Gen.Int[0, 6], Gen.Int[3, 14]).Sample(
            (blocks, head, height) =>
            {
                string[] heads = [.. Enumerable.Range(0, head).Select(i => $"h{i}")];
                var paper = new Paper([.. heads], [.. blocks.Select((lines, b) => Enumerable.Range(0, lines).Select(i => $"{b}.{i}").ToImmutableArray())]);
                var pages = paper.Pages(height);
                string[] body = [.. pages.SelectMany(page => page).Where(line => line.Contains('.', StringComparison.Ordinal))];
                return pages.All(page => page.Length <= height) && body.SequenceEqual(paper.Blocks.SelectMany(block => block));
            },
            iter: 1_000);
}
