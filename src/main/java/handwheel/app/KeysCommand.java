package handwheel.app;

import handwheel.archive.KeyFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code keys}: makes and lists the keys that sign records and decisions. */
final class KeysCommand implements Command {
  @Override
  public String name() {
    return "keys";
  }

  @Override
  public String summary() {
    return "make NAME | list | export NAME  [--keys DIR]\n"
        + "      keys that sign records and decisions; export prints the public key, which\n"
        + "      others need to know yours; the file with the private key never leaves you";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, List.of("--keys"), List.of());
    Path folder = args.value("--keys").map(Path::of).orElseGet(KeysCommand::usualFolder);
    List<String> rest = args.rest();
    String verb = rest.isEmpty() ? "list" : rest.get(0);
    if (verb.equals("list") && rest.size() <= 1) {
      KeyFile.list(folder).forEach(k -> console.result(line(k)));
    } else if (verb.equals("make") && rest.size() == 2) {
      console.result(line(KeyFile.make(folder, rest.get(1))));
      console.message(
          "Caution: whoever can read `" + folder + "` can sign as " + rest.get(1) + ".");
    } else if (verb.equals("export") && rest.size() == 2) {
      console.result(line(KeyFile.read(folder, rest.get(1))));
    } else {
      throw new Usage("`make NAME`, `list` or `export NAME` is needed.");
    }
    return Exit.YES;
  }

  private static String line(KeyFile key) {
    return key.signer().publicHex() + "  " + key.name();
  }

  /** Returns the folder of the user's keys, beside that of the records. */
  static Path usualFolder() {
    return Records.usualFolder().resolveSibling("keys");
  }
}
