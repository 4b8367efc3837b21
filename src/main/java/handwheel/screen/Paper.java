package handwheel.screen;

import handwheel.casualty.Casualty;
import handwheel.casualty.Caution;
import handwheel.drill.Mode;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.List;

/** The words that stand on the quiet pages: cautions, brief, help, drill stop. */
final class Paper {
  static final String STANDING =
      "A trainer teaches. The ship's own procedures, local codes and licensed practice decide.";

  static final String REAL =
      "If a real casualty strikes: press ! three times and leave this terminal.";

  private static final int FORMS_A_ROW = 3;

  private static final List<String> ORDERS =
      List.of(
          "WHO open|shut|trip|reset|start|stop|light|secure FITTING...  [from PLACE]",
          "WHO set FITTING to SETTING     WHO go PLACE     WHO look PLACE",
          "[WHO] read GAUGE     report MESSAGE to WHO",
          "everyone leave     muster PLACE     belay WHO",
          "Cut words short while only one order fits: `bu-sat tr f`, `re g re`.");

  private Paper() {}

  /** Returns how many pages of cautions there are: at least the standing one. */
  static int cautions(Casualty casualty) {
    return Math.max(1, casualty.cautions().size());
  }

  /** Signal word, hazard, consequence and how to avoid it: informed by ANSI Z535.6, from memory. */
  static List<String> caution(Casualty casualty, int index) {
    if (casualty.cautions().isEmpty()) {
      return List.of("CAUTION", "", STANDING, "", REAL);
    }
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
        REAL);
  }

  static List<String> brief(Casualty casualty, Ship ship, Mode mode) {
    List<String> lines = new ArrayList<>(List.of(casualty.brief(), ""));
    lines.add("You are the fire-room supervisor. Mode: " + mode.word() + ". Your people:");
    for (Watchstander w : ship.watch()) {
      if (!w.id().equals(Ship.SUPERVISOR)) {
        String at = ship.place(w.at()).map(Place::name).orElse(w.at());
        lines.add(Text.left("  " + w.id(), 26) + Text.left(w.name(), 20) + at);
      }
    }
    lines.add("");
    lines.add("Order: who, verb, fitting. Cut words short; Tab fills in, Enter gives it.");
    lines.add("xx fires out, gg everyone leave, ? all orders, !! stops the drill.");
    return lines;
  }

  static List<String> help(Expander expander) {
    List<String> lines = new ArrayList<>(ORDERS);
    lines.add("");
    lines.add("Enter gives it   Tab fills in or lists   Up the last order   Esc clears");
    lines.add("Empty line:   = heard   n wrong, say it again   , stop that   z again");
    lines.add("Any time:   !! stops the drill   !!! a real casualty   Ctrl-C twice ends it");
    lines.add("");
    lines.addAll(columns(expander.card()));
    lines.addAll(FormFamilies.card());
    return lines;
  }

  static List<String> lineHelp(Expander expander) {
    List<String> lines = new ArrayList<>(ORDERS);
    lines.add(
        "= heard. n wrong: belay him and say it again. , stop that. z say again. + a hint. . stand still.");
    lines.add("g all gauges. who: people in sight.");
    lines.add("!! stops the drill. !!! a real casualty, leave. Ctrl-C twice ends the drill.");
    lines.add("Short forms:");
    expander.card().forEach(f -> lines.add(f.code() + ": " + String.join(" + ", f.orders())));
    lines.addAll(FormFamilies.card());
    return lines;
  }

  private static List<String> columns(List<ShortForms.Form> forms) {
    int rows = (forms.size() + FORMS_A_ROW - 1) / FORMS_A_ROW;
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      StringBuilder line = new StringBuilder();
      for (int i = row; i < forms.size(); i += rows) {
        ShortForms.Form f = forms.get(i);
        line.append(Text.left(Text.left(f.code(), 5) + f.name(), 26));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  static List<String> stopped(String notice) {
    List<String> lines = new ArrayList<>();
    lines.add("The drill stands still. The record says that it was stopped.");
    lines.add("");
    lines.add("!      This is a real casualty: leave this terminal now.");
    lines.add("Enter  The drill goes on.");
    if (!notice.isEmpty()) {
      lines.add("");
      lines.add(notice);
    }
    return lines;
  }

  static List<String> tooSmall(Size size, boolean isRunning) {
    return List.of(
        "This window is " + size.width() + " by " + size.height() + ".",
        "80 by 24 is needed.",
        "Make it larger, or start again with --lines.",
        isRunning ? "The drill goes on meanwhile; !! stops it." : "Ctrl-C leaves.");
  }
}
