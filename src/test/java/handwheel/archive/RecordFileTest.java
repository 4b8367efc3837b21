package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import handwheel.logbook.ChainedEntries;
import handwheel.logbook.End;
import handwheel.logbook.Entry;
import handwheel.logbook.Problem;
import handwheel.logbook.RunRecord;
import handwheel.logbook.SampleRun;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordFileTest {
  @TempDir Path folder;

  @Test
  void aRunIsWrittenAndReadBack() throws IOException {
    Path path = folder.resolve("new").resolve("0041-steam-leak-7.hwr");
    try (RecordFile file = RecordFile.create(path, SampleRun.ABOUT)) {
      SampleRun.entries().forEach(file::accept);
      file.end("over", "");
      assertThat(file.trouble()).isEmpty();
      assertThat(file.digest()).isEqualTo(ChainedEntries.digestOf(SampleRun.entries()));
      assertThat(file.path()).isEqualTo(path);
    }
    assertThat(Files.readAllBytes(path)).isEqualTo(SampleRun.record());
    RunRecord record = RecordFile.read(path);
    assertThat(record.holds()).isTrue();
    assertThat(record.about()).contains(SampleRun.ABOUT);
    assertThat(record.entries()).isEqualTo(SampleRun.entries());
    assertThat(record.end().map(End::why)).contains("over");
  }

  @Test
  void aRunThatIsNotEndedIsUnfinished() {
    Path path = folder.resolve("a.hwr");
    try (RecordFile file = RecordFile.create(path, SampleRun.ABOUT)) {
      SampleRun.entries().subList(0, 9).forEach(file::accept);
      assertThat(file.digest()).isEmpty();
      assertThatThrownBy(() -> file.end("over", "")).isInstanceOf(IllegalStateException.class);
    }
    assertThat(RecordFile.read(path).isOnlyUnfinished()).isTrue();
    assertThat(RecordFile.read(path).entries()).isEqualTo(SampleRun.entries().subList(0, 9));
  }

  @Test
  void aRecordCanBeReadWhileItIsWritten() {
    Path path = folder.resolve("a.hwr");
    try (RecordFile file = RecordFile.create(path, SampleRun.ABOUT)) {
      int taken = 0;
      for (Entry entry : SampleRun.entries()) {
        file.accept(entry);
        taken++;
        assertThat(RecordFile.read(path).entries()).hasSize(taken);
      }
    }
  }

  @Test
  void anInterruptedThreadWritesOn() {
    Path path = folder.resolve("a.hwr");
    Thread.currentThread().interrupt();
    try (RecordFile file = RecordFile.create(path, SampleRun.ABOUT)) {
      SampleRun.entries().forEach(file::accept);
      file.end("over", "");
      assertThat(file.trouble()).isEmpty();
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
    assertThat(RecordFile.read(path).holds()).isTrue();
  }

  @Test
  void aFileThatIsThereIsNotTouched() throws IOException {
    Path path = folder.resolve("a.hwr");
    Files.writeString(path, "precious");
    RecordFile file = RecordFile.create(path, SampleRun.ABOUT);
    SampleRun.entries().forEach(file::accept);
    file.end("over", "");
    file.close();
    assertThat(file.trouble().orElseThrow())
        .isEqualTo(
            "The record `"
                + path
                + "` could not be written: something of this name is there already.");
    assertThat(file.digest()).isEqualTo(ChainedEntries.digestOf(SampleRun.entries()));
    assertThat(path).hasContent("precious");
  }

  @Test
  void aFolderThatIsAFileIsTrouble() throws IOException {
    Path notFolder = Files.writeString(folder.resolve("notes"), "x");
    try (RecordFile file = RecordFile.create(notFolder.resolve("a.hwr"), SampleRun.ABOUT)) {
      file.accept(SampleRun.entries().get(0));
      assertThat(file.trouble().orElseThrow()).contains("something of this name is there already");
    }
  }

  @Test
  void aMissingFileIsAnUnreadableRecord() {
    RunRecord record = RecordFile.read(folder.resolve("none.hwr"));
    assertThat(record.problems())
        .extracting(Problem::text)
        .containsExactly(
            "`"
                + folder.resolve("none.hwr")
                + "` cannot be read: there is no such file or folder.");
    assertThat(record.isOnlyUnfinished()).isFalse();
  }

  @Test
  void aFolderIsAnUnreadableRecord() {
    assertThat(RecordFile.read(folder).problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.UNREADABLE);
  }

  @Test
  void aFileNoRecordCanHaveGrownToIsNotRead() throws IOException {
    Path path = folder.resolve("huge.hwr");
    try (RandomAccessFile sparse = new RandomAccessFile(path.toFile(), "rw")) {
      sparse.setLength(RecordFile.LIMIT_BYTES + 1);
    }
    assertThat(RecordFile.read(path).problems().get(0).message()).contains("which no record is");
  }

  /** Cut at every byte, as a kill or a full disk may leave it. */
  @Test
  void aFileCutAtAnyByteReadsBackUpToItsLastWholeLine() throws IOException {
    Path path = folder.resolve("a.hwr");
    Files.write(path, SampleRun.record());
    try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw")) {
      for (long length = file.length() - 1; length >= 0; length--) {
        file.setLength(length);
        RunRecord record = RecordFile.read(path);
        assertThat(record.isOnlyUnfinished()).as("cut at " + length).isTrue();
        assertThat(record.entries()).isEqualTo(SampleRun.entries().subList(0, entriesIn(path)));
      }
    }
  }

  /** Counts whole lines that are neither about nor end. */
  private static int entriesIn(Path path) throws IOException {
    long lineFeeds =
        Files.readString(path, StandardCharsets.ISO_8859_1).chars().filter(c -> c == '\n').count();
    return (int) Math.max(0, Math.min(lineFeeds - 1, SampleRun.entries().size()));
  }
}
