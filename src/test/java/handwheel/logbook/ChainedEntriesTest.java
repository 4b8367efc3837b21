package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChainedEntriesTest {
  private final List<String> lines = new ArrayList<>();
  private final ChainedEntries chained = new ChainedEntries(lines::add);

  @Test
  void theDigestIsTheScoresH() {
    SampleRun.entries().forEach(chained::accept);
    String digest = chained.digest().orElseThrow();
    assertThat(lines.get(lines.size() - 1)).endsWith("\"h\":\"" + digest + "\"}");
    assertThat(ChainedEntries.digestOf(SampleRun.entries())).contains(digest);
    assertThat(RecordText.read(SampleRun.record()).digest()).contains(digest);
  }

  @Test
  void theDigestDoesNotKnowWhoRanIt() {
    About other = new About(1, Chain.START, "A. Ferrar", "2032-01-01T00:00:00Z", "x", "y", "");
    RunRecord record = RecordText.read(SampleRun.record(other, SampleRun.entries()));
    assertThat(record.holds()).isTrue();
    assertThat(record.digest()).isEqualTo(RecordText.read(SampleRun.record()).digest());
  }

  @Test
  void thereIsNoDigestBeforeTheScore() {
    chained.accept(SampleRun.entries().get(0));
    assertThat(chained.digest()).isEmpty();
    assertThat(ChainedEntries.digestOf(List.of())).isEmpty();
  }

  @Test
  void runComesFirstAndOnce() {
    Entry run = SampleRun.entries().get(0);
    assertThatThrownBy(() -> chained.accept(new Entry.Stopped(1)))
        .isInstanceOf(IllegalStateException.class);
    chained.accept(run);
    assertThatThrownBy(() -> chained.accept(run)).isInstanceOf(IllegalStateException.class);
    assertThat(lines).hasSize(1);
  }

  @Test
  void onlyTheEndFollowsOnTheScoreAndNothingOnTheEnd() {
    End end = new End("over", "", "ff");
    Entry stop = new Entry.Stopped(1);
    chained.accept(SampleRun.entries().get(0));
    assertThatThrownBy(() -> chained.end(end)).isInstanceOf(IllegalStateException.class);
    chained.accept(new Entry.Score(100, "pass", List.of()));
    assertThatThrownBy(() -> chained.accept(stop)).isInstanceOf(IllegalStateException.class);
    chained.end(end);
    assertThatThrownBy(() -> chained.end(end)).isInstanceOf(IllegalStateException.class);
    assertThat(lines).hasSize(3);
  }
}
