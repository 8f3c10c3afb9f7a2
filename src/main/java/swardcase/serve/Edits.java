package swardcase.serve;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.intake.FarmFolder;
import swardcase.page.EditViews;
import swardcase.reading.CsvEdit;
import swardcase.reading.YamlEdit;

/** Changes of the farm's files: checked, shown, and saved whole or not at all when that is said. */
final class Edits {

  private static final String YAML = "farm.yaml";
  private static final String CSV = ".csv";

  /** The tables that can be changed, with the headings of one that is not there yet. */
  private static final Map<String, String> TABLES =
      new TreeMap<>(
          Map.of(
              "paddocks", "paddock,area_ha,clover_percent\n",
              "plants", "paddock,cultivar,plants\n",
              "records", "year,mob,ewes_joined,in_lamb,dry,lambs_marked,supplement_t\n"));

  private final Setup setup;
  private final Disk disk;

  Edits(Setup setup) {
    this.setup = setup;
    disk = new Disk(setup);
  }

  /** The tables as they stand in the files. */
  List<EditViews.Table> tables() {
    List<EditViews.Table> tables = new ArrayList<>();
    TABLES.forEach(
        (name, headings) -> {
          CsvEdit edit = new CsvEdit(name + CSV, text(name + CSV, headings));
          List<EditViews.Row> rows =
              edit.rows().stream().map(row -> new EditViews.Row(row.line(), row.cells())).toList();
          tables.add(new EditViews.Table(name, edit.columns(), rows));
        });
    return tables;
  }

  /** The text of a file of the farm; another if it is not there. */
  String text(String name, String otherwise) {
    try {
      Path file = setup.folder().resolve(name);
      return Files.exists(file) ? Files.readString(file) : otherwise;
    } catch (IOException unread) {
      String rule = "must be UTF-8 text that can be read";
      throw new FaultsException(List.of(new Fault(name, 0, "", rule, "", "")));
    }
  }

  /** New texts of files, and where the rows of the tables stand in them. */
  private record Changed(Map<String, String> texts, Map<String, Map<Integer, Integer>> lines) {}

  /**
   * Checks changes and tells what they would do; saves them if that is asked for, nothing is wrong,
   * and the files are as they were when the page read them.
   */
  Reply edit(JsonNode request) throws IOException {
    Changed changed = changed(request);
    ObjectNode told = JsonMapper.builder().build().createObjectNode();
    try {
      check(changed.texts());
    } catch (FaultsException faults) {
      faults(faults, changed, told.putArray("faults"));
      return json(told);
    }
    StringBuilder difference = new StringBuilder();
    changed
        .texts()
        .forEach(
            (name, text) ->
                difference.append(
                    EditViews.difference(
                        name, text(name, "").lines().toList(), text.lines().toList())));
    if (!disk.print().equals(request.path("print").asText())) {
      told.put("told", EditViews.told("page.elsewhere") + difference);
    } else if (difference.isEmpty()) {
      told.put("told", EditViews.told("page.noChange"));
    } else if (request.path("save").asBoolean()) {
      Map<Path, String> files = new LinkedHashMap<>();
      changed.texts().forEach((name, text) -> files.put(setup.folder().resolve(name), text));
      setup.store().write(files);
      told.put("saved", true).put("told", EditViews.told("page.saved") + difference);
    } else {
      told.put("told", EditViews.told("page.fine") + difference);
    }
    return json(told);
  }

  /** Makes the files of a new farm, where nothing stands yet. */
  Reply begin(JsonNode request) throws IOException {
    Map<String, String> answers = answers(request);
    ObjectNode told = JsonMapper.builder().build().createObjectNode();
    String problem = setup.store().problem(answers);
    boolean there = FarmFolder.FILES.stream().map(setup.folder()::resolve).anyMatch(Files::exists);
    if (!problem.isEmpty()) {
      told.putArray("faults").addObject().put("says", problem);
    } else if (there) {
      told.put("told", EditViews.told("page.there"));
    } else if (request.path("save").asBoolean()) {
      Map<Path, String> files = new LinkedHashMap<>();
      setup
          .store()
          .files(answers)
          .forEach((name, text) -> files.put(setup.folder().resolve(name), text));
      setup.store().write(files);
      told.put("saved", true).put("told", EditViews.told("page.saved"));
    } else {
      told.put("told", EditViews.told("page.fine"));
    }
    return json(told);
  }

  static Map<String, String> answers(JsonNode request) {
    Map<String, String> answers = new LinkedHashMap<>();
    request
        .path("answers")
        .properties()
        .forEach(one -> answers.put(one.getKey(), one.getValue().asText()));
    return answers;
  }

  private static Reply json(ObjectNode told) {
    return new Reply(
        200,
        "application/json; charset=utf-8",
        told.toString().getBytes(StandardCharsets.UTF_8),
        "");
  }

  private Changed changed(JsonNode request) {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, Map<Integer, Integer>> lines = new HashMap<>();
    TABLES.forEach(
        (name, headings) -> {
          if (request.path("tables").has(name)) {
            List<CsvEdit.Row> rows = new ArrayList<>();
            for (JsonNode row : request.path("tables").path(name)) {
              List<String> cells = new ArrayList<>();
              row.path("cells").forEach(cell -> cells.add(cell.asText()));
              rows.add(new CsvEdit.Row(row.path("line").asInt(), cells));
            }
            Map<Integer, Integer> lineOfRow = new HashMap<>();
            CsvEdit edit = new CsvEdit(name + CSV, text(name + CSV, headings));
            String text = edit.with(rows, lineOfRow);
            if (!text.equals(headings)) {
              texts.put(name + CSV, text);
              lines.put(name + CSV, lineOfRow);
            }
          }
        });
    if (request.has("keys")) {
      String before = text(YAML, "");
      YamlEdit yaml = new YamlEdit(before);
      for (Keys.Placed placed : Keys.of(disk.read(Asked.NOTHING).base().farm(), before)) {
        String typed = request.path("keys").path(placed.key().id()).asText();
        if (!typed.equals(placed.key().typed())) {
          yaml.set(placed.path(), Keys.yaml(typed));
        }
      }
      texts.put(YAML, yaml.text());
    }
    return new Changed(texts, lines);
  }

  /** Reads the farm as it would be, in a folder of its own. */
  private void check(Map<String, String> texts) throws IOException {
    Path trial = Files.createTempDirectory("swardcase");
    try {
      for (String name : FarmFolder.FILES) {
        Path file = setup.folder().resolve(name);
        if (texts.containsKey(name)) {
          Files.writeString(trial.resolve(name), texts.get(name));
        } else if (Files.isRegularFile(file)) {
          Files.copy(file, trial.resolve(name));
        }
      }
      FarmFolder.read(trial, setup.tables());
    } finally {
      for (String name : FarmFolder.FILES) {
        Files.deleteIfExists(trial.resolve(name));
      }
      Files.delete(trial);
    }
  }

  private static void faults(FaultsException all, Changed changed, ArrayNode to) {
    for (Fault fault : all.faults()) {
      ObjectNode one = to.addObject().put("says", fault.message());
      one.put("table", fault.file().replace(CSV, "")).put("column", fault.column());
      changed.lines().getOrDefault(fault.file(), Map.of()).entrySet().stream()
          .filter(row -> row.getValue() == fault.line())
          .forEach(row -> one.put("row", row.getKey()));
    }
  }
}
