package handwheel.app;

import handwheel.casualty.Casualty;
import handwheel.ship.Condition;
import handwheel.ship.Ship;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

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
    return "\n      names the scripts by family, with the witness's time (par) and whether they may be\n"
        + "      run as scored; and the ships with their start conditions";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments.of(words, List.of(), List.of());
    for (List<Shelf> family : families()) {
      console.result(family.get(0).family().isEmpty() ? "unread" : family.get(0).family());
      family.forEach(s -> console.result(line(s)));
    }
    for (String id : drills.ships()) {
      console.result("ship    " + id);
      drills.ship(id).value().map(ListCommand::conditions).ifPresent(console::result);
    }
    return Exit.YES;
  }

  private Collection<List<Shelf>> families() throws Usage, IOException {
    TreeMap<String, List<Shelf>> families = new TreeMap<>();
    for (String name : drills.scripts()) {
      Shelf shelf = Shelf.of(drills, name);
      families.computeIfAbsent(shelf.family(), f -> new ArrayList<>()).add(shelf);
    }
    return families.values();
  }

  /** A name longer than its column pushes the rest to the right. */
  private static String line(Shelf shelf) {
    String par = shelf.par().isEmpty() ? "" : "par " + shelf.par();
    return String.format(
            Locale.ROOT,
            "  %-24s %-9s  %-14s  %s",
            shelf.name(),
            par,
            shelf.state(),
            shelf.casualty().map(ListCommand::title).orElse(""))
        .stripTrailing();
  }

  private static String conditions(Ship ship) {
    List<String> ids = ship.conditions().stream().map(Condition::id).toList();
    return "        starts: " + String.join(", ", ids);
  }

  private static String title(Casualty c) {
    return "\"" + c.title() + "\"";
  }
}
