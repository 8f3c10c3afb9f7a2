package swardcase.serve;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.folder.FarmTrial;
import swardcase.folder.NewFarm;
import swardcase.folder.Typed;
import swardcase.folder.WholeFiles;
import swardcase.page.EditViews;
import swardcase.reading.CsvEdit;
import swardcase.reading.Table;
import swardcase.reading.YamlEdit;

/** Changes of the farm's files: checked, shown, and saved whole or not at all when that is said. */
final class Edits {

  private static final String YAML = "farm.yaml";
  private static final String CSV = ".csv";
  private static final JsonMapper JSON = new JsonMapper();

  /** The tables that can be changed, with the headings of one that is not there yet. */
  private static final Map<String, String> TABLES =
      new TreeMap<>(
          Map.of(
              "paddocks", "paddock,area_ha,clover_percent\n",
              "plants", "paddock,cultivar,plants\n",
              "records", "year,mob,ewes_joined,in_lamb,dry,lambs_marked,supplement_t\n"));

  private final Setup setup;
  private final Disk disk;
  private final NewFarm begun;

  Edits(Setup setup, Disk disk) {
    this.setup = setup;
    this.disk = disk;
    begun = new NewFarm(setup.tables());
  }

  /** The view in which tables are changed. */
  String tables() {
    Map<String, CsvEdit> tables = new TreeMap<>();
    TABLES.keySet().forEach(name -> tables.put(name, table(name)));
    return EditViews.tables(tables, disk.print(), List.copyOf(setup.tables().cultivars().keySet()));
  }

  private CsvEdit table(String name) {
    return new CsvEdit(name + CSV, text(name + CSV, TABLES.get(name)));
  }

  /** The view in which keys of the farm are changed. */
  String keys() {
    Disk.Read read = disk.read(Asked.NOTHING);
    return EditViews.keys(Keys.of(read.base().farm(), text(YAML, "")), read.print());
  }

  /** The view in which a new farm is begun, after what was answered so far. */
  String questions(Map<String, String> typed) {
    return EditViews.begin(begun.asked(begun.settled(typed)), typed);
  }

  /** The text of a file of the farm; another if it is not there. */
  private String text(String name, String otherwise) {
    try {
      Path file = setup.folder().resolve(name);
      return Files.exists(file) ? Files.readString(file) : otherwise;
    } catch (IOException unread) {
      String rule = "must be UTF-8 text that can be read";
      throw new FaultsException(List.of(new Fault(name, 0, "", rule, "", "")));
    }
  }

  /** What the page is told of changes: what is wrong with them, or what they do. */
  @JsonInclude(Include.NON_EMPTY)
  record Told(List<Wrong> faults, Boolean saved, String told) {

    static Reply wrong(List<Wrong> faults) throws JsonProcessingException {
      return new Told(faults, null, "").reply();
    }

    Reply reply() throws JsonProcessingException {
      return Reply.of(200, "json", JSON.writeValueAsBytes(this));
    }
  }

  /** A fault with the table, column and row in which it is told, where it has them. */
  @JsonInclude(Include.NON_NULL)
  record Wrong(String says, String table, String column, Integer row) {}

  /**
   * Checks changes and tells what they would do; saves them if that is asked for, nothing is wrong,
   * and the files are as they were when the page read them.
   */
  Reply edit(Request asked) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, Map<Integer, Integer>> rowOfLine = new HashMap<>();
    TABLES.keySet().stream()
        .filter(asked.tables()::containsKey)
        .forEach(name -> table(name, asked.tables().get(name), texts, rowOfLine));
    if (!asked.keys().isEmpty()) {
      texts.put(YAML, yaml(asked.keys()));
    }
    try {
      FarmTrial.read(texts, Optional.of(setup.folder()), setup.tables());
    } catch (FaultsException faults) {
      return Told.wrong(faults.faults().stream().map(fault -> wrong(fault, rowOfLine)).toList());
    }
    String difference =
        texts.entrySet().stream()
            .map(file -> difference(file.getKey(), file.getValue()))
            .collect(Collectors.joining());
    boolean same = disk.print().equals(asked.print());
    String refusal = same ? difference.isEmpty() ? "page.noChange" : "" : "page.elsewhere";
    return outcome(asked, texts, refusal, difference);
  }

  /** Makes the files of a new farm, where nothing stands yet. */
  Reply begin(Request asked) throws IOException {
    Map<String, String> answers = begun.settled(asked.answers());
    String problem = begun.refusal(answers);
    return problem.isEmpty()
        ? outcome(asked, begun.files(answers, setup.day()), setup.isEmpty() ? "" : "page.there", "")
        : Told.wrong(List.of(new Wrong(problem, null, null, null)));
  }

  /** What becomes of changes in which nothing is wrong. */
  private Reply outcome(Request asked, Map<String, String> texts, String refusal, String difference)
      throws IOException {
    boolean saved = refusal.isEmpty() && asked.save();
    if (saved) {
      WholeFiles.write(setup.folder(), texts);
    }
    String key = saved ? "page.saved" : refusal.isEmpty() ? "page.fine" : refusal;
    return new Told(List.of(), saved ? true : null, EditViews.told(key) + difference).reply();
  }

  private String difference(String name, String text) {
    return EditViews.difference(name, text(name, "").lines().toList(), text.lines().toList());
  }

  private void table(
      String name,
      List<Table.Line> rows,
      Map<String, String> texts,
      Map<String, Map<Integer, Integer>> rowOfLine) {
    Map<Integer, Integer> lineOfRow = new HashMap<>();
    String text = table(name).with(rows, lineOfRow);
    if (!text.equals(TABLES.get(name))) {
      texts.put(name + CSV, text);
      Map<Integer, Integer> rowOf = new HashMap<>();
      lineOfRow.forEach((row, line) -> rowOf.put(line, row));
      rowOfLine.put(name + CSV, rowOf);
    }
  }

  private String yaml(Map<String, String> typed) {
    YamlEdit yaml = new YamlEdit(text(YAML, ""));
    for (EditViews.Key key : Keys.of(disk.base().farm(), yaml.text())) {
      String now = typed.getOrDefault(key.id(), "");
      if (!now.equals(key.typed())) {
        yaml.set(key.path(), Typed.yaml(now));
      }
    }
    return yaml.text();
  }

  private static Wrong wrong(Fault fault, Map<String, Map<Integer, Integer>> rowOfLine) {
    return new Wrong(
        fault.message(),
        fault.file().replace(CSV, ""),
        fault.column(),
        rowOfLine.getOrDefault(fault.file(), Map.of()).get(fault.line()));
  }
}
