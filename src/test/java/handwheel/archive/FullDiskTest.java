package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.ChainedEntries;
import handwheel.logbook.RecordText;
import handwheel.logbook.RunRecord;
import handwheel.logbook.SampleRun;
import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class FullDiskTest {
  private static final Path PATH = Path.of("a.hwr");

  /** A disk with room for so many bytes; like a real one it takes part of a line. */
  private static final class SmallDisk implements Drain {
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private final List<String> calls = new ArrayList<>();
    private final int room;

    SmallDisk(int room) {
      this.room = room;
    }

    @Override
    public void write(byte[] bytes) throws IOException {
      calls.add("write");
      int fits = Math.min(bytes.length, room - kept.size());
      kept.write(bytes, 0, fits);
      if (fits < bytes.length) {
        throw new IOException("No space left on device");
      }
    }

    @Override
    public void force() {
      calls.add("force");
    }

    @Override
    public void close() {
      calls.add("close");
    }
  }

  @Test
  void aDiskThatFillsAtAnyByteNeverStopsTheRun() {
    byte[] whole = SampleRun.record();
    for (int room = 0; room < whole.length; room++) {
      SmallDisk disk = new SmallDisk(room);
      RecordFile file = run(disk);
      assertThat(file.trouble())
          .contains("The record `a.hwr` could not be written: No space left on device.");
      assertThat(file.digest()).isEqualTo(ChainedEntries.digestOf(SampleRun.entries()));
      assertThat(disk.kept.size()).isEqualTo(room);
      assertThat(disk.calls).endsWith("write", "close");
      RunRecord record = RecordText.read(disk.kept.toByteArray());
      assertThat(record.isOnlyUnfinished()).isTrue();
    }
  }

  /** The first line, and every line that is an act, is forced before the next is taken. */
  @Test
  void everyActIsForcedAndAStateRides() {
    SmallDisk disk = new SmallDisk(1 << 20);
    RecordFile file = RecordFile.on(PATH, disk, SampleRun.ABOUT);
    assertThat(disk.calls).containsExactly("write", "force");
    disk.calls.clear();
    SampleRun.entries().subList(0, 6).forEach(file::accept);
    assertThat(disk.calls)
        .containsExactly(
            "write", "force", "write", "force", "write", "force", "write", "force", "write",
            "write", "force");
    file.close();
    assertThat(disk.calls).endsWith("force", "close");
  }

  @Test
  void aDiskThatCannotForceIsTrouble() {
    RecordFile file =
        run(
            new Drain() {
              @Override
              public void write(byte[] bytes) {}

              @Override
              public void force() throws IOException {
                throw new IOException("sync failed");
              }

              @Override
              public void close() throws IOException {
                throw new IOException("close failed");
              }
            });
    assertThat(file.trouble().orElseThrow()).endsWith("sync failed.");
  }

  /** Linux keeps a device that is always full. */
  @Test
  void aRealFullDeviceIsTrouble() throws IOException {
    Path full = Path.of("/dev/full");
    Assumptions.assumeTrue(Files.exists(full));
    try (FileOutputStream out = new FileOutputStream(full.toFile())) {
      assertThat(run(new FileDrain(out)).trouble().orElseThrow()).contains("could not be written");
    }
  }

  private static RecordFile run(Drain drain) {
    RecordFile file = RecordFile.on(PATH, drain, SampleRun.ABOUT);
    SampleRun.entries().forEach(file::accept);
    file.end("over", "");
    file.close();
    return file;
  }
}
