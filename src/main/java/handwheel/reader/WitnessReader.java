package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.casualty.Upon;
import handwheel.casualty.WitnessLine;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.units.Measure;
import java.util.List;
import java.util.Optional;

/** Reads the lines of a witness. */
final class WitnessReader {
  private static final List<String> EXAMPLES =
      List.of(
          "cue ID",
          "said",
          "done FITTING",
          "refused FITTING",
          "read GAUGE below QUANTITY",
          "arrived WHO PLACE",
          "wrong WHO",
          "counted",
          "passed REPORT");

  /** The keys of a line. */
  static final Shape LINE =
      Shape.of(
          "a line of the witness",
          Key.must("upon", Form.UPON, "what it waits for"),
          Key.must("wait", Form.TIME, "how long after it"),
          Key.must("say", Form.ORDER, "what it says"));

  private final Lexicon lexicon;

  WitnessReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  Optional<WitnessLine> read(MapNode map) {
    Optional<Upon> upon = map.get("upon", this::upon);
    Optional<Long> wait = map.get("wait", Measures.ticks(0));
    Optional<Order> say = map.get("say", Orders.of(lexicon.ship(), lexicon.messages()));
    if (upon.isEmpty() || wait.isEmpty() || say.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new WitnessLine(upon.get(), wait.get(), say.get().text(), map.spot()));
  }

  private Optional<Upon> upon(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> scalar = Scalars.scalar(node, "what the witness waits for", findings);
    return scalar.flatMap(s -> new Parts(s, findings, lexicon).upon());
  }

  /** The words of what a line waits for, each with its place. */
  private record Parts(YamlNode.Scalar scalar, Findings findings, Lexicon lexicon) {
    Optional<Upon> upon() {
      List<String> words = List.of(scalar.text().strip().split(" +"));
      return switch (words.get(0) + words.size()) {
        case "cue2" -> part(words, 1, lexicon.cue()).map(Upon.CueNoticed::new);
        case "said1" -> Optional.of(new Upon.Said());
        case "counted1" -> Optional.of(new Upon.Counted());
        case "done2" -> part(words, 1, lexicon.fitting()).map(Upon.Done::new);
        case "refused2" -> part(words, 1, lexicon.fitting()).map(Upon.Refused::new);
        case "wrong2" -> part(words, 1, lexicon.who()).map(Upon.Wrong::new);
        case "passed2" -> part(words, 1, lexicon.message()).map(Upon.Passed::new);
        case "arrived3" ->
            part(words, 1, lexicon.who())
                .flatMap(w -> part(words, 2, lexicon.place()).map(p -> new Upon.Arrived(w, p)));
        case "read5" -> reading(words);
        default -> wrong();
      };
    }

    private Optional<Upon> reading(List<String> words) {
      boolean isBelow = words.get(2).equals("below");
      if (!isBelow && !words.get(2).equals("above")) {
        return wrong();
      }
      Optional<Gauge> gauge = part(words, 1, lexicon.gauge()).flatMap(lexicon.ship()::gauge);
      return gauge.flatMap(g -> reading(g, isBelow, words.get(3) + " " + words.get(4)));
    }

    private Optional<Upon> reading(Gauge gauge, boolean isBelow, String figure) {
      int index = Math.max(0, scalar.text().indexOf(figure.substring(0, figure.indexOf(' '))));
      YamlNode.Scalar at =
          new YamlNode.Scalar(figure, true, scalar.spotAt(index), true, scalar.spotAt(index));
      Optional<Measure> m = Measures.measure(at, Wanted.of(gauge.of()), findings);
      return m.map(
          x -> new Upon.ReadingIs(gauge.id(), new Bound(isBelow, gauge.of().si(x).orElseThrow())));
    }

    private Optional<String> part(List<String> words, int i, NodeReader<String> reader) {
      int index = Math.max(0, scalar.text().indexOf(words.get(i), words.get(0).length()));
      YamlNode.Scalar at =
          new YamlNode.Scalar(words.get(i), true, scalar.spotAt(index), true, scalar.spotAt(index));
      return reader.read(at, findings);
    }

    private Optional<Upon> wrong() {
      findings.add(
          FindingId.BAD_UPON,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is nothing a witness can wait for",
          "It can wait for: " + Say.quoted(EXAMPLES) + ".");
      return Optional.empty();
    }
  }
}
