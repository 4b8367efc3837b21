package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.util.List;
import java.util.Optional;

/** A piece of a YAML file: texts, lists and mappings, each with its place. */
sealed interface YamlNode {
  /** Returns where it starts. */
  SourceSpot spot();

  /** Returns what it is, for people. */
  String words();

  /** Returns the items of a list; of anything else none. */
  default List<YamlNode> items() {
    return List.of();
  }

  /** Returns the value under a key of a mapping. */
  default Optional<YamlNode> at(String key) {
    return Optional.empty();
  }

  /** Returns the text under a key of a mapping. */
  default Optional<Scalar> scalarAt(String key) {
    return at(key).filter(Scalar.class::isInstance).map(Scalar.class::cast);
  }

  /**
   * A single text.
   *
   * @param text as written, without quotes
   * @param isQuoted whether its author marked it as a text: by quotes or as a block
   * @param textSpot where the text itself starts, behind the quote
   * @param isOneLine whether columns can be counted on from {@code textSpot}
   */
  record Scalar(
      String text, boolean isQuoted, SourceSpot textSpot, boolean isOneLine, SourceSpot spot)
      implements YamlNode {
    @Override
    public String words() {
      return "a text";
    }

    /** Returns whether nothing at all was written. */
    boolean isMissing() {
      return !isQuoted && text.isEmpty();
    }

    /**
     * Returns the place of the character at an index, or of the whole text if it cannot be told.
     */
    SourceSpot spotAt(int index) {
      if (!isOneLine || index > text.length()) {
        return spot;
      }
      int column = textSpot.column() + text.codePointCount(0, index);
      return new SourceSpot(spot.file(), spot.line(), column);
    }
  }

  /** A list. */
  record Items(List<YamlNode> items, SourceSpot spot) implements YamlNode {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return "a list";
    }
  }

  /**
   * A mapping.
   *
   * @param entries in the order of the file, no key twice
   * @param isFlow whether it is written in braces
   */
  record Mapping(List<Entry> entries, boolean isFlow, SourceSpot spot) implements YamlNode {
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public String words() {
      return "a mapping";
    }

    @Override
    public Optional<YamlNode> at(String key) {
      return entries.stream().filter(e -> e.key().text().equals(key)).map(Entry::value).findFirst();
    }
  }

  /** A key and its value. */
  record Entry(Scalar key, YamlNode value) {}

  /** Something that was found fault with already; nothing more is said about it. */
  record Refused(SourceSpot spot) implements YamlNode {
    @Override
    public String words() {
      return "something refused";
    }
  }
}
