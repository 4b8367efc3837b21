package handwheel.archive;

import handwheel.logbook.LedgerBook;
import handwheel.logbook.LedgerLine;
import handwheel.logbook.LedgerRun;
import handwheel.logbook.RunRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Numbers every start of an installation. Each run's record names the digest of the run before it,
 * so a record that was taken away leaves a gap, and a run that was begun and not kept stands here
 * by its number. Two programs on one folder get different numbers.
 */
public final class Ledger {
  /** Name of the ledger in the records folder. */
  public static final String FILE = "ledger";

  /** Name of the side file that is locked. */
  static final String LOCK = "ledger.lock";

  private final Path folder;
  private final LedgerFile file;
  private final FolderLock lock;

  /**
   * Names the ledger of a folder; nothing is read or made yet.
   *
   * @param folder the records folder
   */
  public Ledger(Path folder) {
    this(folder, new FolderLock(folder.resolve(LOCK)));
  }

  Ledger(Path folder, FolderLock lock) {
    this.folder = folder;
    this.file = new LedgerFile(folder.resolve(FILE));
    this.lock = lock;
  }

  /**
   * Gives a run its number, on the disk before the call returns. The folder is made if it is
   * missing.
   *
   * @param script id of the script
   * @param seed seed of the run
   * @return number, file name and the digest of the run before; or why there is none
   */
  public Numbering start(String script, long seed) {
    try {
      FileDrain.makeFolder(folder);
      return lock.holding(() -> number(script, seed));
    } catch (IOException e) {
      return Numbering.failed(
          RecordName.of(0, script, seed),
          "The run could not be numbered in `" + folder + "`: " + DiskReason.of(e) + ".");
    }
  }

  /**
   * Notes the digest of a finished run. A second note of the same digest changes nothing.
   *
   * @param no number of the run
   * @param digest its digest
   * @param end the {@code h} of the end line of its record
   * @return what went wrong, a sentence for people, or empty
   */
  public Optional<String> finish(int no, String digest, String end) {
    try {
      return lock.holding(() -> note(new LedgerLine.Finished(no, digest, end)));
    } catch (IOException e) {
      return Optional.of("The end of run " + no + " could not be noted: " + DiskReason.of(e) + ".");
    }
  }

  /**
   * Notes something about a run: that it is void, why it was abandoned, why its record is missing.
   * Nothing is taken away by it.
   *
   * @param noted the note
   * @return what went wrong, a sentence for people, or empty
   */
  public Optional<String> note(LedgerLine.Noted noted) {
    try {
      return lock.holding(() -> append(noted));
    } catch (IOException e) {
      return Optional.of("The note could not be written: " + DiskReason.of(e) + ".");
    }
  }

  private Optional<String> append(LedgerLine.Noted noted) throws IOException {
    LedgerBook book = file.read();
    if (book.runs().stream().noneMatch(r -> r.no() == noted.no())) {
      return Optional.of("The ledger in `" + folder + "` has no run " + noted.no() + ".");
    }
    file.append(book, List.of(noted));
    return Optional.empty();
  }

  /**
   * Reads the ledger.
   *
   * @return what it says and what is wrong with it; without runs where there is no ledger
   * @throws IOException if there is one and it cannot be read
   */
  public LedgerBook read() throws IOException {
    return file.read();
  }

  private Numbering number(String script, long seed) throws IOException {
    noteOverdue();
    LedgerBook book = file.read();
    int last = Math.max(book.lastNo(), lastRecord());
    if (last == Integer.MAX_VALUE) {
      throw new IOException("there is no number left after " + last);
    }
    String name = RecordName.of(last + 1, script, seed);
    String before = book.lastDigest();
    file.append(book, List.of(new LedgerLine.Numbered(last + 1, name, before)));
    return Numbering.given(last + 1, name, before);
  }

  /** The last run's program may have been killed between its end line and its note here. */
  private void noteOverdue() throws IOException {
    LedgerBook book = file.read();
    if (book.runs().isEmpty()) {
      return;
    }
    LedgerRun run = book.runs().get(book.runs().size() - 1);
    if (run.isFinished()) {
      return;
    }
    RunRecord record = RecordFile.read(folder.resolve(run.file()));
    Optional<String> digest = record.holds() ? record.digest() : Optional.empty();
    Optional<String> end = record.endH();
    if (digest.isPresent() && end.isPresent()) {
      LedgerLine line = new LedgerLine.Finished(run.no(), digest.get(), end.get());
      file.append(book, List.of(line));
    }
  }

  private Optional<String> note(LedgerLine.Finished finished) throws IOException {
    int no = finished.no();
    LedgerBook book = file.read();
    Optional<LedgerRun> run = book.runs().stream().filter(r -> r.no() == no).findFirst();
    if (run.isEmpty()) {
      return Optional.of("The ledger in `" + folder + "` has no run " + no + ".");
    }
    if (!run.get().isFinished()) {
      file.append(book, List.of(finished));
      return Optional.empty();
    }
    return run.get().digest().equals(finished.digest())
        ? Optional.empty()
        : Optional.of("The ledger in `" + folder + "` has another digest for run " + no + ".");
  }

  /** Returns the greatest number of a record in the folder: a lost ledger must not start anew. */
  private int lastRecord() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> RecordName.number(String.valueOf(f.getFileName())))
          .flatMapToInt(OptionalInt::stream)
          .max()
          .orElse(0);
    }
  }
}
