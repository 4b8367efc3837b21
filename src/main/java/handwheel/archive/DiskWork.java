package handwheel.archive;

import java.io.IOException;

/**
 * Something done on a disk.
 *
 * @param <T> what comes of it
 */
@FunctionalInterface
interface DiskWork<T> {
  T run() throws IOException;
}
