package handwheel.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the project's files to their places, and shows on a small project that each check bites.
 */
final class HouseFilesTest {
  @TempDir Path small;

  @BeforeEach
  void buildASmallProject() throws IOException {
    Files.createDirectories(small.resolve("src"));
    Files.createDirectories(small.resolve("target/x"));
    write("pom.xml", "<project/>");
    write("LICENSE", "");
    write("DEVELOPERS.md", "See [decisions](docs/decisions/README.md#top) and https://a.org/b.md.");
    write("README.md", "```\nmvn -B package\nmvn -B verify\n```\n");
    write(".ci/run", "#!/bin/sh\nmvn -B verify\n");
    write("drills/a.yaml", "id: a");
    write("docs/decisions/README.md", "- [One](0001-one.md)");
    write("docs/decisions/0001-one.md", "Back to [the list](README.md).");
    write(".editor/notes.md", "/" + "home/me");
    write("target/x/notes.md", "/" + "root/x");
  }

  private void write(String name, String text) throws IOException {
    Path file = small.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  static Stream<Function<HouseFiles, List<String>>> checks() {
    return Stream.of(
        HouseFiles::top,
        HouseFiles::decisions,
        HouseFiles::machinePaths,
        HouseFiles::words,
        HouseFiles::links,
        HouseFiles::pageNames,
        HouseFiles::commands);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void theProjectPasses(Function<HouseFiles, List<String>> check) {
    assertThat(check.apply(new HouseFiles(Path.of("").toAbsolutePath()))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void aSmallProjectPasses(Function<HouseFiles, List<String>> check) {
    assertThat(check.apply(new HouseFiles(small))).isEmpty();
  }

  static Stream<Arguments> broken() {
    return Stream.of(
        Arguments.of("build.gradle", "", "build.gradle: not on the list"),
        Arguments.of("docs/decisions/0002-two.md", "", "0002-two.md: not linked"),
        Arguments.of("docs/decisions/0001-uno.md", "(0001-one.md)", "number taken twice"),
        Arguments.of("docs/decisions/Two.md", "", "Two.md: not named like"),
        Arguments.of("src/a.txt", "in /" + "work/here", "src/a.txt:1: path of one machine"),
        Arguments.of("src/A.java", "\n// \"/" + "root/here\"", "src/A.java:2: path of one machine"),
        Arguments.of("drills/a.yaml", "id: /" + "home/me", "drills/a.yaml:1: path of one machine"),
        Arguments.of("docs/a.md", "a Sni" + "pe", "docs/a.md:1: word of the banned list"),
        Arguments.of("docs/a.md", "[b](b.txt)", "docs/a.md: leads nowhere: b.txt"),
        Arguments.of("src/A.java", "// see no" + "where.md", "names an absent page"),
        Arguments.of("README.md", "mvn -B verify", "README.md: no line `mvn ... package`"),
        Arguments.of("README.md", "mvn -B package", "README.md: no line `mvn ... verify`"),
        Arguments.of(".ci/run", "mvn -B test", "README.md: no line `mvn ... verify`"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void aBreachIsTold(String name, String text, String expected) throws IOException {
    write(name, text);
    assertThat(checks().flatMap(check -> check.apply(new HouseFiles(small)).stream()))
        .anyMatch(breach -> breach.contains(expected));
  }

  @Test
  void whatIsMissingIsTold() throws IOException {
    Files.delete(small.resolve("LICENSE"));
    assertThat(new HouseFiles(small).top()).containsExactly("LICENSE: missing");
  }
}
