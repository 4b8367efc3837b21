package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.casualty.Fault;
import handwheel.casualty.Phase;
import handwheel.diagnostics.SourceSpot;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds a brief that names the casualty: all words of its family, or of a fault of a machine. */
final class GivenAway {
  private final Casualty casualty;
  private final Findings findings;

  GivenAway(Casualty casualty, Findings findings) {
    this.casualty = casualty;
    this.findings = findings;
  }

  void check(SourceSpot brief) {
    List<String> said =
        List.of(casualty.brief().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"));
    Optional<String> given =
        Stream.concat(Stream.of(casualty.family()), faults())
            .filter(name -> Arrays.stream(name.split("-")).allMatch(said::contains))
            .findFirst();
    given.ifPresent(
        name ->
            findings.add(
                FindingId.BRIEF_GIVES_AWAY,
                brief,
                "the brief says " + Say.quoted(name.replace('-', ' ')),
                "Tell what the watch is told before it strikes."));
  }

  private Stream<String> faults() {
    return casualty.phases().stream()
        .map(Phase::acts)
        .flatMap(List::stream)
        .filter(Fault.OfMachine.class::isInstance)
        .map(a -> ((Fault.OfMachine) a).kind().word());
  }
}
