package handwheel.reader;

import handwheel.ship.Condition;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.List;
import java.util.Optional;

/** Gathers the names a script may use: the ship's and its own. */
final class ScriptNames {
  private final Names names = new Names();

  private ScriptNames() {}

  /** Gathers all names; ids given twice are reported. */
  static Names of(YamlNode root, Ship ship, Findings findings) {
    ScriptNames gatherer = new ScriptNames();
    gatherer.ship(ship);
    gatherer.script(root, findings);
    return gatherer.names;
  }

  private void ship(Ship ship) {
    names.add(Named.PLACE, ship.places().stream().map(Place::id).toList());
    names.add(Named.FITTING, ship.fittings().stream().map(Fitting::id).toList());
    names.add(Named.GAUGE, ship.gauges().stream().map(Gauge::id).toList());
    names.add(Named.WATCHSTANDER, ship.watch().stream().map(Watchstander::id).toList());
    names.add(Named.CONDITION, ship.conditions().stream().map(Condition::id).toList());
  }

  private void script(YamlNode root, Findings findings) {
    names.declareAll(Named.PHASE, root.at("phases"), findings);
    names.declareAll(Named.STEP, root.at("response"), findings);
    Names.checkUnique(root.at("cautions"), "a caution", findings);
    Names.checkUnique(root.at("never"), "a never", findings);
    items(root, "response").forEach(step -> report(step));
    items(root, "phases").forEach(phase -> phase(phase, findings));
    if (root.at("vary").orElse(root) instanceof YamlNode.Mapping vary && vary != root) {
      vary.entries().forEach(e -> names.add(Named.VARIATION, e.key()));
    }
  }

  private void phase(YamlNode phase, Findings findings) {
    for (YamlNode act : items(phase, "do")) {
      act.scalarAt("cue").ifPresent(id -> names.add(Named.CUE, id));
      if (act.at("fault").isPresent()) {
        act.scalarAt("id").ifPresent(id -> names.declare(Named.FAULT, id, findings));
      }
    }
    items(phase, "next").forEach(way -> way.at("when").ifPresent(this::reports));
  }

  private void reports(YamlNode condition) {
    report(condition);
    items(condition, "all").forEach(this::reports);
  }

  private void report(YamlNode node) {
    node.scalarAt("report").ifPresent(id -> names.add(Named.REPORT, id));
  }

  private static List<YamlNode> items(YamlNode node, String key) {
    Optional<YamlNode> list = node.at(key);
    return list.map(YamlNode::items).orElse(List.of());
  }
}
