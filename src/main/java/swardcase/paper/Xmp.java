package swardcase.paper;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import swardcase.check.VisibleText;

/** The metadata packet of the file, which names the two standards it keeps to. */
final class Xmp {

  private static final String PACKET =
      """
      <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
      <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
      <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
       xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
       xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
      <dc:title><rdf:Alt><rdf:li xml:lang="x-default">@title</rdf:li></rdf:Alt></dc:title>
      <dc:language><rdf:Bag><rdf:li>@language</rdf:li></rdf:Bag></dc:language>
      <pdf:Producer>@producer</pdf:Producer>
      <xmp:CreateDate>@dateT00:00:00Z</xmp:CreateDate>
      <xmp:ModifyDate>@dateT00:00:00Z</xmp:ModifyDate>
      <pdfaid:part>2</pdfaid:part>
      <pdfaid:conformance>A</pdfaid:conformance>
      <pdfuaid:part>1</pdfuaid:part>
      </rdf:Description>
      <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
       xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
       xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>Part of the standard</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      </rdf:RDF>
      </x:xmpmeta>
      <?xpacket end="r"?>
      """;

  private Xmp() {}

  static byte[] of(String title, String producer, LocalDate date, String language) {
    return PACKET
        .replace("@language", language)
        .replace("@date", date.toString())
        .replace("@producer", escaped(producer))
        .replace("@title", escaped(title))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String escaped(String text) {
    return VisibleText.of(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
