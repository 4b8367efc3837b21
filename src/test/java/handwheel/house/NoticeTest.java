package handwheel.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The packaged jar names the licence of every library that the build file puts into it. */
final class NoticeTest {
  private static final Pattern LIBRARY =
      Pattern.compile(
          "<dependency>\\s*<groupId>[^<]+</groupId>\\s*<artifactId>([^<]+)</artifactId>\\s*"
              + "<version>([^<]+)</version>\\s*</dependency>");

  @Test
  void namesEveryLibrary() throws IOException {
    String notice = Files.readString(Path.of("src/main/resources/META-INF/NOTICE"));
    List<MatchResult> libraries =
        LIBRARY.matcher(Files.readString(Path.of("pom.xml"))).results().toList();
    assertThat(libraries).hasSizeGreaterThanOrEqualTo(5);
    assertThat(libraries)
        .allSatisfy(
            library ->
                assertThat(notice)
                    .containsPattern(
                        "(?m)^" + library.group(1) + " +" + Pattern.quote(library.group(2)) + " "));
  }
}
