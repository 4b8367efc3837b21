package handwheel.app;

import handwheel.debrief.Scripts;
import handwheel.debrief.Sentences;
import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;

/** What happened in a run, a line for each thing, minutes and seconds from the start. */
final class Timeline {
  private static final int CLOCK_WIDTH = 5;

  private Timeline() {}

  static List<String> lines(Scripts.Found found, List<Entry> entries) {
    Sentences sentences = new Sentences(found);
    List<String> lines = new ArrayList<>();
    lines.add("DRILL - what happened - " + found.casualty().id());
    for (Entry entry : entries) {
      sentences.told(entry).ifPresent(s -> lines.add(clock(entry.t()) + "  " + s));
    }
    return lines;
  }

  private static String clock(long tick) {
    String clock = Sentences.clock(tick);
    return " ".repeat(Math.max(0, CLOCK_WIDTH - clock.length())) + clock;
  }
}
