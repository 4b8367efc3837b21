package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** When lines from a pipe are said, in ticks of a twentieth of a second. */
final class TimedLinesTest {
  private final TimedLines lines = new TimedLines();

  @Test
  void aLineMayBringItsSecond() {
    lines.add("12 everyone leave");
    lines.add("12.5 xx");
    assertThat(lines.nextTick(0)).isEqualTo(240);
    assertThat(lines.take(240)).isEqualTo("everyone leave");
    assertThat(lines.nextTick(240)).isEqualTo(250);
    assertThat(lines.take(250)).isEqualTo("xx");
    assertThat(lines.isEmpty()).isTrue();
  }

  @Test
  void aLineWithoutASecondFollowsASecondAfterTheOneBefore() {
    lines.add("xx");
    lines.add("gg");
    assertThat(lines.nextTick(0)).isZero();
    lines.take(0);
    assertThat(lines.nextTick(5)).isEqualTo(20);
    lines.take(20);
    lines.add("ct");
    assertThat(lines.nextTick(500)).isEqualTo(500);
  }

  @Test
  void aSecondThatIsPastIsNow() {
    lines.add("1 xx");
    assertThat(lines.nextTick(100)).isEqualTo(100);
  }

  @Test
  void emptyLinesAndRemarksSayNothing() {
    lines.add("");
    lines.add("  # 12 xx");
    assertThat(lines.isEmpty()).isTrue();
  }
}
