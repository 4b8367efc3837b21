package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.About;
import handwheel.logbook.Chain;
import handwheel.logbook.LedgerLine;
import handwheel.logbook.LedgerRun;
import handwheel.logbook.Problem;
import handwheel.logbook.SampleRun;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerTest {
  static final String END = "e".repeat(64);

  @TempDir Path temp;

  private Path folder;
  private Ledger ledger;

  @BeforeEach
  void openLedger() {
    folder = temp.resolve("records");
    ledger = new Ledger(folder);
  }

  static String digest(int no) {
    return String.format(Locale.ROOT, "%064x", no);
  }

  @Test
  void theFirstRunHasNoRunBefore() {
    Numbering first = ledger.start("steam-leak", 7);
    assertThat(first.trouble()).isEmpty();
    assertThat(first.no()).isEqualTo(1);
    assertThat(first.file()).isEqualTo("0001-steam-leak-7.hwr");
    assertThat(first.before()).isEqualTo(Chain.START);
  }

  @Test
  void aRunNamesTheFinishedRunBefore() throws IOException {
    ledger.start("steam-leak", 7);
    assertThat(ledger.finish(1, digest(1), END)).isEmpty();
    Numbering second = new Ledger(folder).start("oil-fire", 8);
    assertThat(second.no()).isEqualTo(2);
    assertThat(second.before()).isEqualTo(digest(1));
    assertThat(ledger.read().problems()).isEmpty();
    assertThat(ledger.read().runs().get(0))
        .isEqualTo(new LedgerRun(1, "0001-steam-leak-7.hwr", Chain.START, digest(1), END));
  }

  @Test
  void aRunThatWasNotFinishedIsNoRunBeforeButKeepsItsNumber() {
    ledger.start("steam-leak", 7);
    Numbering second = ledger.start("steam-leak", 7);
    assertThat(second.no()).isEqualTo(2);
    assertThat(second.before()).isEqualTo(Chain.START);
  }

  /** The program was killed between the end line and the note in the ledger. */
  @Test
  void aFinishedRecordThatWasNotNotedIsNotedAtTheNextStart() throws IOException {
    String digest = record(ledger.start("steam-leak", 7), true);
    assertThat(ledger.start("steam-leak", 8).before()).isEqualTo(digest);
    assertThat(ledger.read().problems()).isEmpty();
    assertThat(ledger.finish(1, digest, END)).isEmpty();
    assertThat(ledger.read().problems()).isEmpty();
  }

  @Test
  void aRecordThatWasBrokenOffIsNotNoted() {
    record(ledger.start("steam-leak", 7), false);
    assertThat(ledger.start("steam-leak", 8).before()).isEqualTo(Chain.START);
  }

  @Test
  void aDigestIsNotedOnce() throws IOException {
    ledger.start("steam-leak", 7);
    ledger.finish(1, digest(1), END);
    long length = Files.size(folder.resolve(Ledger.FILE));
    assertThat(ledger.finish(1, digest(1), END)).isEmpty();
    assertThat(ledger.finish(1, digest(2), END).orElseThrow())
        .endsWith("another digest for run 1.");
    assertThat(ledger.finish(9, digest(9), END).orElseThrow()).endsWith("has no run 9.");
    assertThat(folder.resolve(Ledger.FILE)).hasSize(length);
  }

  /** A line that lost its end was never acknowledged: its number is free again. */
  @Test
  void aLedgerCutAtAnyByteGoesOnSoundly() throws IOException {
    for (int i = 1; i <= 3; i++) {
      ledger.start("steam-leak", i);
      ledger.finish(i, digest(i), END);
    }
    Path file = folder.resolve(Ledger.FILE);
    byte[] whole = Files.readAllBytes(file);
    for (int length = 0; length < whole.length; length++) {
      Files.write(file, Arrays.copyOf(whole, length));
      int last = ledger.read().lastNo();
      assertThat(ledger.start("steam-leak", 4).no()).isEqualTo(last + 1);
      assertThat(ledger.read().problems()).as("cut at " + length).isEmpty();
    }
  }

  @Test
  void aBrokenLedgerIsToldAndNumbersOn() throws IOException {
    ledger.start("steam-leak", 1);
    ledger.start("steam-leak", 2);
    Path file = folder.resolve(Ledger.FILE);
    Files.writeString(file, Files.readString(file).replace("leak-1", "leek-1"));
    assertThat(ledger.start("steam-leak", 3).no()).isEqualTo(3);
    assertThat(ledger.read().problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.CHAIN_BROKEN);
  }

  @Test
  void rubbishInTheLedgerIsToldAndNumbersOn() throws IOException {
    ledger.start("steam-leak", 1);
    Files.writeString(folder.resolve(Ledger.FILE), "rubbish\n", StandardOpenOption.APPEND);
    assertThat(ledger.start("steam-leak", 2).no()).isEqualTo(2);
    assertThat(ledger.read().problems())
        .extracting(Problem::kind)
        .containsExactly(Problem.Kind.NOT_UNDERSTOOD);
  }

  @Test
  void aLostLedgerDoesNotGiveANumberThatARecordHas() throws IOException {
    record(ledger.start("steam-leak", 1), true);
    Files.delete(folder.resolve(Ledger.FILE));
    Files.writeString(folder.resolve("0041-oil-fire-2.hwr"), "");
    assertThat(ledger.start("steam-leak", 3).no()).isEqualTo(42);
  }

  @Test
  void aFolderThatCannotBeIsTrouble() throws IOException {
    Files.writeString(folder, "x");
    Numbering none = ledger.start("steam-leak", 7);
    assertThat(none.no()).isZero();
    assertThat(none.before()).isEqualTo(Chain.START);
    assertThat(none.file()).isEqualTo("0000-steam-leak-7.hwr");
    assertThat(none.trouble().orElseThrow()).startsWith("The run could not be numbered in `");
    assertThat(ledger.finish(1, digest(1), END).orElseThrow())
        .startsWith("The end of run 1 could not");
  }

  @Test
  void aLinkToAFolderIsAFolder() throws IOException {
    Files.createSymbolicLink(folder, Files.createDirectory(temp.resolve("elsewhere")));
    assertThat(ledger.start("steam-leak", 7).no()).isEqualTo(1);
  }

  @Test
  void aLockThatIsHeldIsTroubleAndNotAWaitForEver() throws IOException {
    Files.createDirectories(folder);
    Path side = folder.resolve(Ledger.LOCK);
    Ledger hasty = new Ledger(folder, new FolderLock(side, 3));
    try (RandomAccessFile file = new RandomAccessFile(side.toFile(), "rw");
        FileLock held = file.getChannel().lock()) {
      assertThat(held.isValid()).isTrue();
      assertThat(hasty.start("steam-leak", 7).trouble().orElseThrow())
          .contains("another program holds");
    }
    assertThat(hasty.start("steam-leak", 7).no()).isEqualTo(1);
  }

  @Test
  void anInterruptedThreadIsNumberedToo() {
    Thread.currentThread().interrupt();
    try {
      assertThat(ledger.start("steam-leak", 7).no()).isEqualTo(1);
      assertThat(ledger.finish(1, digest(1), END)).isEmpty();
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
  }

  @Test
  void thereIsNoNumberAfterTheLast() throws IOException {
    ledger.start("steam-leak", 7);
    LedgerLine last = new LedgerLine.Numbered(Integer.MAX_VALUE, "x", Chain.START);
    new LedgerFile(folder.resolve(Ledger.FILE)).append(ledger.read(), List.of(last));
    assertThat(ledger.start("steam-leak", 7).trouble().orElseThrow())
        .contains("no number left after 2147483647");
  }

  private String record(Numbering numbering, boolean whole) {
    About about = new About(numbering.no(), numbering.before(), "T. Vale", "", "", "", "");
    try (RecordFile file = RecordFile.create(folder.resolve(numbering.file()), about)) {
      SampleRun.entries().forEach(file::accept);
      if (whole) {
        file.end("over", "");
      }
      return file.digest().orElseThrow();
    }
  }
}
