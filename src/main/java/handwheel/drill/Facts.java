package handwheel.drill;

import handwheel.casualty.When;
import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/** What has happened so far that a condition can ask for, and whether a condition holds. */
final class Facts implements When.Visitor<Boolean> {
  private final Scene scene;
  private final Truths truths;
  private final SortedMap<String, Double> drawn;
  private final List<String> cues = new ArrayList<>();
  private final List<String> messages = new ArrayList<>();
  private boolean isCounted;

  Facts(Scene scene, Truths truths, SortedMap<String, Double> drawn) {
    this.drawn = drawn;
    this.scene = scene;
    this.truths = truths;
  }

  /** Takes note of an entry a condition may ask for. */
  void note(Entry entry) {
    if (entry instanceof Entry.CueGiven c) {
      cues.add(c.id());
    } else if (entry instanceof Entry.Passed p) {
      messages.add(p.message());
    } else if (entry instanceof Entry.Counted c) {
      isCounted = c.missing().isEmpty();
    }
  }

  Truths truths() {
    return truths;
  }

  boolean holds(When when) {
    return when.accept(this);
  }

  /** Returns the true value behind a condition in thousandths, 0 where there is none. */
  long reading(When when) {
    if (when instanceof When.PlantIs p) {
      return (long) StrictMath.floor(truths.value(p.truth()) * 1000 + 0.5);
    }
    if (when instanceof When.All all) {
      return all.parts().stream()
          .filter(When.PlantIs.class::isInstance)
          .findFirst()
          .map(this::reading)
          .orElse(0L);
    }
    return 0;
  }

  @Override
  public Boolean plantIs(When.PlantIs when) {
    return when.bound().holds(truths.value(when.truth()));
  }

  @Override
  public Boolean gaugeIs(When.GaugeIs when) {
    int i = scene.instruments.index(when.gauge());
    return when.bound().holds(scene.instruments.shownSi(i));
  }

  @Override
  public Boolean reportPassed(When.ReportPassed when) {
    return messages.contains(when.message()) == when.is();
  }

  @Override
  public Boolean cueGiven(When.CueGiven when) {
    return cues.contains(when.cue()) == when.is();
  }

  @Override
  public Boolean countDone(When.CountDone when) {
    return isCounted == when.is();
  }

  @Override
  public Boolean drawnIs(When.DrawnIs when) {
    return when.holds(drawn);
  }

  @Override
  public Boolean all(When.All when) {
    for (When part : when.parts()) {
      if (!holds(part)) {
        return false;
      }
    }
    return true;
  }
}
