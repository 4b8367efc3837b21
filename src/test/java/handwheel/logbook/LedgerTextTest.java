package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LedgerTextTest {
  private static final String DIGEST = "a1".repeat(32);
  private static final String END = "e2".repeat(32);

  private static final List<LedgerLine> LINES =
      List.of(
          new LedgerLine.Numbered(1, "0001-steam-leak-7.hwr", Chain.START),
          new LedgerLine.Finished(1, DIGEST, END),
          new LedgerLine.Numbered(2, "0002-steam-leak-8.hwr", DIGEST),
          new LedgerLine.Numbered(5, "0005-steam-leak-9.hwr", Chain.START));

  @Test
  void aLedgerReadsBackAsItsRuns() {
    LedgerBook book = LedgerText.read(file(LINES));
    assertThat(book.problems()).isEmpty();
    assertThat(book.runs())
        .containsExactly(
            new LedgerRun(1, "0001-steam-leak-7.hwr", Chain.START, DIGEST, END),
            new LedgerRun(2, "0002-steam-leak-8.hwr", DIGEST, Chain.START, Chain.START),
            new LedgerRun(5, "0005-steam-leak-9.hwr", Chain.START, Chain.START, Chain.START));
    assertThat(book.lastNo()).isEqualTo(5);
    assertThat(book.runs().get(0).isFinished()).isTrue();
    assertThat(book.runs().get(1).isFinished()).isFalse();
  }

  @Test
  void anEmptyLedgerHasNoRuns() {
    LedgerBook book = LedgerText.read(new byte[0]);
    assertThat(book).isEqualTo(new LedgerBook(List.of(), Chain.START, 0, List.of(), List.of()));
    assertThat(book.lastNo()).isZero();
    assertThat(book.lastDigest()).isEqualTo(Chain.START);
  }

  @Test
  void anyByteChangedShows() {
    byte[] file = file(LINES);
    for (int mask : new int[] {1, 32, 128}) {
      for (int at = 0; at < file.length; at++) {
        byte[] changed = file.clone();
        changed[at] ^= (byte) mask;
        assertThat(LedgerText.read(changed).problems()).as("at byte " + at).isNotEmpty();
      }
    }
  }

  @Test
  void aTornLastLineDoesNotCount() {
    byte[] file = file(LINES);
    LedgerBook book = LedgerText.read(Arrays.copyOf(file, file.length - 1));
    assertThat(book.lastNo()).isEqualTo(2);
    assertThat(book.problems()).extracting(Problem::kind).containsExactly(Problem.Kind.TORN);
    byte[] whole = Arrays.copyOf(file, file.length - 1 - book.tornBytes());
    assertThat(LedgerText.read(whole).problems()).isEmpty();
  }

  @Test
  void linesThatDoNotAgreeAreTold() {
    check(new LedgerLine.Numbered(1, "again", DIGEST), "line 3: run 1 comes after run 1.");
    check(
        new LedgerLine.Numbered(2, "x", Chain.START),
        "line 3: run 2 names another run before it than the one above.");
    check(
        new LedgerLine.Noted(7, "void", "x", "P-0001"),
        "line 3: a note is about run 7, which was never numbered.");
    check(
        new LedgerLine.Finished(7, DIGEST, END),
        "line 3: run 7 is finished but was never numbered.");
    check(new LedgerLine.Finished(1, DIGEST, END), "line 3: run 1 is finished twice.");
  }

  private static void check(LedgerLine third, String problem) {
    LedgerBook book = LedgerText.read(file(List.of(LINES.get(0), LINES.get(1), third)));
    assertThat(book.problems()).extracting(Problem::text).containsExactly(problem);
  }

  private static byte[] file(List<LedgerLine> lines) {
    Chain chain = new Chain();
    StringBuilder text = new StringBuilder();
    lines.forEach(l -> text.append(chain.append(l.line())).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
