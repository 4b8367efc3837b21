package handwheel.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** {@code new NAME}: writes a script that is sound, to be changed into one's own. */
final class NewCommand implements Command {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(?:-[a-z0-9]+)*");
  private static final int LONGEST = 40;

  private final Drills drills;

  NewCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "new";
  }

  @Override
  public String summary() {
    return "NAME\n      writes drills/NAME.yaml, a sound script to begin from";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    String name = Arguments.of(words, List.of(), List.of()).only("name");
    if (!NAME.matcher(name).matches() || name.length() > LONGEST) {
      throw new Usage("`" + name + "` is no name for a script; write such as `feed-pump-lost`.");
    }
    Path file = drills.folder().resolve(name + ".yaml");
    if (Files.exists(file)) {
      throw new Usage("`" + file + "` is there already.");
    }
    Files.writeString(file, starter().replace("NAME", name));
    console.result("Written: " + file);
    console.result("Next: `check " + name + "`, then change it line by line.");
    return Exit.YES;
  }

  private static String starter() throws IOException {
    try (InputStream in = NewCommand.class.getResourceAsStream("starter.yaml")) {
      if (in == null) {
        throw new IllegalStateException("the starter script is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
