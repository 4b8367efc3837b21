package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page about findings, the findings there are, and the files that show them agree. */
final class FindingsPageTest {
  private static final Path PAGE = Path.of("docs/findings.md");
  private static final Pattern ID =
      Pattern.compile("(yaml|script|ship)(\\.[a-z0-9]+(-[a-z0-9]+)*)");
  private static final List<String> SECTIONS = sections();
  private static final String GOLDENS = goldens();

  private static List<String> sections() {
    return List.of(TestFiles.text(PAGE).split("(?m)^## ")).stream()
        .skip(1)
        .filter(s -> !s.startsWith("proof."))
        .toList();
  }

  private static String goldens() {
    try (Stream<Path> files = Files.walk(TestFiles.RESOURCES)) {
      return files
          .filter(f -> f.toString().endsWith(Golden.END))
          .sorted()
          .map(TestFiles::text)
          .collect(Collectors.joining());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void everyFindingHasASectionInTheSameOrder() {
    assertThat(SECTIONS)
        .extracting(s -> s.lines().findFirst().orElseThrow())
        .containsExactlyElementsOf(Arrays.stream(FindingId.values()).map(FindingId::id).toList());
  }

  @ParameterizedTest
  @EnumSource(FindingId.class)
  void sectionSaysWhatTheProgramSays(FindingId id) {
    String section = section(id);
    String[] parts = section.split("\n```\n", -1);

    assertThat(section)
        .contains("**" + id.severity().name().toLowerCase(Locale.ROOT) + "** " + id.meaning());
    assertThat(parts).hasSize(3);
    assertThat(parts[1]).contains("[" + id.id() + "]");
    assertThat(GOLDENS).contains(parts[1] + "\n");
    assertThat(parts[2]).startsWith("\nMend: ");
  }

  @ParameterizedTest
  @EnumSource(FindingId.class)
  void everyFindingIsShownByABadFile(FindingId id) {
    assertThat(GOLDENS).contains("[" + id.id() + "]");
  }

  @ParameterizedTest
  @EnumSource(FindingId.class)
  void idsAreDottedLowerKebab(FindingId id) {
    assertThat(id.id()).matches(ID);
    assertThat(id.meaning()).endsWith(".");
  }

  @Test
  void everyFindingIsSaidInOneLineWithAtMostOneOfMending() {
    assertThat(GOLDENS.lines())
        .allMatch(line -> line.startsWith("    ") || line.contains(".yaml:") || isWholeFile(line));
  }

  private static boolean isWholeFile(String line) {
    return line.contains(".yaml: error: ");
  }

  private static String section(FindingId id) {
    return SECTIONS.stream().filter(s -> s.startsWith(id.id() + "\n")).findFirst().orElseThrow();
  }
}
