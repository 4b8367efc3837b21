package handwheel.app;

import handwheel.diagnostics.Excerpt;
import handwheel.diagnostics.Finding;
import handwheel.diagnostics.SourceSpot;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;

/** Findings as a person reads them: sorted by place, each with the line it speaks of. */
final class Told {
  private static final long LARGEST_BYTES = 300_000;

  private final TreeMap<String, List<String>> files = new TreeMap<>();

  private SourceSpot last = SourceSpot.wholeFile("");

  private Told() {}

  /** Returns the texts of findings, in order. */
  static List<String> of(Collection<Finding> findings) {
    Told told = new Told();
    return findings.stream().map(told::text).toList();
  }

  /** One place is shown once, however much is wrong there. */
  private String text(Finding finding) {
    boolean isShown = finding.spot().equals(last);
    last = finding.spot();
    List<String> shown = isShown ? List.of() : Excerpt.of(lines(last), last);
    String head = finding.text();
    int end = head.indexOf('\n');
    String first = end < 0 ? head : head.substring(0, end);
    String rest = end < 0 ? "" : head.substring(end);
    return shown.isEmpty() ? head : first + "\n" + String.join("\n", shown) + rest;
  }

  private List<String> lines(SourceSpot spot) {
    return files.computeIfAbsent(spot.file(), Told::read);
  }

  /** What cannot be read again is shown by its place alone. */
  private static List<String> read(String name) {
    try {
      Path file = Path.of(name);
      boolean isReadable = Files.isRegularFile(file) && Files.size(file) <= LARGEST_BYTES;
      return isReadable
          ? new String(Files.readAllBytes(file), StandardCharsets.UTF_8).lines().toList()
          : List.of();
    } catch (IOException | IllegalArgumentException e) {
      return List.of();
    }
  }
}
