package swardcase.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF file with its structure tree, bookmarks and metadata, in the shape PDF/UA-1 (ISO 14289-1)
 * and PDF/A-2a (ISO 19005-2) ask for. Its bytes depend on what is put in and on nothing else.
 */
final class TaggedFile implements AutoCloseable {

  static final String LANGUAGE = "en-AU";

  private final PDDocument document;
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement top = new PDStructureElement("Document", root);
  private final PDDocumentOutline outline = new PDDocumentOutline();
  private final List<COSArray> parents = new ArrayList<>();
  private final Lettering lettering;
  private final LocalDate date;
  private final boolean drawn;

  /** A file with pages to come. */
  TaggedFile(String title, String producer, LocalDate date) {
    this.date = date;
    document = new PDDocument();
    lettering = new Lettering(document);
    drawn = true;
    document.setVersion(1.7f);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(LANGUAGE);
    PDMarkInfo marks = new PDMarkInfo();
    marks.setMarked(true);
    catalog.setMarkInfo(marks);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    catalog.setStructureTreeRoot(root);
    catalog.setDocumentOutline(outline);
    root.appendKid(top);
    describe(Lettering.tidy(title), Lettering.tidy(producer));
    addOutputIntent();
  }

  private TaggedFile(TaggedFile file) {
    date = file.date;
    document = new PDDocument();
    lettering = file.lettering;
    drawn = false;
  }

  /** A file of the same lettering on which nothing is drawn, to find how high things are. */
  TaggedFile trial() {
    return new TaggedFile(this);
  }

  private void describe(String title, String producer) {
    GregorianCalendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    day.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
    PDDocumentInformation information = document.getDocumentInformation();
    information.setTitle(title);
    information.setProducer(producer);
    information.setCreationDate(day);
    information.setModificationDate(day);
    try {
      PDMetadata metadata = new PDMetadata(document);
      metadata.importXMPMetadata(Xmp.of(title, producer, date, LANGUAGE));
      document.getDocumentCatalog().setMetadata(metadata);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private void addOutputIntent() {
    try (InputStream profile = TaggedFile.class.getResourceAsStream("srgb.icc")) {
      PDOutputIntent intent = new PDOutputIntent(document, profile);
      intent.setInfo("sRGB IEC61966-2.1");
      intent.setOutputCondition("sRGB IEC61966-2.1");
      intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
      intent.setRegistryName("http://www.color.org");
      document.getDocumentCatalog().addOutputIntent(intent);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The faces, which measure and break text. */
  Lettering lettering() {
    return lettering;
  }

  /** The element that holds all others. */
  PDStructureElement top() {
    return top;
  }

  /** How many pages there are. */
  int pageCount() {
    return parents.size();
  }

  /** A new A4 page to draw on. */
  Canvas newPage() {
    PDPage page = new PDPage(PDRectangle.A4);
    page.setStructParents(parents.size());
    page.getCOSObject().setName("Tabs", "S");
    parents.add(new COSArray());
    document.addPage(page);
    return drawn ? new Canvas(this, document, page) : new Canvas(this, page);
  }

  /** Draws on a page, from 1, before all that is on it. */
  Canvas before(int page) {
    return new Canvas(this, document, document.getPage(page - 1));
  }

  /** A new element at the end of {@code parent}. */
  PDStructureElement element(PDStructureNode parent, String type) {
    PDStructureElement element = new PDStructureElement(type, parent);
    parent.appendKid(element);
    return element;
  }

  /** Books marked content of the newest page for {@code element} and gives its number. */
  int mark(PDStructureElement element, PDPage page) {
    COSArray ofPage = parents.get(parents.size() - 1);
    int number = ofPage.size();
    ofPage.add(element.getCOSObject());
    if (element.getPage() == null) {
      element.setPage(page);
    }
    if (element.getPage().getCOSObject() == page.getCOSObject()) {
      element.appendKid(number);
    } else {
      PDMarkedContentReference reference = new PDMarkedContentReference();
      reference.setPage(page);
      reference.setMCID(number);
      element.appendKid(reference);
    }
    return number;
  }

  /** A bookmark to a place on the page, under {@code parent} or at the top if that is null. */
  PDOutlineItem bookmark(PDOutlineNode parent, String title, PDPage page, double fromTop) {
    PDPageXYZDestination place = new PDPageXYZDestination();
    place.setPage(page);
    place.setTop((int) (Canvas.HEIGHT - fromTop));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(Lettering.tidy(title));
    item.setDestination(place);
    (parent == null ? outline : parent).addLast(item);
    return item;
  }

  /** Ends the file and writes it. */
  void save(OutputStream out) throws IOException {
    COSArray numbers = new COSArray();
    for (int i = 0; i < parents.size(); i++) {
      numbers.add(COSInteger.get(i));
      numbers.add(parents.get(i));
    }
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, numbers);
    root.setParentTree(new PDNumberTreeNode(tree, PDParentTreeValue.class));
    root.setParentTreeNextKey(parents.size());
    document.setDocumentId(date.toEpochDay());
    document.save(out);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
