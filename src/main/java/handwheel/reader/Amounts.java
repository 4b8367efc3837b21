package handwheel.reader;

import handwheel.casualty.Amount;
import java.util.List;
import java.util.Optional;

/** Reads figures that are fixed or drawn: a quantity, or {@code vary NAME}. */
final class Amounts {
  private static final String VARY = "vary ";

  private Amounts() {}

  static NodeReader<Amount> of(Wanted wanted, List<String> variations) {
    return (node, findings) ->
        Scalars.scalar(node, wanted.words() + " or `vary NAME`", findings)
            .flatMap(s -> amount(s, node, wanted, variations, findings));
  }

  private static Optional<Amount> amount(
      YamlNode.Scalar scalar,
      YamlNode node,
      Wanted wanted,
      List<String> variations,
      Findings findings) {
    if (!scalar.text().startsWith(VARY)) {
      return Measures.si(wanted).read(node, findings).map(Amount.Fixed::new);
    }
    String name = scalar.text().substring(VARY.length()).strip();
    if (variations.contains(name)) {
      return Optional.of(new Amount.Drawn(name));
    }
    findings.add(
        FindingId.UNKNOWN_NAME,
        scalar.spotAt(VARY.length()),
        Say.quoted(name) + " is no variation of this script",
        Say.offer(name, variations));
    return Optional.empty();
  }
}
