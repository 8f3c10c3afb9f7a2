package swardcase.intake;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Spot;
import swardcase.reading.TooMuchException;

/**
 * The parts of a workbook's archive, read one after the other and never beyond {@link ReadLimits}.
 * A part that nobody asks for is not unpacked.
 */
final class WorkbookParts implements Closeable {

  private static final String LIMIT = "http://www.oracle.com/xml/jaxp/properties/";
  private static final XMLInputFactory FACTORY = factory();
  private static final Spot WHOLE = new Spot(FarmWorkbook.FILE, 0);

  private static final String BYTES =
      "must not hold more than " + ReadLimits.UNPACKED_BYTES / 1_000_000 + " MB unpacked";
  private static final String PARTS = "must not have more than " + ReadLimits.PARTS + " parts";
  private static final String ELEMENTS =
      "must not hold more than " + ReadLimits.ELEMENTS + " elements: two a cell, two a text";
  private static final String NESTED =
      "must not have more than " + ReadLimits.NESTED_ELEMENTS + " elements within each other";
  private static final String ATTRIBUTES =
      "must not have more than " + ReadLimits.ATTRIBUTES + " attributes in an element";
  private static final String LONG_ATTRIBUTE =
      "must not have attributes longer than " + ReadLimits.CHARACTERS + " characters";

  /** The words of the XML reader of the JDK for a tag with more attributes than it may have. */
  private static final String TOO_MANY_ATTRIBUTES = "JAXP00010002";

  /** The same for elements too deep within each other. */
  private static final String TOO_DEEP = "JAXP00010006";

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final ZipFile zip;
  private final Map<String, ZipEntry> parts = new HashMap<>();
  private long bytes;
  private int elements;

  /** Opens an archive; nothing is unpacked yet. */
  WorkbookParts(Path file) throws IOException {
    zip = new ZipFile(file.toFile());
    Iterator<? extends ZipEntry> entries = zip.entries().asIterator();
    while (entries.hasNext() && parts.size() <= ReadLimits.PARTS) {
      ZipEntry part = entries.next();
      parts.putIfAbsent(part.getName().toLowerCase(Locale.ROOT), part);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    // Declarations of namespaces then count as the attributes they are.
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    factory.setProperty(LIMIT + "elementAttributeLimit", ReadLimits.ATTRIBUTES);
    factory.setProperty(LIMIT + "maxElementDepth", ReadLimits.NESTED_ELEMENTS);
    return factory;
  }

  /** Throws if the workbook is beyond a limit. */
  static void refuse(boolean beyond, String rule) {
    TooMuchException.refuse(beyond, WHOLE, "", rule);
  }

  /** A part by its name, case aside. It must be UTF-8, as every spreadsheet writes it. */
  Optional<Part> find(String name) throws IOException, XMLStreamException {
    refuse(parts.size() > ReadLimits.PARTS, PARTS);
    ZipEntry entry = parts.get(name.toLowerCase(Locale.ROOT));
    if (entry == null) {
      return Optional.empty();
    }
    InputStreamReader decoded =
        new InputStreamReader(
            counted(zip.getInputStream(entry)), StandardCharsets.UTF_8.newDecoder());
    BufferedReader text = new BufferedReader(decoded);
    text.mark(1);
    if (text.read() != BYTE_ORDER_MARK) {
      text.reset();
    }
    return Optional.of(new Part(FACTORY.createXMLStreamReader(text)));
  }

  /** A part that no workbook is without. */
  Part get(String name) throws IOException, XMLStreamException {
    return find(name).orElseThrow(() -> new IOException("there is no " + name));
  }

  /** What an archive says of the size of its parts may be a lie. */
  private InputStream counted(InputStream in) {
    return new FilterInputStream(in) {
      @Override
      public int read(byte[] to, int from, int most) throws IOException {
        int count = super.read(to, from, most);
        bytes += Math.max(0, count);
        refuse(bytes > ReadLimits.UNPACKED_BYTES, BYTES);
        return count;
      }
    };
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }

  /** The beginnings and ends of the elements of one part, in their order. */
  final class Part {

    private final XMLStreamReader reader;

    private Part(XMLStreamReader reader) {
      this.reader = reader;
    }

    /** Goes to the next beginning or end of an element, if there is one. */
    boolean next() throws XMLStreamException {
      while (reader.hasNext()) {
        int event = event();
        if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
          return true;
        }
      }
      return false;
    }

    private int event() throws XMLStreamException {
      try {
        int event = reader.next();
        elements += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
        refuse(elements > ReadLimits.ELEMENTS, ELEMENTS);
        refuse(event == XMLStreamConstants.DTD, "must not have a document type");
        return event;
      } catch (XMLStreamException broken) {
        String message = String.valueOf(broken.getMessage());
        refuse(message.contains(TOO_MANY_ATTRIBUTES), ATTRIBUTES);
        refuse(message.contains(TOO_DEEP), NESTED);
        throw broken;
      }
    }

    /** Whether an element of this name begins here, its namespace aside. */
    boolean begins(String name) {
      return reader.isStartElement() && is(name);
    }

    /** Whether an element of this name ends here. */
    boolean ends(String name) {
      return reader.isEndElement() && is(name);
    }

    private boolean is(String name) {
      String prefixed = reader.getLocalName();
      return prefixed.endsWith(name)
          && prefixed.indexOf(':') == prefixed.length() - name.length() - 1;
    }

    /** An attribute of the element that begins here, its namespace aside. */
    Optional<String> attribute(String name) {
      for (int i = 0; i < reader.getAttributeCount(); i++) {
        if (reader.getAttributeLocalName(i).equals(name)
            && !"xmlns".equals(reader.getAttributePrefix(i))) {
          String value = reader.getAttributeValue(i);
          refuse(value.length() > ReadLimits.CHARACTERS, LONG_ATTRIBUTE);
          return Optional.of(value);
        }
      }
      return Optional.empty();
    }

    /**
     * The characters of the element that begins here, those of elements in it aside. Not more than
     * one character beyond the limit of a cell is kept, so that the cell can be refused.
     */
    String text() throws XMLStreamException {
      StringBuilder text = new StringBuilder();
      for (int depth = 1; depth > 0; ) {
        int event = event();
        if (event == XMLStreamConstants.START_ELEMENT) {
          depth++;
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          depth--;
        } else if (depth == 1 && reader.hasText()) {
          int room = ReadLimits.CHARACTERS + 1 - text.length();
          int length = Math.min(room, reader.getTextLength());
          text.append(reader.getTextCharacters(), reader.getTextStart(), length);
        }
      }
      return text.toString();
    }

    /** The text of runs of letters, as they stand in one cell; how they are spoken is left out. */
    String runs(String name) throws XMLStreamException {
      StringBuilder text = new StringBuilder();
      while (next() && !ends(name)) {
        if (begins("t") && text.length() <= ReadLimits.CHARACTERS) {
          text.append(text());
        } else if (begins("rPh")) {
          text();
        }
      }
      return text.toString();
    }
  }
}
