package swardcase.sheet;

import java.util.Optional;

/**
 * What a case is told beside its numbers.
 *
 * @param preparedBy who prepared it
 * @param preparedFor for whom
 * @param notes what whoever prepared it has to say
 */
public record CaseHead(
    Optional<String> preparedBy, Optional<String> preparedFor, Optional<String> notes) {

  /** Nothing beside the numbers. */
  public static final CaseHead NONE =
      new CaseHead(Optional.empty(), Optional.empty(), Optional.empty());
}
