package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The worked example of Dechter, Meiri, Pearl, "Temporal constraint networks", Artificial
 * Intelligence 49 (1991) 61-95 (values from memory, recomputed): X1-X0 in [10,20], X2-X1 in [30,40]
 * or at least 60, X2-X3 in [10,20], X4-X3 in [20,30] or [40,50], X4-X0 in [60,70].
 */
final class TimeNetTest {
  private static TimeNet common() {
    TimeNet net = new TimeNet();
    between(net, "x0", "x1", 10, 20);
    between(net, "x3", "x2", 10, 20);
    between(net, "x0", "x4", 60, 70);
    return net;
  }

  private static void between(TimeNet net, String first, String then, double least, double most) {
    net.atLeast(first, then, least, then + " at least " + least + " behind " + first);
    net.atMost(first, then, most, then + " at most " + most + " behind " + first);
  }

  @Test
  void carAndShortWalkAgree() {
    TimeNet net = common();
    between(net, "x1", "x2", 30, 40);
    between(net, "x3", "x4", 20, 30);

    assertThat(net.contradiction()).isEmpty();
  }

  @Test
  void carAndLongWalkAgree() {
    TimeNet net = common();
    between(net, "x1", "x2", 30, 40);
    between(net, "x3", "x4", 40, 50);

    assertThat(net.contradiction()).isEmpty();
  }

  @Test
  void busAndShortWalkAgree() {
    TimeNet net = common();
    net.atLeast("x1", "x2", 60, "bus");
    between(net, "x3", "x4", 20, 30);

    assertThat(net.contradiction()).isEmpty();
  }

  @Test
  void busAndLongWalkContradictEachOther() {
    TimeNet net = common();
    net.atLeast("x1", "x2", 60, "bus");
    between(net, "x3", "x4", 40, 50);

    assertThat(net.contradiction().orElseThrow())
        .contains("bus", "x4 at least 40.0 behind x3", "x4 at most 70.0 behind x0");
  }
}
