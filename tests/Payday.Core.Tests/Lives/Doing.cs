using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;

namespace Payday.Core.Tests.Lives;

/// <summary>A kind of event that a book knows, with what takes it back.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Do">Does it on a day, as a source of chance says; null where the book has nothing to do it to, or refuses it.</param>
internal sealed record Doing(string Name, Func<Book, Random, LocalDate, Done?> Do);

/// <summary>An event that was done.</summary>
/// <param name="Before">The book as if it had not been.</param>
/// <param name="Book">The book afterwards.</param>
/// <param name="Again">Does the same to another book.</param>
/// <param name="Undo">Takes it back from a book on a day.</param>
internal sealed record Done(Book Before, Book Book, Func<Book, Result<Book>> Again, Func<Book, LocalDate, Result<Book>> Undo);
