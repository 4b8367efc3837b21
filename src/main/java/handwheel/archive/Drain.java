package handwheel.archive;

import java.io.IOException;

/** Where the bytes of a file go. */
interface Drain {
  /** Writes all bytes in one call to the system. */
  void write(byte[] bytes) throws IOException;

  /** Returns when what was written is on the disk. */
  void force() throws IOException;

  void close() throws IOException;
}
