package swardcase.serve;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import swardcase.page.EditViews.Asked;

/** What the page needs of those who started it: writing files, and beginning a new farm. */
public interface Store {

  /** Writes files all together or not at all. */
  void write(Map<Path, String> texts) throws IOException;

  /** The questions about a new farm that are to be asked after the answers so far. */
  List<Asked> questions(Map<String, String> answers);

  /** What is wrong with the answers, or still needed; blank if nothing is. */
  String problem(Map<String, String> answers);

  /** The files of a new farm, by name. */
  Map<String, String> files(Map<String, String> answers);
}
