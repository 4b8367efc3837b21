package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.casualty.Caution;
import java.util.ArrayList;
import java.util.List;

/** The words that stand on the quiet pages: cautions, brief, help. */
final class Paper {
  static final String STANDING =
      "A trainer teaches. The ship's own procedures, local codes and licensed practice decide.";

  private Paper() {}

  static List<String> caution(Casualty casualty, int index) {
    Caution c = casualty.cautions().get(index);
    return List.of(
        "Caution " + (index + 1) + " of " + casualty.cautions().size(),
        "",
        c.signal(),
        "",
        c.hazard(),
        "",
        c.consequence(),
        "",
        c.avoid(),
        "",
        STANDING,
        "",
        "Enter: I have read this.");
  }

  static List<String> brief(Casualty casualty, String mode) {
    return List.of(
        casualty.title(),
        "",
        casualty.brief(),
        "",
        "Mode: " + mode + ". You are the fire-room supervisor.",
        "",
        "Orders: who, verb, fitting; words may be cut short. Tab fills in, Enter gives.",
        "xx  fires out   gg  everyone leave   /  report   ct  count   ?  every order",
        "!!  stops the drill",
        "",
        "Enter: I have the watch.");
  }

  static List<String> help(Expander expander) {
    List<String> rows = new ArrayList<>();
    rows.add("WHO open|shut|trip|reset|set|start|stop|light|secure FITTING [to] [from]");
    rows.add("WHO go|look PLACE   [WHO] read GAUGE   report MESSAGE to WHO");
    rows.add("everyone leave   muster PLACE   belay WHO (he repeated something else)");
    rows.add("Tab fills in, Enter gives, Up brings the last order back, Esc clears.");
    rows.add("=  go on (to who waits for it)   !!  stop   Ctrl-C twice  end");
    rows.addAll(expander.card());
    return rows;
  }
}
