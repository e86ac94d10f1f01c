using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.StatementTaking;
using Payday.Statements.Lines;

namespace Payday.Statements.Taking;

/// <summary>The statements of the household's account, where files hold those of others too.</summary>
internal static class ChosenAccount
{
    /// <summary>Those that the person names, and those whose files name no account; else those of the account that was taken before, or of the only one there is.</summary>
    public static Result<ImmutableArray<Statement>> Of(Book book, IReadOnlyList<Statement> statements, string? named)
    {
        string[] accounts = [.. statements.Select(statement => statement.Account).Distinct(StringComparer.Ordinal)];
        if (named is not null)
        {
            ImmutableArray<Statement> its = [.. statements.Where(statement => statement.Account.Length == 0 || IsSame(statement.Account, named))];
            return !its.Any(statement => IsSame(statement.Account, named)) ? Refused(new PlanFault.WhichAccount([.. accounts])) : Result.Of(its);
        }

        string known = TakenLines.Statements(book).LastOrDefault(statement => statement.Account.Length > 0)?.Account ?? "";
        ImmutableArray<Statement> same = [.. statements.Where(statement => statement.Account.Length == 0 || IsSame(statement.Account, known))];
        if (known.Length > 0 && same.Any(statement => statement.Account.Length > 0))
        {
            return Result.Of(same);
        }

        if (accounts.Length != 1)
        {
            return Refused(new PlanFault.WhichAccount([.. accounts]));
        }

        return statements[0].IsCard ? Refused(new PlanFault.OfACard(accounts[0]))
            : known.Length > 0 && accounts[0].Length > 0 ? Refused(new PlanFault.OtherAccount(accounts[0], known))
            : Result.Of<ImmutableArray<Statement>>([.. statements]);
    }

    private static bool IsSame(string one, string other) => string.Equals(Plain(one), Plain(other), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string account) => string.Concat(account.Where(char.IsLetterOrDigit));

    private static Result<ImmutableArray<Statement>> Refused(PlanFault fault) => Result.Refused<ImmutableArray<Statement>>(fault);
}
