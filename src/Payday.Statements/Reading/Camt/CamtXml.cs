using System.Xml;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Camt;

/// <summary>Reads XML piece by piece: no DTD, no entities of a file's own, nothing outside the file, bounded depth and size.</summary>
internal sealed class CamtXml : IDisposable
{
    // A batch of ten thousand payments in one entry has about three hundred thousand.
    private const int MostElements = 500_000;

    // Longer ones come in one piece or not at all, so that many small pieces can't be copied over and over.
    private const int LongestText = 4096;

    private readonly XmlReader reader;
    private readonly IXmlLineInfo lines;
    private readonly int linesBefore;

    /// <summary>Opens a text; blanks before its declaration are passed over.</summary>
    public CamtXml(string text)
    {
        string trimmed = text.TrimStart();
        linesBefore = new LinePlaces(text).At(text.Length - trimmed.Length) - 1;
        reader = XmlReader.Create(new StringReader(trimmed), new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
            MaxCharactersInDocument = ReadingLimits.MostBytes,
            MaxCharactersFromEntities = ReadingLimits.MostText,
        });
        lines = (IXmlLineInfo)reader;
    }

    /// <summary>The line of the file it has come to, from 1.</summary>
    public int Line => lines.LineNumber + linesBefore;

    /// <summary>Whether it stands on the beginning of an element.</summary>
    public bool IsStart => reader.NodeType == XmlNodeType.Element;

    /// <summary>Whether it stands on the end of an element.</summary>
    public bool IsEnd => reader.NodeType == XmlNodeType.EndElement;

    /// <summary>Whether the element it stands on has nothing in it.</summary>
    public bool IsEmpty => reader.IsEmptyElement;

    /// <summary>The local name of the element it stands on.</summary>
    public string Name => reader.LocalName;

    /// <summary>Goes on by one piece.</summary>
    /// <returns>False at the end.</returns>
    /// <exception cref="XmlException">The XML is broken or goes too deep.</exception>
    public bool Next()
    {
        bool more = reader.Read();
        return reader.Depth > ReadingLimits.MostDepth ? throw new CamtTooDeepException(Line) : more;
    }

    /// <summary>Reads the element it stands on with all that is in it, and stands on its end.</summary>
    /// <exception cref="XmlException">The XML is broken or goes too deep.</exception>
    public CamtElement ReadElement()
    {
        int count = 0;
        return ReadElement(ref count);
    }

    /// <inheritdoc/>
    public void Dispose() => reader.Dispose();

    private CamtElement ReadElement(ref int count)
    {
        if (++count > MostElements)
        {
            throw new CamtTooDeepException(Line);
        }

        var element = new CamtElement(Name, Line) { CurrencyCode = reader.GetAttribute("Ccy") ?? "" };
        if (IsEmpty)
        {
            return element;
        }

        while (Next() && !IsEnd)
        {
            if (IsStart)
            {
                element.Add(ReadElement(ref count));
            }
            else if (element.Text.Length < LongestText)
            {
                // Parts of one text come apart only where a CDATA section begins.
                element.Text += reader.Value.Trim();
            }
        }

        return element;
    }
}
