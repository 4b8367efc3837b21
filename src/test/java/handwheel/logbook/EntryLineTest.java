package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class EntryLineTest {
  private static final long[] FIGURES = {0, 1, -1, Long.MAX_VALUE, Long.MIN_VALUE, 1L << 53, 59810};

  static Stream<Class<?>> kinds() {
    return AwkwardEntries.kinds();
  }

  @Test
  void anOrderIsWrittenAsTheFormatSays() {
    Entry order = new Entry.OrderSaid(812, 790, 3, "checkman shut main-stop", 80, 7900, false);
    assertThat(EntryLine.write(order))
        .isEqualTo(
            "{\"k\":\"order\",\"t\":812,\"from\":790,\"n\":3,\"say\":\"checkman shut main-stop\","
                + "\"need\":80,\"hurt\":7900,\"jet\":false}");
  }

  @Test
  void thereAreTwentyFiveKinds() {
    assertThat(kinds()).hasSize(25);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyKindReadsBackAsItWasWritten(Class<?> kind) {
    for (String text : AwkwardEntries.TEXTS) {
      for (long figure : FIGURES) {
        Entry entry = AwkwardEntries.of(kind, text, figure);
        String line = EntryLine.write(entry);
        LineRead<Entry> read = EntryLine.read(line);
        assertThat(read.trouble()).as(line).isEmpty();
        assertThat(read.value()).contains(entry);
        assertThat(line.chars()).as("one line").noneMatch(c -> c < ' ' || c == 0x2028);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void keysStandInTheOrderOfTheComponents(Class<?> kind) {
    List<String> expected = new ArrayList<>(List.of("k"));
    Arrays.stream(kind.getRecordComponents()).forEach(c -> expected.add(c.getName()));
    Entry entry = AwkwardEntries.of(kind, "x", 1);
    assertThat(JsonParser.parseString(EntryLine.write(entry)).getAsJsonObject().keySet())
        .containsExactlyElementsOf(expected);
  }

  /** RFC 8259, section 7: quotation mark, reverse solidus and U+0000 to U+001F must be escaped. */
  @ParameterizedTest
  @CsvSource({
    "0022, \\\"",
    "005c, \\\\",
    "0000, \\u0000",
    "0008, \\b",
    "0009, \\t",
    "000a, \\n",
    "000b, \\u000b",
    "000c, \\f",
    "000d, \\r",
    "001f, \\u001f",
    "2028, \\u2028",
    "2029, \\u2029",
    "002f, /",
    "007f, \u007f",
    "00e9, \u00e9",
  })
  void charactersAreEscapedOneWay(String hex, String written) {
    String text = String.valueOf((char) Integer.parseInt(hex, 16));
    assertThat(EntryLine.write(new Entry.CautionShown(text)))
        .isEqualTo("{\"k\":\"caution\",\"id\":\"" + written + "\"}");
  }

  /** RFC 8259, section 7, has the G clef as its example of a pair of escapes; we write it plain. */
  @Test
  void onlyOneFormOfACharacterIsUnderstood() {
    assertThat(EntryLine.read("{\"k\":\"caution\",\"id\":\"\uD834\uDD1E\"}").value()).isPresent();
    assertThat(EntryLine.read("{\"k\":\"caution\",\"id\":\"\\uD834\\uDD1E\"}").trouble())
        .contains(
            new LineTrouble(
                22, "the same is written another way here; only one form of a line is used."));
  }

  /** RFC 7493, section 2.1: no text may hold half of a surrogate pair. */
  @Test
  void halfACharacterIsWrittenAsTheReplacementCharacter() {
    String line = EntryLine.write(new Entry.CautionShown("a\uDC00\uD834\uDD1E\uD800"));
    assertThat(line).isEqualTo("{\"k\":\"caution\",\"id\":\"a\uFFFD\uD834\uDD1E\uFFFD\"}");
    assertThat(EntryLine.read(line).value()).isPresent();
  }

  @Test
  void gaugesAreSortedHoweverTheyCome() {
    TreeMap<String, Long> backwards = new TreeMap<>(Collections.reverseOrder());
    backwards.put("a", 1L);
    backwards.put("b", 2L);
    assertThat(EntryLine.write(new Entry.State(1, "ff", backwards)))
        .endsWith("\"gauge\":{\"a\":1,\"b\":2}}");
  }
}
