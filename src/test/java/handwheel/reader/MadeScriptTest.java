package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.diagnostics.Finding;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Scripts that are made here: past a limit and so too long to keep, or not in UTF-8. */
final class MadeScriptTest {
  private static final Path GOLDENS = TestFiles.RESOURCES.resolve("scripts/made");
  private static final String GOOD = TestFiles.text(TestFiles.GOOD.resolve("small.yaml"));

  private static Read<Casualty> read(String name, String text) {
    return ScriptReader.read(name + ".yaml", TestFiles.bytes(text), TestFiles.smallShip());
  }

  private static void check(String name, String text) {
    check(name, TestFiles.bytes(text));
  }

  private static void check(String name, byte[] bytes) {
    Golden.check(
        GOLDENS.resolve(name + Golden.END),
        ScriptReader.read(name + ".yaml", bytes, TestFiles.smallShip()).findings());
  }

  private static String repeated(int count, String line) {
    return IntStream.range(0, count)
        .mapToObj(i -> line.replace("N", Integer.toString(i)))
        .collect(Collectors.joining());
  }

  @Test
  void tooLarge() {
    check("too-large", GOOD + repeated(Limits.FILE_BYTES, "#"));
  }

  @Test
  void asLargeAsItMayBe() {
    String filled = GOOD + repeated(Limits.FILE_BYTES - GOOD.length(), "#");

    assertThat(read("filled", filled).findings()).isEmpty();
  }

  @Test
  void latin1() {
    String text = GOOD.replace("Full power. You", "Full power, 15 \u00e0 20 hands. You");

    check("latin-1", text.getBytes(StandardCharsets.ISO_8859_1));
  }

  @Test
  void utf16() {
    check("utf-16", GOOD.getBytes(StandardCharsets.UTF_16));
  }

  @Test
  void tooMany() {
    String line = "  - {upon: said, wait: 1 s, say: everyone leave}\n";

    check("too-many", GOOD + repeated(Limits.SCRIPT_ITEMS, line));
  }

  @Test
  void asManyAsThereMayBe() {
    String line = "  - {upon: said, wait: 1 s, say: everyone leave}\n";

    assertThat(read("many", GOOD + repeated(Limits.SCRIPT_ITEMS - 4, line)).findings()).isEmpty();
  }

  @Test
  void moreFindings() {
    String text = GOOD + repeated(Limits.FINDINGS + 50, "note-N: a\n");
    List<Finding> findings = read("more-findings", text).findings();

    assertThat(findings).hasSize(Limits.FINDINGS + 1);
    Golden.check(
        GOLDENS.resolve("more-findings" + Golden.END),
        findings.subList(Limits.FINDINGS, Limits.FINDINGS + 1));
  }

  @Test
  void tooDeepWithoutEnd() {
    Read<Casualty> read = read("deep", "a: " + repeated(200_000, "["));

    assertThat(read.findings()).extracting(f -> f.id()).containsExactly("yaml.too-deep");
  }
}
