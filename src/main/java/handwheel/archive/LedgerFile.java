package handwheel.archive;

import handwheel.logbook.Chain;
import handwheel.logbook.LedgerBook;
import handwheel.logbook.LedgerLine;
import handwheel.logbook.LedgerText;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The ledger's bytes. Whoever appends holds the lock. */
final class LedgerFile {
  private final Path file;

  LedgerFile(Path file) {
    this.file = file;
  }

  LedgerBook read() throws IOException {
    return LedgerText.read(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
  }

  /** Adds lines behind the book just read; they are on the disk when the call returns. */
  void append(LedgerBook book, List<LedgerLine> lines) throws IOException {
    boolean isNew = !Files.exists(file);
    dropTorn(book);
    write(chained(book, lines));
    if (isNew) {
      FileDrain.forceFolder(FileDrain.folderOf(file));
    }
  }

  /** A torn line was never acknowledged, so no run has its number. */
  private void dropTorn(LedgerBook book) throws IOException {
    if (book.tornBytes() == 0) {
      return;
    }
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.setLength(bytes.length() - book.tornBytes());
    }
  }

  private void write(String text) throws IOException {
    FileDrain drain = FileDrain.append(file);
    try {
      drain.write(text.getBytes(StandardCharsets.UTF_8));
      drain.force();
    } finally {
      drain.close();
    }
  }

  private static String chained(LedgerBook book, List<LedgerLine> lines) {
    Chain chain = Chain.after(book.lastH());
    StringBuilder text = new StringBuilder();
    for (LedgerLine line : lines) {
      text.append(chain.append(line.line())).append('\n');
    }
    return text.toString();
  }
}
