package handwheel.archive;

import handwheel.logbook.About;
import handwheel.logbook.Chain;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.End;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.logbook.RecordText;
import handwheel.logbook.RunRecord;
import handwheel.logbook.Signer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The record of one run while it is written. Each line is one write; each but a {@code state} is on
 * the disk when {@link #accept} returns. A disk that fails never stops the run: the first failure
 * becomes the {@link #trouble()}, nothing more is written, and what stands in the file reads back
 * as a run that was broken off. The digest is still worked out to the end.
 */
public final class RecordFile implements EntrySink, AutoCloseable {
  /** Longest file that is read, bytes; a run of a whole day stays below it. */
  static final long LIMIT_BYTES = 64L << 20;

  private final Path path;
  private final ChainedEntries entries = new ChainedEntries(this::write);
  private final String aboutH;
  private @Nullable String endH;
  private @Nullable Drain drain;
  private @Nullable String trouble;

  private RecordFile(Path path, Opening opening, About about) {
    this.path = path;
    try {
      drain = opening.open();
    } catch (IOException e) {
      fail(e);
    }
    Chain alone = new Chain();
    write(alone.append(about.line()));
    aboutH = alone.last();
    force();
  }

  /**
   * Begins a record. Folders that are missing are made.
   *
   * @param path the file, which must not be there yet
   * @param about its about line
   * @return the record; where the file could not be made it has a {@link #trouble()}
   */
  public static RecordFile create(Path path, About about) {
    return new RecordFile(path, () -> makeFile(path), about);
  }

  /**
   * Begins a record of a run that nobody sits at: it is forced to disk once, when it is closed.
   *
   * @param path the file, which must not be there yet
   * @param about its about line
   * @return the record; where the file could not be made it has a {@link #trouble()}
   */
  public static RecordFile createForcedAtEnd(Path path, About about) {
    return new RecordFile(path, () -> new LateForce(makeFile(path)), about);
  }

  /** Begins a record on a drain of the caller's. */
  static RecordFile on(Path path, Drain drain, About about) {
    return new RecordFile(path, () -> drain, about);
  }

  /**
   * Reads a record. The file is never changed, also where it is torn.
   *
   * @param path the file
   * @return what it says and what is wrong with it; never an exception
   */
  public static RunRecord read(Path path) {
    try {
      if (Files.size(path) > LIMIT_BYTES) {
        return RunRecord.unreadable(
            "`" + path + "` is longer than " + LIMIT_BYTES + " bytes, which no record is.");
      }
      return RecordText.read(Files.readAllBytes(path));
    } catch (IOException e) {
      return RunRecord.unreadable("`" + path + "` cannot be read: " + DiskReason.of(e) + ".");
    }
  }

  /**
   * Takes the next entry.
   *
   * @param entry {@code run} first, {@code score} last
   * @throws IllegalStateException if the entry is out of place
   */
  @Override
  public void accept(Entry entry) {
    entries.accept(entry);
    if (!(entry instanceof Entry.State)) {
      force();
    }
  }

  /**
   * Writes the end line, after the score.
   *
   * @param why how the run came to its end, such as {@code over}
   * @param coached help that was given while he drilled; empty if none was noted
   * @throws IllegalStateException if it does not follow on the score
   */
  public void end(String why, String coached) {
    entries.end(new End(why, coached, aboutH));
    endH = entries.lastH();
    force();
  }

  /**
   * Writes the signature, behind the end line.
   *
   * @param signer whose public key stands in the about line
   * @throws IllegalStateException if it does not follow on the end
   */
  public void sign(Signer signer) {
    entries.sign(signer);
    force();
  }

  /**
   * Returns the {@code h} of the end line, also where the file failed.
   *
   * @return 64 lower-case hex digits, or empty before the end
   */
  public Optional<String> endH() {
    return Optional.ofNullable(endH);
  }

  /**
   * Returns the digest of the run, also where the file failed.
   *
   * @return 64 lower-case hex digits, or empty before the score
   */
  public Optional<String> digest() {
    return entries.digest();
  }

  /**
   * Returns what went wrong with the file.
   *
   * @return a sentence for people, or empty while all is well
   */
  public Optional<String> trouble() {
    return Optional.ofNullable(trouble);
  }

  /**
   * Returns where the record stands.
   *
   * @return the file, which may not be there if there is trouble
   */
  public Path path() {
    return path;
  }

  /** Closes the file; without an end line it stays a run that was broken off. */
  @Override
  public void close() {
    attempt(Drain::force);
    attempt(Drain::close);
    drain = null;
  }

  private static Drain makeFile(Path path) throws IOException {
    FileDrain.makeFolder(FileDrain.folderOf(path));
    return FileDrain.create(path);
  }

  private void write(String line) {
    byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
    attempt(d -> d.write(bytes));
  }

  private void force() {
    attempt(Drain::force);
  }

  private void attempt(Act act) {
    if (drain == null) {
      return;
    }
    try {
      act.on(drain);
    } catch (IOException e) {
      abandon(drain);
      fail(e);
    }
  }

  /** Lines behind a gap would be worth nothing, so the file takes no more. */
  private void abandon(Drain failed) {
    drain = null;
    try {
      failed.close();
    } catch (IOException e) {
      // The first failure is the one to tell.
      return;
    }
  }

  private void fail(IOException e) {
    trouble = "The record `" + path + "` could not be written: " + DiskReason.of(e) + ".";
  }

  private interface Opening {
    Drain open() throws IOException;
  }

  private interface Act {
    void on(Drain drain) throws IOException;
  }
}
