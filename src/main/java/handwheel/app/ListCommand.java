package handwheel.app;

import handwheel.casualty.Casualty;
import handwheel.ship.Condition;
import handwheel.ship.Ship;
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
    return "\n      names the scripts, and the ships with their start conditions, in the folder of drills";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments.of(words, List.of(), List.of());
    for (String name : drills.scripts()) {
      String title =
          drills.load(drills.file(name)).found().map(f -> title(f.casualty())).orElse("unreadable");
      console.result(String.join("  ", "script", name, title));
    }
    for (String id : drills.ships()) {
      console.result("ship    " + id);
      drills.ship(id).value().map(ListCommand::conditions).ifPresent(console::result);
    }
    return Exit.YES;
  }

  private static String conditions(Ship ship) {
    List<String> ids = ship.conditions().stream().map(Condition::id).toList();
    return "        starts: " + String.join(", ", ids);
  }

  private static String title(Casualty c) {
    return "\"" + c.title() + "\"";
  }
}
