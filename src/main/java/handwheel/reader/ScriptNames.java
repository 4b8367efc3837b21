package handwheel.reader;

import handwheel.casualty.FaultKind;
import handwheel.ship.Condition;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Gathers the names a script may use: the ship's and its own. */
final class ScriptNames {
  /** Faults whose flow a condition may name. */
  private static final List<String> LEAKS =
      Stream.of(FaultKind.LEAK, FaultKind.TUBE_RUPTURE, FaultKind.ECONOMIZER_LEAK)
          .map(FaultKind::word)
          .toList();

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
    List<YamlNode> rules = new ArrayList<>(items(root, "never"));
    rules.addAll(items(root, "outcome"));
    Names.checkUnique(rules, "a never or an outcome", findings);
    variations(root);
    items(root, "response").forEach(this::step);
    if (items(root, "phases").isEmpty()) {
      names.leaveOpen(Named.CUE, Named.FAULT, Named.LEAK, Named.REPORT);
    }
    items(root, "phases").forEach(phase -> phase(phase, findings));
  }

  private void variations(YamlNode root) {
    for (YamlNode vary : root.at("vary").stream().toList()) {
      if (vary instanceof YamlNode.Mapping mapping) {
        mapping.entries().forEach(e -> names.add(Named.VARIATION, e.key()));
      } else {
        names.leaveOpen(Named.VARIATION);
      }
    }
  }

  private void step(YamlNode step) {
    report(step);
    if (StepReader.SHAPES.byKey().keySet().stream().noneMatch(k -> step.at(k).isPresent())) {
      names.leaveOpen(Named.REPORT);
    }
  }

  private void phase(YamlNode phase, Findings findings) {
    boolean isListed = phase.at("do").filter(n -> !(n instanceof YamlNode.Items)).isEmpty();
    if (!isListed || hasUnknownKey(phase)) {
      names.leaveOpen(Named.CUE, Named.FAULT, Named.LEAK, Named.REPORT);
    }
    items(phase, "do").forEach(act -> act(act, findings));
    items(phase, "next").forEach(way -> way.at("when").ifPresent(this::reports));
  }

  private static boolean hasUnknownKey(YamlNode phase) {
    return !(phase instanceof YamlNode.Mapping mapping)
        || mapping.entries().stream()
            .anyMatch(e -> PhaseReader.SHAPE.key(e.key().text()).isEmpty());
  }

  private void act(YamlNode act, Findings findings) {
    if (act.at("fault").isPresent()) {
      act.scalarAt("id")
          .ifPresentOrElse(
              id -> fault(act, id, findings), () -> names.leaveOpen(Named.FAULT, Named.LEAK));
    } else if (act.at("outside").isEmpty() && act.at("mend").isEmpty()) {
      act.scalarAt("cue")
          .ifPresentOrElse(
              id -> names.add(Named.CUE, id),
              () -> names.leaveOpen(Named.CUE, Named.FAULT, Named.LEAK));
    }
  }

  private void fault(YamlNode act, YamlNode.Scalar id, Findings findings) {
    names.declare(Named.FAULT, id, findings);
    Optional<String> word = act.scalarAt("fault").map(YamlNode.Scalar::text);
    if (word.filter(LEAKS::contains).isPresent()) {
      names.add(Named.LEAK, id);
    } else if (word.filter(FaultReader.SHAPES::containsKey).isEmpty()) {
      names.leaveOpen(Named.LEAK);
    }
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
