using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Texts;

/// <summary>What is wrong with an argument of a command line. One of the nested cases.</summary>
/// <param name="Given">What it is about: the option, what was given with it, or both.</param>
internal abstract record ArgumentFault(string Given) : EdgeFault
{
    /// <summary>What was given to an option is refused for a reason of its own.</summary>
    /// <param name="Given">The option.</param>
    /// <param name="Why">Why.</param>
    public sealed record Of(string Given, Fault Why) : ArgumentFault(Given);

    /// <summary>It is no pair of the kind that is wanted.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Like">A right one.</param>
    public sealed record NoPair(string Given, string Like) : ArgumentFault(Given);

    /// <summary>It is no line with a pot.</summary>
    public sealed record NoLine(string Given) : ArgumentFault(Given);

    /// <summary>It is no name with an amount.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="LongestName">The most characters of a name.</param>
    public sealed record NoNamedAmount(string Given, int LongestName) : ArgumentFault(Given);

    /// <summary>It doesn't say what is left of a pot.</summary>
    public sealed record NoCount(string Given) : ArgumentFault(Given);

    /// <summary>What is left of its pot is not given.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Pot">The pot.</param>
    public sealed record LeftNotGiven(string Given, string Pot) : ArgumentFault(Given);

    /// <summary>An amount is below zero.</summary>
    /// <param name="Given">The option.</param>
    /// <param name="Amount">What was given, as it was written.</param>
    public sealed record BelowZero(string Given, string Amount) : ArgumentFault(Given);

    /// <summary>It is no whole number within bounds.</summary>
    /// <param name="Least">The least.</param>
    /// <param name="Most">The most.</param>
    public sealed record NoWholeNumber(int Least, int Most) : ArgumentFault("");

    /// <summary>There is no such pot.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Pots">Those that there are.</param>
    public sealed record NoSuchPot(string Given, ImmutableArray<string> Pots) : ArgumentFault(Given);

    /// <summary>A text has too many characters.</summary>
    /// <param name="Given">The option.</param>
    /// <param name="Length">How many it has.</param>
    /// <param name="Most">How many it may have.</param>
    public sealed record TooLong(string Given, int Length, int Most) : ArgumentFault(Given);

    /// <summary>A month or year is none that the household has lived.</summary>
    /// <param name="Given">The month or year.</param>
    /// <param name="First">The first of them.</param>
    /// <param name="Last">The last.</param>
    public sealed record NoPeriod(string Given, string First, string Last) : ArgumentFault(Given);

    /// <summary>A day is still to come.</summary>
    /// <param name="Given">The option and the day.</param>
    public sealed record StillToCome(string Given) : ArgumentFault(Given);

    /// <summary>An account entry lacks its way, its amount or what it is for.</summary>
    public sealed record EntryUnfinished() : ArgumentFault("");

    /// <summary>Loose notes that were counted are told by their notes and nothing else.</summary>
    public sealed record CountedUnfinished() : ArgumentFault("");

    /// <summary>Nothing that money is for is called so.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Known">What there is.</param>
    public sealed record NoSuchPurpose(string Given, ImmutableArray<string> Known) : ArgumentFault(Given);

    /// <summary>There is no line of a statement of that number that isn't matched.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Lines">How many such lines there are.</param>
    public sealed record NoSuchBankLine(string Given, int Lines) : ArgumentFault(Given);

    /// <summary>Nothing is proposed for a line of a statement.</summary>
    public sealed record NothingProposed() : ArgumentFault("");

    /// <summary>There is no such bill or debt.</summary>
    /// <param name="Given">What was given.</param>
    /// <param name="Known">Those that there are.</param>
    public sealed record NoSuchOwner(string Given, ImmutableArray<string> Known) : ArgumentFault(Given);

    /// <summary>There is no such debt.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Debts">Those that there are.</param>
    public sealed record NoSuchDebt(string Given, ImmutableArray<string> Debts) : ArgumentFault(Given);

    /// <summary>It is neither a pot with an amount, nor a pot alone.</summary>
    /// <param name="Given">What was given.</param>
    public sealed record NoPart(string Given) : ArgumentFault(Given);

    /// <summary>A bill and a debt have the same name.</summary>
    /// <param name="Given">The name.</param>
    public sealed record TwoOwners(string Given) : ArgumentFault(Given);

    /// <summary>It names nothing that money can move on to.</summary>
    /// <param name="Given">What was given.</param>
    public sealed record NoTarget(string Given) : ArgumentFault(Given);

    /// <summary>A pot is held in the account, so that it can't be counted.</summary>
    /// <param name="Given">The pot.</param>
    public sealed record NotInCash(string Given) : ArgumentFault(Given);

    /// <summary>There is no such income source.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Name">The name in it.</param>
    /// <param name="Near">The nearest names.</param>
    public sealed record NoSuchSource(string Given, string Name, NearNames Near) : ArgumentFault(Given);

    /// <summary>There is nothing of a kind that is called so.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Kind">What it should be, such as a bill or a pot.</param>
    /// <param name="Name">The name in it.</param>
    /// <param name="Near">The nearest names.</param>
    public sealed record NoSuchName(string Given, string Kind, string Name, NearNames Near) : ArgumentFault(Given);

    /// <summary>Several are called so.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Name">The name in it.</param>
    public sealed record SeveralOfName(string Given, string Name) : ArgumentFault(Given);

    /// <summary>The same is decided twice.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Name">What it is about.</param>
    public sealed record GivenTwice(string Given, string Name) : ArgumentFault(Given);

    /// <summary>A bill or a minimum isn't due before the next payday.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Name">The bill or debt.</param>
    public sealed record NotDue(string Given, string Name) : ArgumentFault(Given);

    /// <summary>Which of several days is meant isn't said, or it is none of them.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Name">What it is about.</param>
    /// <param name="Like">One that is right, such as <c>Rent@2026-03-06</c>.</param>
    /// <param name="Days">The days.</param>
    public sealed record WhichDay(string Given, string Name, string Like, ImmutableArray<LocalDate> Days) : ArgumentFault(Given);

    /// <summary>A cash pot has no part of the withdrawal.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Pot">The pot.</param>
    public sealed record NothingToWithdraw(string Given, string Pot) : ArgumentFault(Given);

    /// <summary>A source is given twice.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Source">The source.</param>
    public sealed record SourceTwice(string Given, string Source) : ArgumentFault(Given);

    /// <summary>What is given as a one-off is a source.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Source">The source.</param>
    public sealed record IsSource(string Given, string Source) : ArgumentFault(Given);

    /// <summary>More is to pay off an overdraft than it is.</summary>
    /// <param name="Owed">How large it is, zero or more.</param>
    public sealed record OverdraftLess(Money Owed) : ArgumentFault("--overdraft");

    /// <summary>A one-off is given twice.</summary>
    /// <param name="Given">The option and what was given.</param>
    /// <param name="Name">Its name.</param>
    public sealed record OneOffTwice(string Given, string Name) : ArgumentFault(Given);
}
