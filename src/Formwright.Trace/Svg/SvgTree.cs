using System.Xml;
using Formwright.Trace.Files;

namespace Formwright.Trace.Svg;

/// <summary>
/// Reads the XML of an SVG into <see cref="SvgNode"/>s. No DTD is processed and nothing is resolved: a plain DOCTYPE line is passed
/// over, one that declares anything is refused, and so is a reference to an entity.
/// </summary>
internal static class SvgTree
{
    internal const string Namespace = "http://www.w3.org/2000/svg";

    internal static SvgNode Read(ReadOnlyMemory<byte> bytes, string file)
    {
        using MemoryStream stream = new(bytes.ToArray(), writable: false);
        XmlReaderSettings settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = TraceLimits.MaxBytes,
            MaxCharactersFromEntities = 1,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
        };
        if (HasPlainDoctype(bytes.Span, file))
        {
            // Ignore: the DOCTYPE is skipped unread; there is no resolver either way.
            settings.DtdProcessing = DtdProcessing.Ignore;
        }

        try
        {
            using XmlReader reader = XmlReader.Create(stream, settings);
            return ReadRoot(reader, file);
        }
        catch (XmlException fault)
        {
            throw new TraceFault(
                file,
                fault.LineNumber,
                fault.LinePosition,
                "fault.xml",
                Sentence(fault)
            );
        }
        catch (Exception fault)
            when (fault
                    is ArgumentException
                        or NotSupportedException
                        or System.Text.DecoderFallbackException
            )
        {
            // An encoding that is not known or does not fit the bytes.
            throw new TraceFault(file, 1, 1, "fault.encoding");
        }
    }

    private static SvgNode ReadRoot(XmlReader reader, string file)
    {
        SvgNode? root = null;
        Stack<SvgNode> open = new();
        int count = 0;
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.EndElement)
            {
                open.Pop();
                continue;
            }

            if (reader.NodeType != XmlNodeType.Element)
            {
                continue;
            }

            IXmlLineInfo info = (IXmlLineInfo)reader;
            bool isSvg = reader.NamespaceURI is Namespace or "";
            SvgNode node = new(
                isSvg ? reader.LocalName : "",
                info.LineNumber,
                Math.Max(1, info.LinePosition - 1)
            );
            if (++count > TraceLimits.MaxElements)
            {
                throw new TraceFault(
                    file,
                    node.Line,
                    node.Column,
                    "fault.too-many-elements",
                    TraceLimits.MaxElements
                );
            }

            // The root, and each group within: open.Count is the depth.
            if (open.Count >= TraceLimits.MaxDepth * 4)
            {
                throw new TraceFault(
                    file,
                    node.Line,
                    node.Column,
                    "fault.too-deep",
                    TraceLimits.MaxDepth * 4
                );
            }

            if (root is null)
            {
                root =
                    node.Name == "svg"
                        ? node
                        : throw new TraceFault(
                            file,
                            node.Line,
                            node.Column,
                            "fault.no-svg",
                            reader.LocalName
                        );
            }
            else
            {
                open.Peek().Children.Add(node);
            }

            bool isEmpty = reader.IsEmptyElement;
            while (reader.MoveToNextAttribute())
            {
                // xlink:href and href mean the same; the plain one wins.
                if (reader.NamespaceURI.Length == 0)
                {
                    node.Attributes[reader.LocalName] = reader.Value;
                }
                else if (reader.LocalName == "href")
                {
                    node.Attributes.TryAdd("href", reader.Value);
                }
            }

            if (!isEmpty)
            {
                open.Push(node);
            }
        }

        return root ?? throw new TraceFault(file, 1, 1, "fault.no-svg", "");
    }

    /// <summary>Whether a DOCTYPE stands in the file that only names a document type.</summary>
    /// <exception cref="TraceFault">It declares entities or anything else.</exception>
    private static bool HasPlainDoctype(ReadOnlySpan<byte> bytes, string file)
    {
        int at = bytes.IndexOf("<!DOCTYPE"u8);
        if (at < 0)
        {
            // Also in UTF-16: there the reader itself refuses it.
            return false;
        }

        byte quote = 0;
        for (int i = at + 9; i < bytes.Length; i++)
        {
            byte each = bytes[i];
            if (quote != 0)
            {
                quote = each == quote ? (byte)0 : quote;
            }
            else if (each is (byte)'"' or (byte)'\'')
            {
                quote = each;
            }
            else if (each == (byte)'[')
            {
                int line = bytes[..i].Count((byte)'\n') + 1;
                int column = i - bytes[..i].LastIndexOf((byte)'\n');
                throw new TraceFault(file, line, column, "fault.dtd");
            }
            else if (each == (byte)'>')
            {
                return true;
            }
        }

        return true;
    }

    /// <summary>The parser's sentence without its own place, which the diagnostic gives.</summary>
    private static string Sentence(XmlException fault)
    {
        string text = fault.Message;
        int end = text.IndexOf(" Line ", StringComparison.Ordinal);
        return (end > 0 ? text[..end] : text).TrimEnd('.');
    }
}
