package handwheel.debrief;

import handwheel.logbook.Entry;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.ScoreText;
import handwheel.scoring.Scorer;
import java.util.ArrayList;
import java.util.List;

/** The debrief as text: the score sheet, then what happened, in the order of time. */
public final class DebriefText {
  private DebriefText() {}

  /**
   * Tells a run.
   *
   * @param entries entries of the record, with or without a score
   * @param found its ship and script
   * @return lines
   */
  public static List<String> lines(List<Entry> entries, Scripts.Found found) {
    List<Entry> run = entries.stream().filter(e -> !(e instanceof Entry.Score)).toList();
    ScoreSheet sheet = Scorer.score(found.casualty(), found.ship(), run);
    List<String> lines =
        new ArrayList<>(ScoreText.lines(found.casualty(), found.ship(), run, sheet));
    lines.add("");
    lines.add("WHAT HAPPENED (minutes:seconds from the start)");
    Sentences sentences = new Sentences(found);
    for (Entry e : run) {
      sentences.told(e).ifPresent(s -> lines.add(clock(e.t()) + "  " + s));
    }
    return lines;
  }

  private static String clock(long tick) {
    String clock = Sentences.clock(tick);
    return " ".repeat(Math.max(0, 5 - clock.length())) + clock;
  }
}
