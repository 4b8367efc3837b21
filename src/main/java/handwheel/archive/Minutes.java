package handwheel.archive;

import handwheel.logbook.Chain;
import handwheel.logbook.Minute;
import handwheel.logbook.MinuteText;
import handwheel.logbook.Signer;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The minutes of a board, {@code minutes} beside the records: appended under a lock, forced. */
public final class Minutes {
  /** Name of the file in the records folder. */
  public static final String FILE = "minutes";

  private final Path file;
  private final FolderLock lock;

  /**
   * Names the minutes of a folder; nothing is read or made yet.
   *
   * @param folder the records folder
   */
  public Minutes(Path folder) {
    this.file = folder.resolve(FILE);
    this.lock = new FolderLock(folder.resolve("minutes.lock"));
  }

  /**
   * Reads them.
   *
   * @return what they say; nothing where there are none
   * @throws IOException if there are some and they cannot be read
   */
  public MinuteText.Book read() throws IOException {
    return MinuteText.read(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
  }

  /**
   * Signs a minute and appends it; it is on the disk when the call returns.
   *
   * @param minute the line, its key and signature not yet filled in
   * @param signer who signs
   * @throws IOException if it cannot be written, or what stands there does not hold
   */
  public void append(Minute minute, Signer signer) throws IOException {
    lock.holding(
        () -> {
          MinuteText.Book book = read();
          boolean isBroken = book.problems().size() > (book.tornBytes() > 0 ? 1 : 0);
          if (isBroken) {
            throw new IOException("`" + file + "` does not hold: " + book.problems().get(0).text());
          }
          dropTorn(book);
          write(Chain.after(book.lastH()).append(minute.signed(book.lastH(), signer).line()));
          return true;
        });
  }

  /** A torn line was never acknowledged. */
  private void dropTorn(MinuteText.Book book) throws IOException {
    if (book.tornBytes() > 0) {
      try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
        bytes.setLength(bytes.length() - book.tornBytes());
      }
    }
  }

  private void write(String line) throws IOException {
    boolean isNew = !Files.exists(file);
    FileDrain drain = FileDrain.append(file);
    try {
      drain.write((line + "\n").getBytes(StandardCharsets.UTF_8));
      drain.force();
    } finally {
      drain.close();
    }
    if (isNew) {
      FileDrain.forceFolder(FileDrain.folderOf(file));
    }
  }
}
