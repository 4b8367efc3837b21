package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds docs/record-format.md and the program to each other. Its example was made by a Python
 * script (json and hashlib), not by this program.
 */
class RecordFormatTest {
  private static final String PAGE = page();

  static Stream<Class<?>> kinds() {
    return Stream.concat(
        AwkwardEntries.kinds(),
        Stream.of(
            About.class,
            End.class,
            Signed.class,
            LedgerLine.Numbered.class,
            LedgerLine.Finished.class,
            LedgerLine.Noted.class));
  }

  @Test
  void theExampleRecordHolds() {
    RunRecord record = RecordText.read(block("record").getBytes(StandardCharsets.UTF_8));
    assertThat(record.problems()).isEmpty();
    assertThat(record.lines()).hasSize(13);
    assertThat(PAGE).contains("Its digest is `" + record.digest().orElseThrow() + "`");
    assertThat(ChainedEntries.digestOf(record.entries())).isEqualTo(record.digest());
  }

  @Test
  void theExampleRecordIsWrittenAgainToTheSameBytes() {
    RunRecord record = RecordText.read(block("record").getBytes(StandardCharsets.UTF_8));
    StringBuilder text = new StringBuilder();
    Chain alone = new Chain();
    text.append(alone.append(record.about().orElseThrow().line())).append('\n');
    ChainedEntries chained = new ChainedEntries(line -> text.append(line).append('\n'));
    record.entries().forEach(chained::accept);
    chained.end(
        new End(
            record.end().orElseThrow().why(), record.end().orElseThrow().coached(), alone.last()));
    assertThat(text).hasToString(block("record"));
  }

  @Test
  void theExampleLedgerHoldsAndNamesTheExampleRecord() {
    LedgerBook book = LedgerText.read(block("ledger").getBytes(StandardCharsets.UTF_8));
    RunRecord record = RecordText.read(block("record").getBytes(StandardCharsets.UTF_8));
    assertThat(book.problems()).isEmpty();
    assertThat(book.lastDigest()).isEqualTo(record.digest().orElseThrow());
    assertThat(book.lastNo()).isEqualTo(record.about().orElseThrow().no());
    assertThat(book.runs().get(0).digest()).isEqualTo(record.about().orElseThrow().before());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyKindIsInTheTablesWithItsKeys(Class<?> kind) {
    assertThat(PAGE).contains("\n| `" + word(kind) + "` | " + keys(kind) + " |");
  }

  @Test
  void theKeysOfAChargeAreThere() {
    assertThat(PAGE).contains("a list of charges, each with " + keys(Entry.Loss.class) + " |");
  }

  @Test
  void theTablesNameNoOtherKind() {
    List<String> rows =
        Pattern.compile("^\\| `(?!k`)(\\w+)` \\|", Pattern.MULTILINE)
            .matcher(PAGE)
            .results()
            .map(m -> m.group(1))
            .toList();
    assertThat(rows)
        .containsExactlyInAnyOrderElementsOf(kinds().map(RecordFormatTest::word).toList());
  }

  private static String keys(Class<?> kind) {
    return Arrays.stream(kind.getRecordComponents())
        .map(RecordFormatTest::key)
        .collect(Collectors.joining(", "));
  }

  private static String key(RecordComponent part) {
    return "`" + part.getName() + "`" + (part.getType() == int.class ? " *32*" : "");
  }

  private static String word(Class<?> kind) {
    if (kind == About.class) {
      return "about";
    }
    if (kind == End.class) {
      return "end";
    }
    if (kind == LedgerLine.Numbered.class) {
      return new LedgerLine.Numbered(1, "", "").kind();
    }
    if (kind == LedgerLine.Finished.class) {
      return new LedgerLine.Finished(1, "", "").kind();
    }
    if (kind == LedgerLine.Noted.class) {
      return new LedgerLine.Noted(1, "", "", "").kind();
    }
    if (kind == Signed.class) {
      return "signed";
    }
    return AwkwardEntries.of(kind, "", 0).kind();
  }

  private static String block(String language) {
    Matcher m = Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL).matcher(PAGE);
    assertThat(m.find()).as(language).isTrue();
    return m.group(1);
  }

  private static String page() {
    try {
      return Files.readString(Path.of("docs", "record-format.md"), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
