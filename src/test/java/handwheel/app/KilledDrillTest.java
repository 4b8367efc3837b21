package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import handwheel.archive.RecordFile;
import handwheel.logbook.Entry;
import handwheel.logbook.RunRecord;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drill in a real terminal that is told to end by the system. */
class KilledDrillTest {
  private static final Path SCRIPT = Path.of("/usr/bin/script");
  private static final long DEADLINE_NS = TimeUnit.SECONDS.toNanos(30);

  @TempDir private Path dir;

  @Test
  void endsWithinASecondWithTheScreenLeftAndTheRecordWhole() throws Exception {
    assumeTrue(Files.isExecutable(SCRIPT) && Files.exists(Path.of("/dev/ptmx")));
    Process terminal = terminal();
    StringBuffer screen = new StringBuffer();
    Thread reading = reading(terminal, screen);
    try {
      until(() -> screen.toString().contains("Superheated"));
      OutputStream keys = terminal.getOutputStream();
      // A key before a page has stood there for a while is not taken, so Enter is pressed until the
      // drill runs; on an empty order line it does nothing.
      until(
          () -> {
            keys.write('\r');
            keys.flush();
            Thread.sleep(400);
            return record().filter(r -> r.lines().size() > 6).isPresent();
          });
      ProcessHandle drill = drill(terminal);
      drill.destroy();
      drill.onExit().get(1, TimeUnit.SECONDS);
      terminal.waitFor(5, TimeUnit.SECONDS);
      reading.join(5000);
      assertThat(screen.toString()).contains("\u001b[?1049h").contains("\u001b[?1049l");
      RunRecord record = record().orElseThrow();
      assertThat(record.problems()).isEmpty();
      assertThat(record.entries()).anyMatch(Entry.Ended.class::isInstance);
    } finally {
      terminal.destroyForcibly();
    }
  }

  private Process terminal() throws IOException {
    String java = ProcessHandle.current().info().command().orElseThrow();
    String command =
        String.join(
            " ",
            java,
            "-cp",
            System.getProperty("java.class.path"),
            "handwheel.app.Main drill steam-leak --seed 1 --records",
            dir.toString());
    ProcessBuilder builder = new ProcessBuilder(SCRIPT.toString(), "-qec", command, "/dev/null");
    builder.environment().put("TERM", "xterm");
    return builder.redirectErrorStream(true).start();
  }

  private static Thread reading(Process terminal, StringBuffer screen) {
    Thread thread =
        new Thread(
            () -> {
              byte[] some = new byte[4096];
              try {
                for (int n = read(terminal, some); n > 0; n = read(terminal, some)) {
                  screen.append(new String(some, 0, n, StandardCharsets.UTF_8));
                }
              } catch (IOException e) {
                screen.append(e);
              }
            });
    thread.start();
    return thread;
  }

  private static int read(Process terminal, byte[] some) throws IOException {
    return terminal.getInputStream().read(some);
  }

  private static ProcessHandle drill(Process terminal) {
    return terminal
        .descendants()
        .filter(p -> p.info().command().filter(c -> c.endsWith("java")).isPresent())
        .findFirst()
        .orElseThrow();
  }

  private Optional<RunRecord> record() {
    try (Stream<Path> files = Files.list(dir)) {
      return files.filter(f -> f.toString().endsWith(".hwr")).findFirst().map(RecordFile::read);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Something that comes true after a while. */
  private interface Hope {
    boolean isTrue() throws IOException, InterruptedException;
  }

  private static void until(Hope hope) throws Exception {
    long deadline = System.nanoTime() + DEADLINE_NS;
    while (!hope.isTrue()) {
      assertThat(System.nanoTime()).as("in time").isLessThan(deadline);
      Thread.sleep(50);
    }
  }
}
