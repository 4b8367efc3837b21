package handwheel.archive;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a second program off a folder for a moment. The lock is on a side file, because closing any
 * stream on a locked file may drop the lock. Locks are advice between programs like this one, and
 * network file systems may not keep them.
 */
final class FolderLock {
  private static final int PAUSE_MS = 5;
  private static final int TRIES = 1000;

  private final Path sideFile;
  private final int tries;

  FolderLock(Path sideFile) {
    this(sideFile, TRIES);
  }

  FolderLock(Path sideFile, int tries) {
    this.sideFile = sideFile;
    this.tries = tries;
  }

  /** Waits about five seconds for the lock at most, then works under it. */
  <T> T holding(DiskWork<T> work) throws IOException {
    // A channel closes itself under an interrupted thread; a run that was broken off by Ctrl-C must
    // still get its line.
    boolean interrupted = Thread.interrupted();
    try (RandomAccessFile file = new RandomAccessFile(sideFile.toFile(), "rw")) {
      acquire(file);
      return work.run();
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** Closing the file gives the lock back. */
  private void acquire(RandomAccessFile file) throws IOException {
    for (int i = 0; i < tries; i++) {
      if (tryLock(file) != null) {
        return;
      }
      pause();
    }
    throw new IOException("another program holds `" + sideFile + "` and does not let go");
  }

  private static @Nullable FileLock tryLock(RandomAccessFile file) throws IOException {
    try {
      return file.getChannel().tryLock();
    } catch (OverlappingFileLockException e) {
      // This same program holds it on another thread.
      return null;
    }
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("it was interrupted while it waited for another program", e);
    }
  }
}
