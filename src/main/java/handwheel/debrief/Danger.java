package handwheel.debrief;

import handwheel.casualty.When;
import handwheel.units.Measure;
import java.util.stream.Collectors;

/** While what a rule holds, as people say it; empty for what was drawn and nobody need know. */
final class Danger implements When.Visitor<String> {
  private final StepWords words;

  Danger(StepWords words) {
    this.words = words;
  }

  /** Returns such as {@code while the furnace is lit}; empty where a rule always holds. */
  String text(When when) {
    return when.accept(this);
  }

  @Override
  public String plantIs(When.PlantIs when) {
    String id = when.truth().id();
    if (Figures.isYesOrNo(id)) {
      return "while " + Figures.state(id, !when.bound().isUpper());
    }
    String name = Figures.name(id);
    String bound = Figures.measure(id, when.bound().si());
    return "while " + name + (when.bound().isUpper() ? " is below " : " is above ") + bound;
  }

  @Override
  public String gaugeIs(When.GaugeIs when) {
    String bound =
        words
            .names()
            .ship()
            .gauge(when.gauge())
            .map(g -> new Measure(g.of().in(g.unit(), when.bound().si()), g.unit()).text())
            .orElse("?");
    String name = words.names().gauge(when.gauge());
    return "while " + name + (when.bound().isUpper() ? " stands below " : " stands above ") + bound;
  }

  @Override
  public String reportPassed(When.ReportPassed when) {
    return (when.is() ? "after the " : "before the ") + when.message().replace('-', ' ');
  }

  @Override
  public String cueGiven(When.CueGiven when) {
    return (when.is() ? "after \"" : "before \"") + words.cue(when.cue()) + "\"";
  }

  @Override
  public String countDone(When.CountDone when) {
    return (when.is() ? "after" : "before") + " everyone is counted";
  }

  @Override
  public String drawnIs(When.DrawnIs when) {
    return "";
  }

  @Override
  public String all(When.All when) {
    return when.parts().stream()
        .map(p -> p.accept(this))
        .filter(t -> !t.isEmpty())
        .collect(Collectors.joining(" and "));
  }
}
