package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Problem.Kind;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class RecordTextTest {
  private final List<String> lines =
      new ArrayList<>(new String(SampleRun.record(), StandardCharsets.UTF_8).lines().toList());
  private final int last = lines.size();

  @Test
  void aFinishedRecordReadsBackWhole() {
    RunRecord record = read();
    assertThat(record.problems()).isEmpty();
    assertThat(record.holds()).isTrue();
    assertThat(record.about()).contains(SampleRun.ABOUT);
    assertThat(record.entries()).isEqualTo(SampleRun.entries());
    assertThat(record.end().map(End::why)).contains("over");
    assertThat(record.unusedLines()).isZero();
    ChainedLine third = record.lines().get(2);
    assertThat(third.number()).isEqualTo(4);
    assertThat(third.text()).isEqualTo(lines.get(3)).contains(third.h());
  }

  @Test
  void aMissingEndIsAnUnfinishedRun() {
    lines.remove(last - 1);
    assertThat(problems()).containsExactly("0 UNFINISHED");
    assertThat(read().isOnlyUnfinished()).isTrue();
    assertThat(read().entries()).isEqualTo(SampleRun.entries());
  }

  @Test
  void aTornLastLineDoesNotCount() {
    byte[] file = SampleRun.record();
    RunRecord record = RecordText.read(Arrays.copyOf(file, file.length - 1));
    assertThat(record.isOnlyUnfinished()).isTrue();
    assertThat(record.problems().get(0).text()).startsWith("line 26: the last line is torn: its 1");
    assertThat(record.end()).isEmpty();
    assertThat(record.digest()).isPresent();
  }

  @Test
  void aLineTakenAwayBreaksTheChainOnce() {
    lines.remove(9);
    assertThat(problems()).containsExactly("10 CHAIN_BROKEN");
    assertThat(read().lines()).hasSize(8);
    assertThat(read().unusedLines()).isEqualTo(16);
    assertThat(read().isOnlyUnfinished()).isFalse();
    assertThat(read().end()).isEmpty();
    assertThat(read().digest()).isEmpty();
  }

  @Test
  void linesChangedAroundBreakTheChain() {
    lines.add(5, lines.remove(9));
    assertThat(problems()).containsExactly("6 CHAIN_BROKEN", "7 CHAIN_BROKEN", "11 CHAIN_BROKEN");
  }

  @Test
  void aLineThatStandsTwiceBreaksTheChain() {
    lines.add(9, lines.get(9));
    assertThat(problems()).containsExactly("11 CHAIN_BROKEN");
  }

  @Test
  void aLineThatIsNotUnderstoodIsTold() {
    lines.set(4, Chain.after(hOf(3)).append("{\"k\":\"phase\",\"t\":0,\"t\":0}"));
    assertThat(problems()).containsExactly("5 NOT_UNDERSTOOD", "6 CHAIN_BROKEN");
    assertThat(read().problems().get(0).text())
        .isEqualTo("line 5, column 20: key `t` stands twice.");
  }

  @Test
  void aLineWithoutItsHIsTold() {
    lines.set(4, "{\"k\":\"phase\",\"t\":0,\"id\":\"a\"}");
    assertThat(problems()).containsExactly("5 NOT_UNDERSTOOD");
  }

  @Test
  void upperCaseHexIsNotUnderstood() {
    String line = lines.get(4);
    lines.set(4, line.replace(hOf(4), hOf(4).toUpperCase(Locale.ROOT)));
    assertThat(problems()).containsExactly("5 NOT_UNDERSTOOD");
  }

  @Test
  void aLineThatIsNoUtf8IsTold() {
    byte[] file = SampleRun.record();
    int at = new String(file, StandardCharsets.UTF_8).indexOf("\u00e9");
    file[at + 1] ^= (byte) 0x40;
    assertThat(RecordText.read(file).problems().get(0))
        .isEqualTo(new Problem(1, at + 1, Kind.NOT_UNDERSTOOD, "this is not UTF-8."));
  }

  @Test
  void aMissingAboutIsTold() {
    lines.remove(0);
    assertThat(problems()).containsExactly("1 ABOUT_MISSING", "25 ABOUT_NOT_OF_END");
    assertThat(read().entries()).isEqualTo(SampleRun.entries());
  }

  @Test
  void aChangedAboutIsToldAndTheRunStillReads() {
    lines.set(0, lines.get(0).replace("Vale", "Hale"));
    assertThat(problems()).containsExactly("1 ABOUT_CHANGED");
    assertThat(read().about()).isEmpty();
    assertThat(read().entries()).isEqualTo(SampleRun.entries());
  }

  @Test
  void anotherAboutDoesNotFitTheEnd() {
    About other = new About(42, Chain.START, "A. Ferrar", "", "", "", "");
    lines.set(0, new Chain().append(other.line()));
    assertThat(problems()).containsExactly("26 ABOUT_NOT_OF_END");
    assertThat(read().end()).isEmpty();
  }

  @Test
  void aSecondEndIsTold() {
    lines.add(Chain.after(hOf(last - 1)).append(new End("over", "", hOf(0)).line()));
    assertThat(problems()).containsExactly("27 SECOND_END");
  }

  @Test
  void anEntryAfterTheEndIsTold() {
    lines.add(Chain.after(hOf(last - 1)).append("{\"k\":\"stop\",\"t\":1}"));
    assertThat(problems()).containsExactly("27 AFTER_END");
  }

  @Test
  void anEntryAfterTheScoreIsTold() {
    lines.set(last - 1, Chain.after(hOf(last - 2)).append("{\"k\":\"stop\",\"t\":1}"));
    assertThat(problems()).containsExactly("26 AFTER_SCORE", "0 UNFINISHED");
    assertThat(read().digest()).isPresent();
  }

  @Test
  void anEndWithoutScoreIsTold() {
    lines.subList(3, last).clear();
    lines.add(Chain.after(hOf(2)).append(new End("over", "", hOf(0)).line()));
    assertThat(problems()).containsExactly("4 END_WITHOUT_SCORE");
    assertThat(read().end()).isEmpty();
  }

  @Test
  void runMustBeFirstAndOnce() {
    lines.set(2, Chain.after(hOf(1)).append(bare(lines.get(1))));
    assertThat(problems()).containsExactly("3 RUN_OUT_OF_PLACE", "4 CHAIN_BROKEN");
    lines.set(1, new Chain().append("{\"k\":\"stop\",\"t\":1}"));
    assertThat(problems()).startsWith("2 RUN_OUT_OF_PLACE");
  }

  @Test
  void anEmptyFileIsAnUnfinishedRun() {
    lines.clear();
    assertThat(problems()).containsExactly("0 UNFINISHED");
  }

  @Test
  void aFileOfNothingButProblemsIsToldInShort() {
    lines.clear();
    for (int i = 0; i < 1000; i++) {
      lines.add("rubbish");
    }
    assertThat(problems()).hasSize(50);
    assertThat(read().unusedLines()).isEqualTo(999);
  }

  @Test
  void theEndOfLineOfOtherSystemsIsNotOurs() {
    byte[] file = (String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.UTF_8);
    assertThat(RecordText.read(file).holds()).isFalse();
  }

  private RunRecord read() {
    String text = lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    return RecordText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private List<String> problems() {
    return read().problems().stream().map(RecordTextTest::brief).toList();
  }

  private static String brief(Problem problem) {
    Kind kind = problem.kind();
    return problem.line() + " " + kind;
  }

  private String hOf(int index) {
    String line = lines.get(index);
    return line.substring(line.length() - 66, line.length() - 2);
  }

  private static String bare(String line) {
    return line.substring(0, line.length() - 72) + "}";
  }
}
