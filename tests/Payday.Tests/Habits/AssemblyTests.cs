using System.Reflection;
using Payday.Commands;
using Payday.Core.Households;
using Payday.Store;

namespace Payday.Tests.Habits;

/// <summary>What each part of the program shows to others, and what it is built on.</summary>
public sealed class AssemblyTests
{
    private static readonly Assembly Program = typeof(CommandTree).Assembly;
    private static readonly Assembly Core = typeof(Household).Assembly;
    private static readonly Assembly Store = typeof(BookStore).Assembly;

    public static TheoryData<string> Parts() => [.. new[] { Core, Store, Program }.Select(part => part.GetName().Name!)];

    [Fact]
    public void Program_OfItsTypes_NoneIsPublic() =>
        Assert.Empty(Program.GetExportedTypes().Select(type => type.FullName));

    // The analyzer that refuses single calls is off in the places that touch the machine; these are used in none.
    [Theory]
    [MemberData(nameof(Parts))]
    public void Part_NeedsNothingThatOpenSslIsBehind(string part) =>
        Assert.DoesNotContain(Of(part).GetReferencedAssemblies(), used => used.Name is "System.Security.Cryptography" or "System.Net.Security" or "System.Net.Http");

    [Fact]
    public void Store_HasNoConsoleAndStartsNoPrograms() =>
        Assert.DoesNotContain(Store.GetReferencedAssemblies(), used => used.Name is "System.Console" or "System.Diagnostics.Process");

    [Fact]
    public void Core_HasNoConsoleFilesOrProcesses() =>
        Assert.DoesNotContain(Core.GetReferencedAssemblies(), used => used.Name is "System.Console" or "System.Diagnostics.Process" or "System.IO.FileSystem");

    private static Assembly Of(string part) => new[] { Core, Store, Program }.Single(one => one.GetName().Name == part);
}
