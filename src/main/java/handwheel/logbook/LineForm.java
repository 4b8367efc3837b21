package handwheel.logbook;

import java.io.IOException;

/**
 * How one kind of line is written and read. Both sides name the same keys in the same order.
 *
 * @param kind the value of {@code k}
 * @param type what the line says
 * @param put writes the keys after {@code k}
 * @param take reads them
 */
record LineForm<T>(String kind, Class<T> type, Put<T> put, Take<T> take) {
  /** Writes a value's keys. */
  @FunctionalInterface
  interface Put<T> {
    void into(FieldWriter out, T value) throws IOException;
  }

  /** Reads a value's keys. */
  @FunctionalInterface
  interface Take<T> {
    T from(FieldReader in) throws IOException;
  }

  void write(FieldWriter out, Object value) throws IOException {
    out.text("k", kind);
    put.into(out, type.cast(value));
  }
}
