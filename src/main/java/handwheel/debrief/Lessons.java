package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import handwheel.scoring.ScoreSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws the lesson from a score sheet and what each mistake cost. */
final class Lessons {
  private static final int MOST = 3;

  private final Lost lost;
  private final Times times;
  private final StepWords words;

  Lessons(Lost lost, Times times, StepWords words) {
    this.lost = lost;
    this.times = times;
    this.words = words;
  }

  Lesson of(Casualty casualty, ScoreSheet sheet, List<Cost> costs) {
    Optional<Charge> worst = worst(sheet, costs);
    return new Lesson(
        worst.map(c -> times.at(turnedTick(c))).orElse("0:00"),
        worst.map(this::turned).orElse("It did not turn: no act was charged."),
        worst.map(lost::next).orElse("The same again, a little sooner, with the other branch."),
        right(casualty, sheet),
        behaviours(sheet));
  }

  /** The mistake that cost most: people, then points, then the earliest. */
  private static Optional<Charge> worst(ScoreSheet sheet, List<Cost> costs) {
    Optional<Charge> dearest =
        costs.stream()
            .filter(Cost::isEnough)
            .min(
                Comparator.comparingInt((Cost c) -> c.mended().hurt() + c.mended().down())
                    .thenComparing(c -> !c.charge().isCritical())
                    .thenComparingInt(c -> -c.mended().points())
                    .thenComparingLong(c -> c.charge().tick()))
            .map(Cost::charge);
    return dearest.or(
        () ->
            sheet.charges().stream()
                .filter(c -> c.type() != ErrorClass.NO_FAULT && c.type() != ErrorClass.HARM)
                .max(Comparator.comparingInt(Charge::points)));
  }

  private String turned(Charge c) {
    return times.at(turnedTick(c)) + ", " + lost.name(c) + ": " + lost.happened(c);
  }

  /** What came late turned the drill when its time ran out. */
  private long turnedTick(Charge c) {
    return c.type() == ErrorClass.LATE
        ? lost.step(c)
            .flatMap(Step::within)
            .map(w -> Math.min(c.tick(), times.zeroTick() + w.ticks()))
            .orElse(c.tick())
        : c.tick();
  }

  private String right(Casualty casualty, ScoreSheet sheet) {
    List<String> done = new ArrayList<>();
    for (Step step : casualty.response()) {
      sheet.steps().stream()
          .filter(r -> r.step().equals(step.id()) && r.isDone() && isClean(step, sheet))
          .forEach(r -> done.add(words.act(step) + " (" + times.at(r.begunTick()) + ")"));
    }
    if (done.isEmpty()) {
      return "No act of the response went uncharged this time. You were here and you can run it"
          + " again.";
    }
    String more = done.size() > MOST ? "; and " + (done.size() - MOST) + " more" : "";
    List<String> first = done.subList(0, Math.min(MOST, done.size()));
    return Names.capital(String.join("; ", first)) + more + ".";
  }

  private static boolean isClean(Step step, ScoreSheet sheet) {
    return sheet.charges().stream().noneMatch(c -> c.spot().equals(step.grade().spot()));
  }

  private List<String> behaviours(ScoreSheet sheet) {
    Map<Behaviour, List<Charge>> groups = new EnumMap<>(Behaviour.class);
    for (Charge c : sheet.charges()) {
      Behaviour.of(c.type())
          .ifPresent(b -> groups.computeIfAbsent(b, k -> new ArrayList<>()).add(c));
    }
    return groups.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> -weight(e.getValue())))
        .limit(MOST)
        .map(e -> e.getKey().words() + " " + acts(e.getValue()))
        .toList();
  }

  private static int weight(List<Charge> charges) {
    return charges.stream().mapToInt(c -> c.points() + (c.isCritical() ? 1 : 0)).sum();
  }

  private String acts(List<Charge> charges) {
    return "This time: "
        + String.join("; ", charges.stream().map(c -> lost.name(c)).distinct().toList())
        + ".";
  }
}
