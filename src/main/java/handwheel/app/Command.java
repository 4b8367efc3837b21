package handwheel.app;

import java.io.IOException;
import java.util.List;

/** One command of the command line. */
interface Command {
  String name();

  /** Returns its arguments and, on the next line, what it does. */
  String summary();

  /**
   * Runs it.
   *
   * @param words behind the command
   * @return exit code
   * @throws Usage if the words are not understood
   * @throws IOException if a file cannot be read or written
   */
  int run(List<String> words, Console console) throws Usage, IOException;
}
