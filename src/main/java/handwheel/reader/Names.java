package handwheel.reader;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads names that must be there, and holds names apart that must be. */
final class Names {
  private Names() {}

  /** Returns a reader of ids of which each must be one of the valid ones. */
  static NodeReader<String> of(String what, Collection<String> valid) {
    return (node, findings) ->
        Scalars.scalar(node, what, findings)
            .filter(
                s -> {
                  boolean isThere = valid.contains(s.text());
                  if (!isThere) {
                    findings.add(
                        FindingId.UNKNOWN_NAME,
                        s.spot(),
                        Say.quoted(s.text()) + " stands here where " + what + " was expected",
                        Say.offer(s.text(), valid));
                  }
                  return isThere;
                })
            .map(YamlNode.Scalar::text);
  }

  /** Reads the ids under {@code id} of a list of mappings, so that others can refer to them. */
  static List<String> declared(MapNode map, String list, String key) {
    Optional<YamlNode> node = map.node(list);
    return node.map(YamlNode::items).orElse(List.of()).stream()
        .flatMap(item -> item.scalarAt(key).stream())
        .map(YamlNode.Scalar::text)
        .toList();
  }

  /** Reports every id that stands a second time in a list of mappings. */
  static void distinct(MapNode map, String list, String key) {
    TreeSet<String> seen = new TreeSet<>();
    for (YamlNode item : map.node(list).map(YamlNode::items).orElse(List.of())) {
      item.scalarAt(key)
          .filter(s -> !seen.add(s.text()))
          .ifPresent(
              s ->
                  map.findings()
                      .add(
                          FindingId.DUPLICATE_NAME,
                          s.spot(),
                          Say.quoted(s.text()) + " stands twice in `" + list + "`",
                          "Give one of the two another id."));
    }
  }
}
