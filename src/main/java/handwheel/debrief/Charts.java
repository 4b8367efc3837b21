package handwheel.debrief;

import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import handwheel.plant.Quantity;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.StepResult;
import handwheel.ship.Gauge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the telling gauges showed, with the cues and the acts on them. */
final class Charts {
  private static final int MOST_MARKS = 26;

  private final Scripts.Found found;
  private final List<Entry> entries;
  private final List<Block.Mark> marks;

  Charts(Scripts.Found found, List<Entry> entries, ScoreSheet sheet, StepWords words) {
    this.found = found;
    this.entries = List.copyOf(entries);
    this.marks = marks(sheet, words);
  }

  List<Block.Mark> marks() {
    return marks;
  }

  /** A chart for each telling gauge: those that prove a step, and pressure, water, superheat. */
  List<Block.Chart> all() {
    return found.ship().gauges().stream()
        .filter(this::isTelling)
        .flatMap(g -> chart(g).stream())
        .toList();
  }

  private boolean isTelling(Gauge gauge) {
    return gauge.of() == Quantity.DRUM_PRESSURE
        || gauge.of() == Quantity.DRUM_LEVEL
        || gauge.of() == Quantity.SUPERHEATER_OUTLET_TEMPERATURE
        || found.casualty().response().stream().anyMatch(s -> isProof(s, gauge));
  }

  private static boolean isProof(Step step, Gauge gauge) {
    return step.test() instanceof StepTest.ReadProof r && r.gauge().equals(gauge.id());
  }

  private Optional<Block.Chart> chart(Gauge gauge) {
    List<Block.Point> points = new ArrayList<>();
    for (Entry e : entries) {
      if (e instanceof Entry.State s && s.gauge().containsKey(gauge.id())) {
        points.add(new Block.Point(s.t(), s.gauge().get(gauge.id())));
      }
    }
    if (points.isEmpty()) {
      return Optional.empty();
    }
    long last = entries.stream().mapToLong(Entry::t).max().orElse(0);
    points.add(new Block.Point(last, points.get(points.size() - 1).milli()));
    String title = "Gauge: " + gauge.name();
    return Optional.of(new Block.Chart(title, gauge.unit().symbol(), points, marks));
  }

  private List<Block.Mark> marks(ScoreSheet sheet, StepWords words) {
    Times times = Times.of(entries);
    List<Block.Mark> all = new ArrayList<>();
    Stream.concat(cues(words), steps(sheet, words))
        .sorted(Comparator.comparingLong(Block.Mark::tick))
        .limit(MOST_MARKS)
        .forEach(
            m ->
                all.add(
                    new Block.Mark(
                        String.valueOf((char) ('A' + all.size())),
                        m.tick(),
                        times.at(m.tick()),
                        m.text())));
    return List.copyOf(all);
  }

  private Stream<Block.Mark> cues(StepWords words) {
    return entries.stream()
        .filter(e -> e instanceof Entry.CueGiven c && c.noticed())
        .map(e -> new Block.Mark("", e.t(), "", "Cue: " + words.cue(((Entry.CueGiven) e).id())));
  }

  private Stream<Block.Mark> steps(ScoreSheet sheet, StepWords words) {
    return sheet.steps().stream()
        .filter(StepResult::isDone)
        .map(r -> new Block.Mark("", r.instantTick(), "", "You: " + act(r, words)));
  }

  private String act(StepResult r, StepWords words) {
    return found.casualty().step(r.step()).map(words::act).orElse(r.step());
  }
}
