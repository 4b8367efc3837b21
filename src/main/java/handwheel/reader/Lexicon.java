package handwheel.reader;

import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every name a script may use: the ship's, and those the script itself gives to phases, steps,
 * cues, leaks, reports and variations.
 */
record Lexicon(
    Ship ship,
    List<String> phases,
    List<String> steps,
    List<String> cues,
    List<String> leaks,
    List<String> messages,
    List<String> variations) {

  /** Collects the names a script gives. */
  static Lexicon of(MapNode script, Ship ship) {
    List<String> cues = new ArrayList<>();
    List<String> leaks = new ArrayList<>();
    List<String> messages = new ArrayList<>();
    for (YamlNode phase : items(script, "phases")) {
      for (YamlNode act : phase.at("do").map(YamlNode::items).orElse(List.of())) {
        act.scalarAt("cue").ifPresent(s -> cues.add(s.text()));
        act.scalarAt("fault").flatMap(f -> act.scalarAt("id")).ifPresent(s -> leaks.add(s.text()));
      }
      for (YamlNode next : phase.at("next").map(YamlNode::items).orElse(List.of())) {
        next.at("when").flatMap(w -> w.scalarAt("report")).ifPresent(s -> messages.add(s.text()));
      }
    }
    for (YamlNode step : items(script, "response")) {
      step.scalarAt("report").ifPresent(s -> messages.add(0, s.text()));
    }
    return new Lexicon(
        ship,
        Names.declared(script, "phases", "id"),
        Names.declared(script, "response", "id"),
        cues,
        leaks,
        messages.stream().distinct().toList(),
        variations(script));
  }

  private static List<YamlNode> items(MapNode script, String key) {
    return script.node(key).map(YamlNode::items).orElse(List.of());
  }

  private static List<String> variations(MapNode script) {
    return script
        .node("vary")
        .filter(YamlNode.Mapping.class::isInstance)
        .map(n -> ((YamlNode.Mapping) n).entries().stream().map(e -> e.key().text()).toList())
        .orElse(List.of());
  }

  NodeReader<String> phase() {
    return Names.of("a phase", phases);
  }

  NodeReader<String> cue() {
    return Names.of("a cue", cues);
  }

  NodeReader<String> message() {
    return Names.of("a report", messages);
  }

  NodeReader<String> fitting() {
    return Names.of("a fitting", ship.fittings().stream().map(Fitting::id).toList());
  }

  NodeReader<String> gauge() {
    return Names.of("a gauge", ship.gauges().stream().map(Gauge::id).toList());
  }

  NodeReader<String> place() {
    return Names.of("a place", placeIds());
  }

  List<String> placeIds() {
    return ship.places().stream().map(Place::id).toList();
  }

  NodeReader<String> who() {
    return Names.of("a watchstander", whoIds());
  }

  List<String> whoIds() {
    return ship.watch().stream().map(Watchstander::id).toList();
  }

  Optional<Place> placeOf(String id) {
    return ship.place(id);
  }
}
