using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Payday.Tests.House;

/// <summary>The sources of a part of the program, compiled in memory to see which folder uses which.</summary>
/// <remarks>What the compiler itself sees: also constants, which are gone from an assembly, and what a documentation comment points at.</remarks>
internal sealed class PartSources
{
    private static readonly ConcurrentDictionary<string, PartSources> Known = new(StringComparer.Ordinal);

    private readonly string root;
    private readonly CSharpCompilation compilation;

    private PartSources(string part)
    {
        root = Path.Combine(Repository.Root, part);
        CSharpParseOptions options = CSharpParseOptions.Default.WithDocumentationMode(DocumentationMode.Parse).WithLanguageVersion(LanguageVersion.Latest);
        string own = Path.GetFileName(part);
        compilation = CSharpCompilation.Create(
            own + ".Seen",
            [.. Files(root).Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), options, file)), CSharpSyntaxTree.ParseText(Usings, options)],
            ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
                .Where(path => Path.GetFileNameWithoutExtension(path) is { } name && name != own && !(own == "Payday" && name == "payday"))
                .Select(path => MetadataReference.CreateFromFile(path)),
            // Without the flow of nulls, which costs half of the time and names no type.
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, allowUnsafe: true, nullableContextOptions: NullableContextOptions.Disable));
    }

    private static string Usings => string.Concat(
        ((string[])["System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Threading", "System.Threading.Tasks"])
            .Select(name => $"global using {name};\n"));

    /// <param name="part">Its folder, such as <c>src/Payday.Core</c>.</param>
    public static PartSources Of(string part) => Known.GetOrAdd(part, name => new PartSources(name));

    /// <summary>Its folders that have sources.</summary>
    public IEnumerable<string> Folders => Types.Select(type => type.Folder).Distinct();

    /// <summary>Its types by their folder.</summary>
    public IEnumerable<(string Folder, string Name)> Types =>
        from tree in compilation.SyntaxTrees
        where tree.FilePath.Length > 0
        from type in tree.GetRoot().DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
        where type.Parent is BaseNamespaceDeclarationSyntax
        select (Folder(tree), type.Identifier.Text);

    /// <summary>Each use of a folder by another, with the file and the name used.</summary>
    public IEnumerable<(string From, string To, string File, string Name)> Arrows => compilation.SyntaxTrees
        .Where(tree => tree.FilePath.Length > 0)
        .AsParallel()
        .SelectMany(tree => Used(tree).Select(used => (From: Folder(tree), used.To, File: Path.GetFileName(tree.FilePath), used.Name)).Where(arrow => arrow.From != arrow.To))
        .Distinct();

    private IEnumerable<(string To, string Name)> Used(SyntaxTree tree)
    {
        SemanticModel model = compilation.GetSemanticModel(tree);
        foreach (SimpleNameSyntax name in tree.GetRoot().DescendantNodes(descendIntoTrivia: true).OfType<SimpleNameSyntax>())
        {
            SymbolInfo seen = model.GetSymbolInfo(name);
            ISymbol? symbol = seen.Symbol ?? (seen.CandidateSymbols.IsEmpty ? null : seen.CandidateSymbols[0]);
            INamedTypeSymbol? type = symbol as INamedTypeSymbol ?? symbol?.ContainingType;
            foreach (SyntaxReference declared in type?.OriginalDefinition.DeclaringSyntaxReferences ?? [])
            {
                if (declared.SyntaxTree.FilePath.Length > 0)
                {
                    yield return (Folder(declared.SyntaxTree), type!.Name);
                }
            }
        }
    }

    private static IEnumerable<string> Files(string root) => Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
        .Where(file => Path.GetRelativePath(root, file).Split(Path.DirectorySeparatorChar) is not ["bin" or "obj", ..]);

    private string Folder(SyntaxTree tree) => Path.GetRelativePath(root, Path.GetDirectoryName(tree.FilePath)!).Replace(Path.DirectorySeparatorChar, '/');
}
