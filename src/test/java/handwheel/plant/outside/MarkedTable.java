package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A table that a test writes into a page, between two comments that name it. The test fails when
 * the page says something else; with {@code -Dgolden.update=true} the table is written anew and is
 * to be read before it is kept.
 */
public final class MarkedTable {
  private static final Path FOLDER = Path.of("docs", "plant");

  private MarkedTable() {}

  /**
   * Holds a table of a page to what was found.
   *
   * @param page file name of the page
   * @param name name of the table
   * @param lines what it has to say
   */
  public static void check(String page, String name, List<String> lines) {
    Path file = FOLDER.resolve(page);
    String text = read(file);
    int from = from(text, name);
    int to = text.indexOf(end(name));
    if (Boolean.getBoolean("golden.update")) {
      write(file, text.substring(0, from) + String.join("\n", lines) + "\n" + text.substring(to));
    } else {
      assertThat(lines(page, name)).as("table %s of %s", name, file).isEqualTo(lines);
    }
  }

  /**
   * Reads a table as it stands.
   *
   * @param page file name of the page
   * @param name name of the table
   * @return its lines
   */
  public static List<String> lines(String page, String name) {
    String text = read(FOLDER.resolve(page));
    assertThat(text).as("%s has a place for the table", page).contains(end(name));
    return text.substring(from(text, name), text.indexOf(end(name))).lines().toList();
  }

  private static int from(String text, String name) {
    String begin = "<!-- table " + name + ", written by a test -->\n";
    assertThat(text).as("there is a place for the table").contains(begin);
    return text.indexOf(begin) + begin.length();
  }

  private static String end(String name) {
    return "<!-- end of table " + name + " -->\n";
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
