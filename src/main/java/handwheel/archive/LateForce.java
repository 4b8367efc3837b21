package handwheel.archive;

import java.io.IOException;

/** A file that is forced to disk once, when it is closed. */
final class LateForce implements Drain {
  private final Drain file;

  LateForce(Drain file) {
    this.file = file;
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    file.write(bytes);
  }

  @Override
  public void force() {
    // Put off until the end.
  }

  @Override
  public void close() throws IOException {
    file.force();
    file.close();
  }
}
