package handwheel.reader;

import handwheel.diagnostics.NearestWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Several shapes of one thing, told apart by a key that only one of them has.
 *
 * @param what the thing, for people, with its article
 * @param byKey each shape by its key, in the order in which they are offered
 */
record OneShapeOf(String what, Map<String, Shape> byKey) {
  /** Makes one of several shapes, each told by the key at the same index. */
  static OneShapeOf of(String what, List<String> keys, Shape... shapes) {
    Map<String, Shape> byKey = new LinkedHashMap<>();
    for (int i = 0; i < shapes.length; i++) {
      byKey.put(keys.get(i), shapes[i]);
    }
    return new OneShapeOf(what, byKey);
  }

  /** Takes a node as a mapping of the one shape it fits; empty if it fits none or several. */
  Optional<MapNode> read(YamlNode node, Findings findings) {
    return key(node, findings).flatMap(k -> MapNode.of(node, shape(k), findings));
  }

  private Shape shape(String key) {
    return Optional.ofNullable(byKey.get(key)).orElseThrow();
  }

  /** Returns the key that tells the shape of a node; otherwise that is reported. */
  private Optional<String> key(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, what + " with its keys", findings);
      return Optional.empty();
    }
    List<String> there = byKey.keySet().stream().filter(k -> node.at(k).isPresent()).toList();
    if (there.size() == 1) {
      return Optional.of(there.get(0));
    }
    if (there.size() > 1) {
      findings.add(
          FindingId.CONFLICTING_KEYS,
          node.spot(),
          Say.quoted(there) + " exclude each other in " + what,
          "Keep one of them.");
    } else if (mapping.entries().stream().noneMatch(e -> isMisspelt(e, mapping, findings))) {
      findings.add(
          FindingId.MISSING_KEY,
          node.spot(),
          what + " needs one of " + Say.quoted(byKey.keySet()),
          "");
    }
    return Optional.empty();
  }

  private boolean isMisspelt(YamlNode.Entry entry, YamlNode.Mapping mapping, Findings findings) {
    boolean isKnown = byKey.values().stream().anyMatch(s -> s.key(entry.key().text()).isPresent());
    String word = Say.shown(entry.key().text());
    boolean isNear =
        byKey.keySet().stream().anyMatch(k -> word.startsWith(k + ":"))
            || !NearestWords.to(word, byKey.keySet()).isEmpty();
    if (!isKnown && isNear) {
      MapNode.reportUnknown(entry, mapping.isFlow(), what, List.copyOf(byKey.keySet()), findings);
    }
    return !isKnown && isNear;
  }
}
