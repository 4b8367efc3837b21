package handwheel.proof;

import handwheel.logbook.Entry;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The orders of a run as lines of a witness: each waits for the last thing that was noticed before
 * it. What was belayed and said again because of a wrong repeat-back is left out, a witness does
 * that by himself. The first draft of a witness, to be read before it is used.
 */
public final class WitnessText {
  private static final int TICKS_PER_S = 20;

  private final List<String> lines = new ArrayList<>();
  private String upon = "";
  private long uponTick;

  private WitnessText() {}

  /**
   * Makes the lines.
   *
   * @param entries the entries of a run
   * @return lines for the script, the first is {@code witness:}
   */
  public static List<String> of(List<Entry> entries) {
    WitnessText text = new WitnessText();
    text.lines.add("witness:");
    entries.forEach(text::take);
    return text.lines;
  }

  private void take(Entry entry) {
    if (entry instanceof Entry.OrderSaid said && !said.say().startsWith("belay ")) {
      line(said);
    } else {
      noticed(entry)
          .ifPresent(
              what -> {
                upon = what;
                uponTick = entry.t();
              });
    }
  }

  private void line(Entry.OrderSaid said) {
    if (!upon.isEmpty()) {
      BigDecimal waitS =
          new BigDecimal(Math.max(0, said.t() - uponTick)).divide(new BigDecimal(TICKS_PER_S));
      lines.add(
          "  - {upon: "
              + upon
              + ", wait: "
              + waitS.toPlainString()
              + " s, say: "
              + said.say()
              + "}");
    }
    upon = lines.size() > 1 ? "said" : upon;
    uponTick = said.t();
  }

  private static Optional<String> noticed(Entry entry) {
    if (entry instanceof Entry.CueGiven c && c.noticed()) {
      return Optional.of("cue " + c.id());
    }
    if (entry instanceof Entry.Arrived a) {
      return Optional.of("arrived " + a.who() + " " + a.place());
    }
    if (entry instanceof Entry.Passed p) {
      return Optional.of("passed " + p.message());
    }
    return entry instanceof Entry.Counted c && c.missing().isEmpty()
        ? Optional.of("counted")
        : Optional.empty();
  }
}
