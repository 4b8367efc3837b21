package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Upon;
import handwheel.casualty.Window;
import handwheel.casualty.WitnessLine;
import handwheel.ship.Ship;
import handwheel.units.Measure;
import java.util.List;
import java.util.Optional;

/** What to wait for before an act: what the witness waits for, told as people notice it. */
final class Trigger {
  private final Casualty casualty;
  private final StepWords words;
  private final Names names;

  Trigger(Casualty casualty, StepWords words, Names names) {
    this.casualty = casualty;
    this.words = words;
    this.names = names;
  }

  /** What to do next time, as an order to oneself with its cue. */
  String next(Step step, List<String> says) {
    String say = says.isEmpty() ? "see to it: " + words.act(step) : said(says);
    String cue = cue(step, says);
    return cue + before(step, cue) + ": " + say + ".";
  }

  /** What must have come before, as far as the cue does not say it already. */
  private String before(Step step, String cue) {
    List<String> acts =
        step.after().keySet().stream()
            .flatMap(id -> casualty.step(id).stream())
            .filter(
                s ->
                    !(s.test() instanceof StepTest.ReadProof r
                        && cue.contains(names.gauge(r.gauge()))))
            .map(words::act)
            .toList();
    return acts.isEmpty() ? "" : ", and only after " + String.join(" and ", acts);
  }

  private String said(List<String> says) {
    return "say " + String.join("; then ", says.stream().map(s -> quoted(s)).toList());
  }

  private String quoted(String say) {
    return words.order(say) + " (`" + say + "`)";
  }

  private String cue(Step step, List<String> says) {
    Optional<String> upon = says.isEmpty() ? Optional.empty() : upon(says.get(0));
    return upon.or(() -> step.within().flatMap(Window::cue).map(c -> "On \"" + words.cue(c) + "\""))
        .orElse("As soon as it can be done");
  }

  /** What the witness waits for; where a line follows on the line before, what that waited for. */
  private Optional<String> upon(String say) {
    List<WitnessLine> lines = casualty.witness();
    int at = -1;
    for (int i = 0; i < lines.size() && at < 0; i++) {
      at = lines.get(i).say().equals(say) ? i : -1;
    }
    boolean isFollowing = at >= 0 && lines.get(at).upon() instanceof Upon.Said;
    String first = isFollowing && at > 0 ? ", next after `" + lines.get(at - 1).say() + "`" : "";
    while (at > 0 && lines.get(at).upon() instanceof Upon.Said) {
      at--;
    }
    return at < 0 ? Optional.empty() : words(lines.get(at).upon()).map(w -> w + first);
  }

  private Optional<String> words(Upon upon) {
    if (upon instanceof Upon.CueNoticed c) {
      return Optional.of("On \"" + words.cue(c.cue()) + "\"");
    }
    if (upon instanceof Upon.Done d) {
      return Optional.of("When " + names.fitting(d.fitting()) + " is reported done");
    }
    if (upon instanceof Upon.Refused r) {
      return Optional.of("When " + names.fitting(r.fitting()) + " is refused");
    }
    if (upon instanceof Upon.ReadingIs r) {
      return Optional.of("When you have the reading: " + reading(r));
    }
    if (upon instanceof Upon.Arrived a) {
      boolean isTrainee = a.who().equals(Ship.SUPERVISOR);
      String who = isTrainee ? "you are" : names.title(a.who()) + " is";
      return Optional.of("When " + who + " at " + names.place(a.place()));
    }
    if (upon instanceof Upon.Counted) {
      return Optional.of("When everyone is counted");
    }
    return upon instanceof Upon.Passed p
        ? Optional.of("When the " + p.message().replace('-', ' ') + " is passed")
        : Optional.empty();
  }

  private String reading(Upon.ReadingIs r) {
    String bound =
        names
            .ship()
            .gauge(r.gauge())
            .map(g -> new Measure(g.of().in(g.unit(), r.bound().si()), g.unit()))
            .map(Measure::text)
            .orElse("?");
    return names.gauge(r.gauge()) + (r.bound().isUpper() ? " below " : " above ") + bound;
  }
}
