package handwheel.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page about findings and what playing a script can find agree. */
final class ProofPageTest {
  private static final List<String> SECTIONS =
      Stream.of(ProverTest.text(Path.of("docs/findings.md")).split("(?m)^## "))
          .filter(s -> s.startsWith("proof."))
          .toList();

  private static final String GOLDENS = goldens();

  private static String goldens() {
    try (Stream<Path> files = Files.list(ProverTest.FOLDER)) {
      return files
          .filter(f -> f.toString().endsWith(".findings"))
          .sorted()
          .map(ProverTest::text)
          .collect(Collectors.joining());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyFindingHasASectionInTheSameOrder() {
    assertThat(SECTIONS)
        .extracting(s -> s.lines().findFirst().orElseThrow())
        .containsExactlyElementsOf(Arrays.stream(ProofId.values()).map(ProofId::id).toList());
  }

  @ParameterizedTest
  @EnumSource(ProofId.class)
  void sectionSaysWhatTheProgramSays(ProofId id) {
    String section =
        SECTIONS.stream().filter(s -> s.startsWith(id.id() + "\n")).findFirst().orElseThrow();
    String[] parts = section.split("\n```\n", -1);

    assertThat(section)
        .contains("**" + id.severity().name().toLowerCase(Locale.ROOT) + "** " + id.meaning());
    assertThat(parts).hasSize(3);
    assertThat(parts[1]).contains("[" + id.id() + "]");
    assertThat(GOLDENS).contains(parts[1] + "\n");
    assertThat(parts[2]).startsWith("\nMend: ");
  }
}
