package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import handwheel.logbook.RunRecord;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KilledRunTest {
  @TempDir Path folder;

  /** A few kills each time, 200 with {@code -Dsoak=true}. */
  static IntStream kills() {
    return Boolean.getBoolean("soak")
        ? IntStream.range(0, 200).map(i -> 1 + i * 37 % 211)
        : IntStream.of(1, 2, 17, 60, 151);
  }

  @ParameterizedTest
  @MethodSource("kills")
  void noEntryThatWasTakenIsLost(int atLeast) throws Exception {
    Path path = folder.resolve("a.hwr");
    int taken;
    try (Child child = Child.start(KilledRun.class, path.toString())) {
      taken = child.lines(atLeast).size();
      child.kill();
      taken += child.lines(Integer.MAX_VALUE).size();
    }
    RunRecord record = RecordFile.read(path);
    List<Entry> entries = record.entries();
    assertThat(taken).isGreaterThanOrEqualTo(atLeast);
    assertThat(entries).hasSizeGreaterThanOrEqualTo(taken);
    for (int t = 1; t < entries.size(); t++) {
      assertThat(entries.get(t)).isEqualTo(KilledRun.entry(t));
    }
    assertThat(record.isOnlyUnfinished()).isTrue();
    assertThat(record.about()).isPresent();
  }
}
