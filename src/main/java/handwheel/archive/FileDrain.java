package handwheel.archive;

import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file that only grows. It is a stream and not a channel, because a channel closes itself under a
 * thread that was interrupted, and a run must be recorded to its end.
 */
final class FileDrain implements Drain {
  private final FileOutputStream out;

  FileDrain(FileOutputStream out) {
    this.out = out;
  }

  /** Makes a file that must not be there yet. */
  static FileDrain create(Path file) throws IOException {
    Files.createFile(file);
    FileDrain drain = append(file);
    forceFolder(folderOf(file));
    return drain;
  }

  /** Goes on with a file, or makes it. */
  static FileDrain append(Path file) throws IOException {
    return new FileDrain(new FileOutputStream(file.toFile(), true));
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    out.write(bytes);
  }

  @Override
  public void force() throws IOException {
    out.getFD().sync();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  /** Makes a folder with those above it. A link to a folder is one already. */
  static void makeFolder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
  }

  static Path folderOf(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw new IOException("it is the root of a disk");
    }
    return folder;
  }

  /** Makes a new name last. Not every system can open a folder; there the name lasts anyway. */
  static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Nothing is lost but the promise that a new name outlives a loss of power.
      return;
    }
  }
}
