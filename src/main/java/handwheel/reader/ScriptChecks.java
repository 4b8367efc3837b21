package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.casualty.Phase;
import handwheel.casualty.Step;
import handwheel.casualty.Window;
import handwheel.diagnostics.SourceSpot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What can be seen to be wrong with a whole script without running it. */
final class ScriptChecks {
  private final Casualty casualty;
  private final MapNode map;
  private final Findings findings;

  ScriptChecks(Casualty casualty, MapNode map, Findings findings) {
    this.casualty = casualty;
    this.map = map;
    this.findings = findings;
  }

  void run() {
    if (findings.lost() == 0) {
      points();
      phases();
      cycle();
      windows();
      cautions();
      title();
    }
  }

  private SourceSpot at(String key) {
    return map.node(key).map(YamlNode::spot).orElse(map.spot());
  }

  private void points() {
    int sum = casualty.response().stream().mapToInt(s -> s.grade().points()).sum();
    if (sum != 100) {
      findings.add(
          FindingId.POINTS_SUM,
          at("response"),
          "the points of the response add up to " + sum,
          "They must be 100.");
    }
  }

  private void phases() {
    TreeSet<String> reached = new TreeSet<>();
    reach(casualty.phases().get(0).id(), reached);
    for (Phase p : casualty.phases()) {
      if (!reached.contains(p.id())) {
        findings.add(
            FindingId.UNREACHABLE_PHASE,
            spotOf("phases", p.id()),
            "no way leads to phase `" + p.id() + "`",
            "Name it in the `next` of another phase, or leave it out.");
      }
      if (!p.isEnd() && p.next().isEmpty()) {
        findings.add(
            FindingId.DEAD_END,
            spotOf("phases", p.id()),
            "no way leads out of phase `" + p.id() + "`",
            "Give it a `next`, or `end: true`.");
      }
    }
    if (casualty.phases().stream().noneMatch(Phase::isEnd)) {
      findings.add(
          FindingId.NO_END, at("phases"), "no phase ends the drill", "Give one `end: true`.");
    }
  }

  private void reach(String id, Set<String> reached) {
    if (reached.add(id)) {
      casualty.phase(id).ifPresent(p -> p.next().forEach(t -> reach(t.to(), reached)));
    }
  }

  private SourceSpot spotOf(String list, String id) {
    return map.node(list).map(YamlNode::items).orElse(List.of()).stream()
        .filter(n -> n.scalarAt("id").filter(s -> s.text().equals(id)).isPresent())
        .map(YamlNode::spot)
        .findFirst()
        .orElse(at(list));
  }

  private void cycle() {
    for (Step s : casualty.response()) {
      Optional<List<String>> circle = back(s.id(), s.id(), List.of(s.id()));
      if (circle.isPresent()) {
        findings.add(
            FindingId.PRECEDENCE_CYCLE,
            s.grade().spot(),
            "steps come before each other in a circle: " + String.join(" after ", circle.get()),
            "Take one `after` away.");
        return;
      }
    }
  }

  private Optional<List<String>> back(String from, String goal, List<String> way) {
    for (String before : casualty.step(from).map(s -> s.after().keySet()).orElseThrow()) {
      List<String> longer = new ArrayList<>(way);
      longer.add(before);
      if (before.equals(goal)) {
        return Optional.of(longer);
      }
      if (!way.contains(before)) {
        Optional<List<String>> found = back(before, goal, longer);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private void windows() {
    for (Step s : casualty.response()) {
      for (Optional<Window> w : List.of(s.within(), s.done())) {
        if (w.isPresent() && w.get().ticks() > casualty.limitTicks()) {
          findings.add(
              FindingId.WINDOW_TOO_LONG,
              s.grade().spot(),
              "step `" + s.id() + "` allows more time than the drill lasts",
              "Shorten it, or lengthen `limit`.");
        }
      }
    }
  }

  private void cautions() {
    boolean isCritical =
        casualty.response().stream().anyMatch(s -> s.grade().isCritical())
            || casualty.nevers().stream().anyMatch(n -> n.grade().isCritical());
    if (isCritical && casualty.cautions().isEmpty()) {
      findings.add(
          FindingId.NO_CAUTION,
          map.spot(),
          "the script has critical acts and no caution",
          "Say in `cautions` what can hurt people here, before anybody acts.");
    }
  }

  private void title() {
    for (String word : casualty.family().split("-", -1)) {
      boolean isTold =
          word.length() > 3 && casualty.title().toLowerCase(java.util.Locale.ROOT).contains(word);
      if (isTold) {
        findings.add(
            FindingId.TITLE_TELLS,
            at("title"),
            "the title says `" + word + "`, which gives the answer away",
            "Write what is noticed first, not what it is.");
      }
    }
  }
}
