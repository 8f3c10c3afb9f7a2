package swardcase.serve;

import com.fasterxml.jackson.databind.JsonNode;

/** What stands behind the guard. It knows names, not files: no path of a request is ever opened. */
interface Site extends AutoCloseable {

  /** What stands under a name. */
  Reply get(String name) throws Exception;

  /** What is answered to a question. */
  Reply post(String name, JsonNode asked) throws Exception;

  @Override
  default void close() {}
}
