package handwheel.house;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Text files beside the tests of this package. */
final class Resource {
  private Resource() {}

  /** Returns the whole text. */
  static String text(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the lines that are neither blank nor begin with {@code #}. */
  static List<String> lines(String name) {
    return text(name)
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }
}
