package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All ids of a file and of the ship behind it, gathered before anything is read, so that a part
 * with a mistake in it is still known by its name.
 */
final class Names {
  private final EnumMap<Named, Map<String, SourceSpot>> spots = new EnumMap<>(Named.class);

  /** Kinds of which some ids could not be told; an unknown name of them may well exist. */
  private final EnumSet<Named> open = EnumSet.noneOf(Named.class);

  /** Adds the ids of things that exist already. */
  void add(Named kind, Collection<String> ids) {
    ids.forEach(id -> of(kind).putIfAbsent(id, SourceSpot.wholeFile("")));
  }

  /** Adds an id that may be given several times. */
  void add(Named kind, YamlNode.Scalar id) {
    if (Scalars.hasFormOfId(id.text())) {
      of(kind).putIfAbsent(id.text(), id.spot());
    } else {
      open.add(kind);
    }
  }

  /** Adds an id that must be the only one of its kind. */
  void declare(Named kind, YamlNode.Scalar id, Findings findings) {
    if (Scalars.hasFormOfId(id.text())) {
      declare(of(kind), kind.words(), id, findings);
    } else {
      open.add(kind);
    }
  }

  /** Notes that ids of these kinds are missing because of a mistake that is reported elsewhere. */
  void leaveOpen(Named... kinds) {
    open.addAll(List.of(kinds));
  }

  /** Checks that no two items of a list have the same id, where nothing is named by it. */
  static void checkUnique(Optional<YamlNode> list, String words, Findings findings) {
    checkUnique(list.map(YamlNode::items).orElse(List.of()), words, findings);
  }

  static void checkUnique(List<YamlNode> items, String words, Findings findings) {
    Map<String, SourceSpot> seen = new LinkedHashMap<>();
    for (YamlNode item : items) {
      item.scalarAt("id").ifPresent(id -> declare(seen, words, id, findings));
    }
  }

  private static void declare(
      Map<String, SourceSpot> seen, String words, YamlNode.Scalar id, Findings findings) {
    SourceSpot before = id.isMissing() ? null : seen.putIfAbsent(id.text(), id.spot());
    if (before != null) {
      findings.add(
          FindingId.DUPLICATE_ID,
          id.spot(),
          Say.quoted(id.text())
              + " is the id of "
              + words
              + " in line "
              + before.line()
              + " already",
          "Give one of them another id.");
      findings.lose();
    }
  }

  /** Adds the id of every item of a list, each of which must be the only one. */
  void declareAll(Named kind, Optional<YamlNode> list, Findings findings) {
    List<YamlNode> items = list.map(YamlNode::items).orElse(List.of());
    if (items.isEmpty()) {
      open.add(kind);
    }
    for (YamlNode item : items) {
      item.scalarAt("id").ifPresentOrElse(id -> declare(kind, id, findings), () -> open.add(kind));
    }
  }

  List<String> ids(Named kind) {
    return new ArrayList<>(of(kind).keySet());
  }

  boolean has(Named kind, String id) {
    return of(kind).containsKey(id);
  }

  /** Returns where an id was given. */
  SourceSpot spot(Named kind, String id) {
    SourceSpot spot = of(kind).get(id);
    if (spot == null) {
      throw new IllegalArgumentException("no " + kind + " is called " + id);
    }
    return spot;
  }

  /** Returns a reader of one existing name. */
  NodeReader<String> one(Named kind) {
    return (node, findings) ->
        Scalars.scalar(node, kind.words(), findings)
            .filter(s -> isKnown(kind, s, s.text(), findings))
            .map(YamlNode.Scalar::text);
  }

  /** Returns a reader of a list of existing names. */
  NodeReader<List<String>> list(Named kind) {
    return (node, findings) -> Scalars.list(node, Limits.SCRIPT_ITEMS, one(kind), findings);
  }

  /** Returns whether a name, all or part of a scalar, exists; otherwise it is reported. */
  boolean isKnown(Named kind, YamlNode.Scalar scalar, String name, Findings findings) {
    if (has(kind, name)) {
      return true;
    }
    if (open.contains(kind) || name.contains(",")) {
      // It may be one of those that could not be told; only its form can be judged.
      Scalars.isId(scalar, name, findings);
      return false;
    }
    findings.add(
        kind.unknown(),
        scalar.spotAt(Math.max(0, scalar.text().lastIndexOf(name))),
        Say.quoted(name) + " stands here where " + kind.words() + " was expected",
        Say.offer(name, of(kind).keySet()));
    return false;
  }

  private Map<String, SourceSpot> of(Named kind) {
    return spots.computeIfAbsent(kind, k -> new LinkedHashMap<>());
  }
}
