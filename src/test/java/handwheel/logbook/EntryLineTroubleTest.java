package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryLineTroubleTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'k':'drawn','name':'a','nano':1} x      | 35 | there is text after the object.",
        "{'k':'drawn','name':'a','nano':1}{}      | 34 | there is text after the object.",
        "{'k':'drawn','name':'a','nano':1,'x':2}  | 34 | found key *x* where the end of the object"
            + " is expected.",
        "{'k':'drawn','name':'a'}                 | 24 | key *nano* is missing.",
        "{'k':'drawn','nano':1,'name':'a'}        | 14 | found key *nano* where *name* is expected.",
        "{'k':'drawn','name':'a','name':'a'}      | 25 | key *name* stands twice.",
        "{'k':'drawn','k':'drawn','nano':1}       | 14 | key *k* stands twice.",
        "{'k':'drawn','name':'a','nano':1,'nano':1}| 34 | key *nano* stands twice.",
      })
  void keysOutOfOrderAreTold(String line, int column, String message) {
    check(line, column, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'k':'drawn','name':7,'nano':1}          | 21 | *name* must be text in quotes.",
        "{'k':'drawn','name':null,'nano':1}       | 21 | *name* must be text in quotes.",
        "{'k':'drawn','name':'a','nano':'1'}      | 32 | *nano* must be a whole number.",
        "{'k':'drawn','name':'a','nano':true}     | 32 | *nano* must be a whole number.",
        "{'k':'drawn','name':'a','nano':1.0}      | 32 | *nano* is 1.0, but only plain whole numbers"
            + " are used.",
        "{'k':'drawn','name':'a','nano':1e3}      | 32 | *nano* is 1e3, but only plain whole numbers"
            + " are used.",
        "{'k':'drawn','name':'a','nano':-0}       | 32 | *nano* is -0, but only plain whole numbers"
            + " are used.",
        "{'k':'drawn','name':'a','nano':9223372036854775808} | 32 | *nano* is 9223372036854775808,"
            + " which is out of range.",
        "{'k':'cue','t':1,'id':'a','noticed':1}   | 37 | *noticed* must be true or false.",
        "{'k':'cue','t':1,'id':'a','noticed':TRUE}| 37 | this is not JSON (RFC 8259).",
        "{'k':'score','points':2147483648,'verdict':'a','lost':[]} | 23 | *points* is 2147483648,"
            + " which is out of range.",
      })
  void valuesOfAnotherTypeAreTold(String line, int column, String message) {
    check(line, column, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'k':'score','points':1,'verdict':'a','lost':[7]} | 48 | an object in braces is expected.",
        "{'k':'score','points':1,'verdict':'a','lost':[{'points':1}]} | 58 | key *type* is missing.",
        "{'k':'state','t':1,'sha':'a','gauge':[]} | 38 | *gauge* must be an object of whole numbers.",
        "{'k':'state','t':1,'sha':'a','gauge':{'b':1,'a':2}} | 45 | key *a* belongs before *b*.",
        "{'k':'state','t':1,'sha':'a','gauge':{'b':1,'b':2}} | 45 | key *b* stands twice.",
        "{'k':'state','t':1,'sha':'a','gauge':{'b':0.5}} | 43 | *b* is 0.5, but only plain whole"
            + " numbers are used.",
      })
  void listsAndMapsAreToldWhereTheyAreWrong(String line, int column, String message) {
    check(line, column, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'k':'heard','t': 1}                     | 18 | the same is written another way here; only"
            + " one form of a line is used.",
        "{'k':'heard', 't':1}                     | 14 | the same is written another way here; only"
            + " one form of a line is used.",
        "{'k':'heard','t':1                       | 19 | the line ends too early.",
        "{'k':'heard                              | 12 | the line ends too early.",
        "[]                                       | 1  | an object in braces is expected.",
        "7                                        | 1  | an object in braces is expected.",
        "{}                                       | 2  | key *k* is missing.",
        "{'t':1}                                  | 2  | found key *t* where *k* is expected.",
        "hello                                    | 1  | this is not JSON (RFC 8259).",
      })
  void whatIsNoLineOfOursIsTold(String line, int column, String message) {
    check(line, column, message);
  }

  /**
   * Apostrophes stand for quotation marks and asterisks for backquotes, to keep the tables plain.
   */
  private static void check(String line, int column, String message) {
    assertThat(EntryLine.read(line.replace('\'', '"')).trouble())
        .contains(new LineTrouble(column, message.replace('*', '`')));
  }

  @Test
  void anEmptyLineIsTrouble() {
    assertThat(EntryLine.read("").trouble())
        .contains(new LineTrouble(1, "the line ends too early."));
  }

  @Test
  void anUnknownKindIsToldWithTheKnownOnes() {
    assertThat(EntryLine.read("{\"k\":\"ordr\"}").trouble().orElseThrow().text())
        .startsWith("column 11: kind `ordr` is not known here, only run, drawn, caution, order,");
  }

  @Test
  void aboutAndEndAreNoEntries() {
    assertThat(EntryLine.read(SampleRun.ABOUT.line()).value()).isEmpty();
    assertThat(EntryLine.read(new End("over", "", "ff").line()).value()).isEmpty();
  }

  /** Whatever stands there, the answer is an entry that is written so, or a trouble. */
  @Test
  void noLineThrows() {
    Random random = new Random(20310203);
    for (Entry entry : SampleRun.entries()) {
      String line = EntryLine.write(entry);
      for (int i = 0; i < 2000; i++) {
        String spoilt = spoil(line, random);
        LineRead<Entry> read = EntryLine.read(spoilt);
        assertThat(read.value().isPresent()).isNotEqualTo(read.trouble().isPresent());
        read.value().ifPresent(e -> assertThat(EntryLine.write(e)).isEqualTo(spoilt));
        read.trouble().ifPresent(t -> assertThat(t.column()).isBetween(1, spoilt.length() + 1));
      }
    }
  }

  private static String spoil(String line, Random random) {
    String letters = "{}[]:,\"\\ 0123456789.-eutrfalsn/\u0000\n\uD800\uFEFF";
    StringBuilder text = new StringBuilder(line);
    for (int n = 1 + random.nextInt(3); n > 0 && text.length() > 0; n--) {
      int at = random.nextInt(text.length());
      char c = letters.charAt(random.nextInt(letters.length()));
      switch (random.nextInt(4)) {
        case 0 -> text.setCharAt(at, c);
        case 1 -> text.insert(at, c);
        case 2 -> text.deleteCharAt(at);
        default -> text.setLength(at);
      }
    }
    return text.toString();
  }
}
