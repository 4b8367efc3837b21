package handwheel.debrief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page against the rules of axe-core for WCAG 2.0 to 2.2, A and AA, in a headless Chromium.
 * Needs a Chromium and {@code -Daxe.js=PATH/axe.min.js}; without them it says so and is skipped.
 * The program never uses either.
 */
final class AccessibilityTest {
  private static final String TAGS =
      "['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']";

  @TempDir Path folder;

  private static Optional<Path> chromium() {
    Stream<String> onPath =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator));
    return Stream.concat(onPath, Stream.of("/usr/bin", "/snap/bin", "/opt/google/chrome"))
        .flatMap(
            d -> Stream.of("chromium", "chromium-browser", "google-chrome").map(n -> Path.of(d, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static String need(String what, boolean isThere) {
    if (!isThere) {
      System.out.println("SKIPPED: the page was not checked for accessibility: no " + what + ".");
    }
    return what;
  }

  @Test
  void thePageBreaksNoRule() throws IOException, InterruptedException {
    Optional<Path> chromium = chromium();
    Path axe = Path.of(System.getProperty("axe.js", "axe.min.js"));
    assumeTrue(chromium.isPresent(), need("Chromium", chromium.isPresent()));
    assumeTrue(Files.isRegularFile(axe), need("axe.js", Files.isRegularFile(axe)));
    String html = Runs.debrief(Runs.orders(Runs.TOO_LATE).entries(), Optional.empty()).html();
    String found = run(chromium.get(), withAxe(html, Files.readString(axe)));
    assertThat(found).contains("AXE passes ").contains("violations: 0");
  }

  @Test
  void aPageThatBreaksARuleIsFound() throws IOException, InterruptedException {
    Optional<Path> chromium = chromium();
    Path axe = Path.of(System.getProperty("axe.js", "axe.min.js"));
    assumeTrue(chromium.isPresent(), need("Chromium", chromium.isPresent()));
    assumeTrue(Files.isRegularFile(axe), need("axe.js", Files.isRegularFile(axe)));
    String html = Runs.debrief(Runs.orders(List.of()).entries(), Optional.empty()).html();
    String bad = html.replace("<html lang=\"en\">", "<html>");
    assertThat(run(chromium.get(), withAxe(bad, Files.readString(axe)))).contains("html-has-lang");
  }

  /** The page's own rule against scripts is lifted for the checker alone. */
  private static String withAxe(String html, String axe) {
    String check =
        "axe.run(document,{runOnly:"
            + TAGS
            + "}).then(r=>{document.body.textContent="
            + "'AXE passes '+r.passes.length+' violations: '+r.violations.length+' '"
            + "+r.violations.map(v=>v.id).join(' ')})";
    return html.replace("default-src 'none'", "default-src 'none'; script-src 'unsafe-inline'")
        .replace(
            "</body>",
            "<script>"
                + axe.replace("</script>", "<\\/script>")
                + "</script><script>"
                + check
                + "</script></body>");
  }

  private String run(Path chromium, String html) throws IOException, InterruptedException {
    Path page = Files.writeString(folder.resolve("page.html"), html);
    Path out = folder.resolve("out.html");
    Process process =
        new ProcessBuilder(
                chromium.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("profile"),
                "--virtual-time-budget=20000",
                "--dump-dom",
                page.toUri().toString())
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return Files.readString(out, StandardCharsets.UTF_8);
  }
}
