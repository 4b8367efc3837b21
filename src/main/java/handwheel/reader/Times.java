package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Casualty;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.casualty.Step;
import handwheel.casualty.Window;
import handwheel.plant.Plant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The earliest times of phases and cues, and whether the times of the steps can be kept with their
 * order: a simple temporal network (Dechter, Meiri, Pearl, Artificial Intelligence 49 (1991)
 * 61-95).
 */
final class Times {
  private static final String START = "the start";

  private final Casualty casualty;
  private final Map<String, Double> earliestS = new TreeMap<>();

  private Times(Casualty casualty) {
    this.casualty = casualty;
  }

  static void report(Casualty casualty, Names names, Findings findings) {
    Times times = new Times(casualty);
    times.walk();
    times.tooLate(names, findings);
    times.contradictions(findings);
  }

  /** Finds the earliest entry of each phase by relaxing ways until none gets earlier. */
  private void walk() {
    Deque<Phase> next = new ArrayDeque<>();
    earliestS.put(casualty.phases().get(0).id(), 0.0);
    next.add(casualty.phases().get(0));
    while (!next.isEmpty()) {
      Phase here = next.remove();
      double hereS = earliest(here.id());
      for (Phase.Transition way : here.next()) {
        double s = hereS + way.afterS().map(this::leastS).orElse(0.0);
        if (s < earliest(way.to())) {
          earliestS.put(way.to(), s);
          casualty.phase(way.to()).ifPresent(next::add);
        }
      }
    }
  }

  private double earliest(String phase) {
    return earliestS.getOrDefault(phase, Double.POSITIVE_INFINITY);
  }

  private double leastS(Amount amount) {
    if (amount instanceof Amount.Fixed fixed) {
      return fixed.si();
    }
    String name = ((Amount.Drawn) amount).variation();
    return casualty.vary().stream()
        .filter(v -> v.name().equals(name))
        .mapToDouble(v -> v.fromSi())
        .findFirst()
        .orElse(0);
  }

  private void tooLate(Names names, Findings findings) {
    double limitS = casualty.limitTicks() * Plant.TICK_S;
    for (Phase phase : casualty.phases()) {
      double s = earliest(phase.id());
      if (s > limitS && Double.isFinite(s)) {
        findings.add(
            FindingId.TOO_LATE_EVER,
            names.spot(Named.PHASE, phase.id()),
            "phase "
                + Say.quoted(phase.id())
                + " comes after "
                + Say.figure(s)
                + " s at the earliest; the drill's `limit` is "
                + Say.figure(limitS)
                + " s",
            "Raise the limit, or shorten the ways that lead there.");
      }
    }
  }

  private void contradictions(Findings findings) {
    TimeNet net = new TimeNet();
    for (Phase phase : casualty.phases()) {
      for (PhaseAct act : phase.acts()) {
        if (act instanceof PhaseAct.Cue cue && isGivenOnce(cue)) {
          later(net, phase, cue);
        }
      }
    }
    for (Step step : casualty.response()) {
      String name = step(step.id());
      step.within()
          .ifPresent(
              w -> {
                net.atLeast(origin(w), name, 0, name + " belongs to " + origin(w));
                double s = w.ticks() * Plant.TICK_S;
                net.atMost(
                    origin(w), name, s, name + " within " + Say.figure(s) + " s of " + origin(w));
              });
      step.after().keySet().forEach(b -> net.atLeast(step(b), name, 0, name + " after " + step(b)));
    }
    net.contradiction()
        .ifPresent(
            why ->
                findings.add(
                    FindingId.TIMES_CONTRADICT,
                    casualty.response().get(0).grade().spot(),
                    "these cannot all be kept: " + String.join("; ", why),
                    "Change one of the times, or take one `after` out."));
  }

  /** Of a cue that several phases give nothing can be said. */
  private boolean isGivenOnce(PhaseAct.Cue cue) {
    return casualty.phases().stream()
            .flatMap(p -> p.acts().stream())
            .filter(a -> a instanceof PhaseAct.Cue c && c.id().equals(cue.id()))
            .count()
        == 1;
  }

  /** A cue comes this long after every cue of a phase all its ways come from. */
  private void later(TimeNet net, Phase phase, PhaseAct.Cue cue) {
    List<Phase> before =
        casualty.phases().stream()
            .filter(p -> p.next().stream().anyMatch(t -> t.to().equals(phase.id())))
            .toList();
    if (before.size() == 1) {
      double s =
          before.get(0).next().stream()
              .filter(t -> t.to().equals(phase.id()))
              .mapToDouble(t -> t.afterS().map(this::leastS).orElse(0.0))
              .min()
              .orElse(0);
      before.get(0).acts().stream()
          .filter(PhaseAct.Cue.class::isInstance)
          .map(a -> cue(((PhaseAct.Cue) a).id()))
          .forEach(
              earlier ->
                  net.atLeast(
                      earlier,
                      cue(cue.id()),
                      s,
                      cue(cue.id()) + " at least " + Say.figure(s) + " s behind " + earlier));
    }
    net.atLeast(START, cue(cue.id()), 0, cue(cue.id()) + " after the start");
  }

  private static String origin(Window window) {
    return window.since().name().toLowerCase(Locale.ROOT) + " `" + window.of() + "`";
  }

  private static String cue(String id) {
    return "cue `" + id + "`";
  }

  private static String step(String id) {
    return "step `" + id + "`";
  }
}
