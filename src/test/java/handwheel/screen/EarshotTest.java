package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What reaches a trainee who sees nobody. */
final class EarshotTest {
  private final Earshot earshot = new Earshot();

  private boolean reaches(Entry entry) {
    return earshot.reaches(entry, Optional.empty());
  }

  @Test
  void whoWasSentReportsThatHeIsThereOnce() {
    Entry arrived = new Entry.Arrived(900, "remote-hand", "remote-station");
    assertThat(reaches(arrived)).isFalse();
    reaches(new Entry.OrderSaid(1, 1, 1, "remote-hand go remote-station", 10, 10, false));
    assertThat(reaches(arrived)).isTrue();
    assertThat(reaches(arrived)).isFalse();
  }

  @Test
  void whoLeftUnseenIsFoundOutOnlyByTheCount() {
    reaches(new Entry.OrderSaid(1, 1, 1, "everyone leave", -1, 10, false));
    assertThat(reaches(new Entry.Arrived(90, "checkman", "upper-passage"))).isFalse();
    assertThat(reaches(new Entry.Person(90, "checkman", "hurt", 300))).isFalse();
    assertThat(reaches(new Entry.Counted(99, 2, 6, 7, "checkman"))).isTrue();
  }

  @Test
  void whatWasOrderedIsReportedWhatWasNotIsOnlySeen() {
    assertThat(reaches(new Entry.Moved(90, 3, "pumpman", "blower-1", "remote-station", 0)))
        .isTrue();
    assertThat(reaches(new Entry.Moved(90, 0, "pumpman", "blower-1", "remote-station", 0)))
        .isFalse();
  }

  @Test
  void hisOwnBodyAndHisOwnWayAreHis() {
    assertThat(reaches(new Entry.Arrived(90, "supervisor", "lower-passage"))).isTrue();
    assertThat(reaches(new Entry.Person(90, "supervisor", "hurt", 300))).isTrue();
  }
}
