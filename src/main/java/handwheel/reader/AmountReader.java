package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Variation;
import handwheel.plant.Plant;
import handwheel.units.Measure;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads figures that are fixed or drawn: {@code 2 s} or {@code vary NAME}. */
final class AmountReader {
  private static final String VARY = "vary ";

  private final List<Variation> variations;
  private final Names names;
  private final TreeSet<String> used = new TreeSet<>();

  AmountReader(List<Variation> variations, Names names) {
    this.variations = List.copyOf(variations);
    this.names = names;
  }

  /** Returns whether a figure is drawn by this name somewhere in what was read. */
  boolean isUsed(String variation) {
    return used.contains(variation);
  }

  /** Reads a time, at least so many ticks; a fixed one is a whole number of them. */
  NodeReader<Amount> time(long leastTicks) {
    NodeReader<Double> fixed = Measures.wholeTicksS(leastTicks);
    return amount(Wanted.TIME, leastTicks * Plant.TICK_S, Limits.TIME_S, fixed);
  }

  /** Reads a length between two ends. */
  NodeReader<Amount> length(double leastM, double mostM) {
    return amount(Wanted.LENGTH, leastM, mostM, Measures.si(Wanted.LENGTH, leastM, mostM));
  }

  /** Reads a figure of a kind between two ends, SI. */
  NodeReader<Amount> figure(Wanted wanted, double least, double most) {
    return amount(wanted, least, most, Measures.si(wanted, least, most));
  }

  private NodeReader<Amount> amount(
      Wanted wanted, double least, double most, NodeReader<Double> fixed) {
    return (node, findings) -> {
      if (!(node instanceof YamlNode.Scalar scalar) || !scalar.text().startsWith(VARY)) {
        return fixed.read(node, findings).map(Amount.Fixed::new);
      }
      String name = scalar.text().substring(VARY.length()).strip();
      used.add(name);
      Optional<Variation> drawn =
          variations.stream().filter(v -> v.name().equals(name)).findFirst();
      if (drawn.filter(Variation::isOfWords).isPresent()) {
        wrongDraw(scalar, name, "words", findings);
        return Optional.empty();
      }
      boolean isGood =
          names.isKnown(Named.VARIATION, scalar, name, findings)
              && (drawn.isEmpty() || fits(drawn.get(), wanted, scalar, findings))
              && (drawn.isEmpty() || isInside(drawn.get(), least, most, scalar, findings));
      return isGood ? Optional.of(new Amount.Drawn(name)) : Optional.empty();
    };
  }

  /** Reads one of the words of a variation as its index. */
  Optional<Integer> word(String variation, YamlNode node, Findings findings) {
    used.add(variation);
    Optional<Variation> drawn =
        variations.stream().filter(v -> v.name().equals(variation)).findFirst();
    if (drawn.isEmpty()) {
      return Optional.empty();
    }
    if (!drawn.get().isOfWords()) {
      wrongDraw(node, variation, "a figure", findings);
      return Optional.empty();
    }
    List<String> words = drawn.get().words();
    return Scalars.word(node, words, findings).map(words::indexOf);
  }

  private static void wrongDraw(YamlNode node, String name, String draws, Findings findings) {
    findings.add(
        FindingId.WRONG_DRAW,
        node.spot(),
        Say.quoted(name) + " draws " + draws,
        "Words are asked for by `drawn`, figures are used by `vary`.");
  }

  private static boolean fits(
      Variation drawn, Wanted wanted, YamlNode.Scalar scalar, Findings findings) {
    boolean fits = wanted.units().contains(drawn.unit());
    if (!fits) {
      new UnitFault(scalar, wanted, findings).wrong(drawn.unit());
    }
    return fits;
  }

  private static boolean isInside(
      Variation drawn, double least, double most, YamlNode.Scalar scalar, Findings findings) {
    boolean isInside = drawn.fromSi() >= least && drawn.toSi() <= most;
    if (!isInside) {
      findings.add(
          FindingId.OUT_OF_RANGE,
          scalar.spot(),
          Say.quoted(scalar.text())
              + " can draw a figure outside "
              + Measure.ofSi(least, drawn.unit()).text()
              + " to "
              + Measure.ofSi(most, drawn.unit()).text(),
          "");
    }
    return isInside;
  }
}
