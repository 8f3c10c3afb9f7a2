package swardcase.serve;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import swardcase.reading.Table;

/**
 * What the page asks; what a question does not name is empty.
 *
 * @param view to be shown
 * @param rough whether a rough answer will do
 * @param part whether the answer alone is to be shown, without what stands around it
 * @param id of an answer that is kept
 * @param what number is to be explained
 * @param paddock of that number, by its place
 * @param levers where numbers were moved to, by the key of a {@link swardcase.page.Lever}
 * @param fixes choices made beforehand, such as {@code spray-fallow@2028}, by paddock
 * @param save whether changes of the files are to be saved
 * @param print of the files as the page read them
 * @param answers about a new farm, by the key of the question
 * @param keys of {@code farm.yaml}, as they were typed
 * @param tables rows by the name of the table
 */
record Request(
    String view,
    boolean rough,
    boolean part,
    String id,
    String what,
    int paddock,
    TreeMap<String, Double> levers,
    TreeMap<String, String> fixes,
    boolean save,
    String print,
    Map<String, String> answers,
    Map<String, String> keys,
    Map<String, List<Table.Line>> tables) {

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .defaultSetterInfo(JsonSetter.Value.construct(Nulls.AS_EMPTY, Nulls.FAIL))
          .build();

  /** The question of a request. */
  static Request of(JsonNode request) throws JsonProcessingException {
    return JSON.treeToValue(request, Request.class);
  }

  /** All that the user has changed. */
  Asked asked() {
    return new Asked(levers, fixes);
  }
}
