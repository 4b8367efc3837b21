package handwheel.archive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Another Java program with the same class path. */
final class Child implements AutoCloseable {
  private final Process process;
  private final BufferedReader out;

  private Child(Process process) {
    this.process = process;
    this.out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  static Child start(Class<?> main, String... args) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command = new ArrayList<>(List.of(java, "-Xshare:auto", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(main.getName());
    command.addAll(List.of(args));
    return new Child(
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
  }

  /** Returns the next lines it prints, fewer if it ends. */
  List<String> lines(int atMost) throws IOException {
    List<String> lines = new ArrayList<>();
    while (lines.size() < atMost) {
      String line = out.readLine();
      if (line == null) {
        break;
      }
      lines.add(line);
    }
    return lines;
  }

  /** Ends it as {@code kill -9} does; what it printed can still be read. */
  void kill() throws InterruptedException {
    process.toHandle().destroyForcibly();
    process.waitFor();
  }

  int await() throws InterruptedException {
    return process.waitFor();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
