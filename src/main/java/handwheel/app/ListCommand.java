package handwheel.app;

import handwheel.casualty.Casualty;
import java.io.IOException;
import java.util.List;

/** {@code list}: what there is to drill. */
final class ListCommand implements Command {
  private final Drills drills;

  ListCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "list";
  }

  @Override
  public String summary() {
    return "\n      names the scripts and ships in the folder of drills";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments.of(words, List.of(), List.of());
    for (String name : drills.scripts()) {
      String title =
          drills.load(drills.file(name)).found().map(f -> title(f.casualty())).orElse("unreadable");
      console.result(String.join("  ", "script", name, title));
    }
    drills.ships().forEach(s -> console.result("ship    " + s));
    return Exit.YES;
  }

  private static String title(Casualty c) {
    return "\"" + c.title() + "\"";
  }
}
