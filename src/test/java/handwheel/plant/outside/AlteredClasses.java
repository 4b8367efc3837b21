package handwheel.plant.outside;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;

/**
 * Loads the whole program a second time with one constant changed, so that a check can be seen to
 * fail without a line of the program being written for it.
 */
final class AlteredClasses extends ClassLoader {
  private static final String OURS = "handwheel.";
  private static final String TABLE = "handwheel/water/saturation.csv";

  private final Alteration alteration;
  private final double factor;
  private int altered;

  AlteredClasses(Alteration alteration, double factor) {
    super(AlteredClasses.class.getClassLoader());
    this.alteration = alteration;
    this.factor = factor;
  }

  /** Returns the names of the checks that fail with the change. */
  List<String> failing() {
    SortedMap<String, Double> factors = new TreeMap<>();
    if (alteration.isNumber()) {
      factors.put(alteration.value(), factor);
      altered++;
    }
    List<String> failing = checks().apply(alteration.kinds(), factors);
    if (altered == 0) {
      throw new IllegalStateException("there is no constant like " + alteration);
    }
    return failing;
  }

  @SuppressWarnings("unchecked") // the same class, loaded again
  private BiFunction<List<String>, SortedMap<String, Double>, List<String>> checks() {
    try {
      return (BiFunction<List<String>, SortedMap<String, Double>, List<String>>)
          loadClass(OutsideChecks.class.getName()).getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      if (!name.startsWith(OURS)) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? define(name) : loaded;
    }
  }

  private Class<?> define(String name) throws ClassNotFoundException {
    byte[] bytes;
    try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
      if (in == null) {
        throw new ClassNotFoundException(name);
      }
      bytes = in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (alteration.classes().contains(name.substring(OURS.length()))) {
      alter(bytes, Double.parseDouble(alteration.value()));
    }
    return defineClass(name, bytes, 0, bytes.length);
  }

  /** Changes a double of the constant pool in place; layout by the JVM specification, 4.4. */
  private void alter(byte[] bytes, double value) {
    ByteBuffer file = ByteBuffer.wrap(bytes);
    int count = file.getShort(8) & 0xFFFF;
    int at = 10;
    for (int i = 1; i < count; i++) {
      int tag = file.get(at);
      boolean isDouble = tag == 6;
      if (isDouble && file.getDouble(at + 1) == value) {
        file.putDouble(at + 1, value * factor);
        altered++;
      }
      if (isDouble || tag == 5) {
        i++; // longs and doubles take two places
      }
      at += length(tag, file, at);
    }
  }

  private static int length(int tag, ByteBuffer file, int at) {
    return switch (tag) {
      case 1 -> 3 + (file.getShort(at + 1) & 0xFFFF);
      case 5, 6 -> 9;
      case 7, 8, 16, 19, 20 -> 3;
      case 15 -> 4;
      default -> 5;
    };
  }

  @Override
  public InputStream getResourceAsStream(String name) {
    InputStream in = super.getResourceAsStream(name);
    if (!alteration.isCell() || !name.equals(TABLE)) {
      return in;
    }
    try (in) {
      String text = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      return new ByteArrayInputStream(cell(text).getBytes(StandardCharsets.US_ASCII));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String cell(String text) {
    int line = text.indexOf("\n500") + 1;
    int from = text.indexOf(',', line) + 1;
    int to = text.indexOf(',', from);
    altered++;
    double value = Double.parseDouble(text.substring(from, to)) * factor;
    return text.substring(0, from) + value + text.substring(to);
  }
}
