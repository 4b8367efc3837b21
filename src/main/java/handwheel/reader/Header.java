package handwheel.reader;

import java.util.List;

/** The first key of every file: what it is and in which version. */
final class Header {
  /** The key. */
  static final String KEY = "handwheel";

  private static final String VERSION = "1";

  private Header() {}

  static Key key() {
    return Key.must(KEY, Form.HEADER, "what file this is and in which version");
  }

  /** Reports a header that is not {@code KIND 1}. */
  static void check(MapNode map, String kind) {
    String wanted = kind + " " + VERSION;
    map.get(KEY, (n, f) -> Scalars.scalar(n, "`" + wanted + "`", f))
        .filter(s -> !s.text().equals(wanted))
        .ifPresent(
            s ->
                map.findings()
                    .add(
                        FindingId.WRONG_HEADER,
                        s.spot(),
                        Say.quoted(s.text()) + " stands here; this program reads `" + wanted + "`",
                        Say.offer(s.text(), List.of(wanted))));
  }
}
