package handwheel.debrief;

import handwheel.casualty.Step;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.ship.Order;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stood around a mistake: when it was said, where the man was, who came to harm. */
final class Circumstance {
  private final List<Entry> run;
  private final StepWords words;
  private final Attempts attempts;
  private final Times times;

  Circumstance(List<Entry> run, StepWords words, Attempts attempts) {
    this.run = List.copyOf(run);
    this.words = words;
    this.attempts = attempts;
    this.times = Times.of(run);
  }

  /** Returns sentences to add to what happened, each with a blank before it; often none. */
  String of(Charge c, Step step) {
    String around =
        switch (c.type()) {
          case LATE -> said(step);
          case WRONG_PLACE -> whereabouts(c);
          case WRONG_WAY, PARTIAL -> orders(step);
          case NOT_CONFIRMED -> repeated(step);
          case OMITTED, EARLY, OUT_OF_ORDER, WRONG_FITTING, UNSAFE, NOT_REPORTED, HARM, NO_FAULT ->
              "";
        };
    return around + attempts.refusals(step);
  }

  private String orders(Step step) {
    String said =
        attempts.toward(step).stream()
            .map(o -> "`" + o.say() + "` at " + times.at(o.t()))
            .collect(Collectors.joining(", "));
    return said.isEmpty() ? "" : " You said " + said + ".";
  }

  /** What was repeated in the place of what was said. */
  private String repeated(Step step) {
    return attempts.toward(step).stream()
        .flatMap(o -> run.stream().filter(e -> isOther(e, o)))
        .map(Entry.Repeated.class::cast)
        .map(r -> " At " + times.at(r.t()) + " he repeated `" + r.say() + "`.")
        .collect(Collectors.joining());
  }

  private static boolean isOther(Entry e, Entry.OrderSaid said) {
    return e instanceof Entry.Repeated r && r.n() == said.n() && !r.say().equals(said.say());
  }

  private String said(Step step) {
    return attempts
        .firstTick(step)
        .map(t -> " You first said it at " + times.at(t) + ".")
        .orElse("");
  }

  /** Where the man stood who was told; only a place outside the fire room tells something. */
  private String whereabouts(Charge c) {
    Optional<String> who =
        attempts
            .order(c.tick())
            .flatMap(o -> o instanceof Order.Work w ? Optional.of(w.who()) : Optional.empty());
    return run.stream()
        .filter(e -> e instanceof Entry.Arrived a && e.t() <= c.tick() && isOf(a, who))
        .map(Entry.Arrived.class::cast)
        .reduce((a, b) -> b)
        .filter(a -> isOutside(a.place()))
        .map(
            a ->
                " When you said it, "
                    + words.names().title(a.who())
                    + " had been at "
                    + words.names().place(a.place())
                    + " since "
                    + times.at(a.t())
                    + ".")
        .orElse("");
  }

  private static boolean isOf(Entry.Arrived arrived, Optional<String> who) {
    return who.filter(arrived.who()::equals).isPresent();
  }

  private boolean isOutside(String place) {
    return words.names().ship().place(place).filter(p -> !p.isInside()).isPresent();
  }

  /** Returns who came to harm and when, and when everyone was ordered out. */
  String harmed() {
    Map<String, String> people = new LinkedHashMap<>();
    for (Entry e : run) {
      if (e instanceof Entry.Person p && (p.is().equals("hurt") || p.is().equals("down"))) {
        String text = words.names().title(p.who()) + " " + p.is() + " at " + times.at(p.t());
        people.merge(p.who(), text, (a, b) -> a + ", " + p.is() + " at " + times.at(p.t()));
      }
    }
    String who = Names.capital(people.values().stream().collect(Collectors.joining("; ")));
    String out =
        run.stream()
            .filter(e -> e instanceof Entry.OrderSaid o && o.say().equals("everyone leave"))
            .findFirst()
            .map(e -> " Everyone was ordered out at " + times.at(e.t()) + ".")
            .orElse(" Everyone was never ordered out.");
    return who + "." + out;
  }
}
