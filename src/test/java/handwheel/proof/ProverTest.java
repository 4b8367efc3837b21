package handwheel.proof;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.diagnostics.Finding;
import handwheel.reader.Read;
import handwheel.reader.ScriptReader;
import handwheel.reader.ShipReader;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scripts that can be read and are still not sound, and what playing them shows. */
final class ProverTest {
  static final Path FOLDER = Path.of("src/test/resources/scripts/proof");
  private static final Ship SHIP = ship();
  private static final String SOUND = text(FOLDER.resolve("sound.yaml"));
  private static final Prover.Effort EFFORT = new Prover.Effort(3, 10);

  /** A mistake in the sound script: a text in it and what stands there instead. */
  record Flaw(String name, String from, String to) {
    @Override
    public String toString() {
      return name;
    }

    String script() {
      assertThat(SOUND).contains(from);
      return SOUND.replace(from, to);
    }
  }

  private static final String CUE =
      "{cue: call, told: everywhere, text: \"Bridge: secure the fires.\"}";

  static Stream<Flaw> flaws() {
    return Stream.of(
        new Flaw("time-too-short", "within: 10 s of cue call", "within: 1 s of cue call"),
        new Flaw(
            "said-twice",
            "  - {upon: said, wait: 1 s, say: burnerman-saturated",
            "  - {upon: said, wait: 1 s, say: burnerman-superheater trip fuel-trip-superheater}\n"
                + "  - {upon: said, wait: 1 s, say: burnerman-saturated"),
        new Flaw(
            "line-too-many",
            "witness:\n",
            "witness:\n  - {upon: cue call, wait: 1 s, say: remote-hand go remote-station}\n"),
        new Flaw(
            "rule-never-broken",
            "while: {plant: furnace.any.lit, is: true}",
            "while: {plant: drum.pressure, above: 5000 psig}"),
        new Flaw(
            "outcome-never-comes",
            "pass: 80 points",
            "outcome:\n  - {id: burst, when: {plant: drum.pressure, above: 5000 psig}, points: 20,"
                + " basis: model-only, why: Nothing holds that.}\npass: 80 points"),
        new Flaw(
            "free-order-in-a-hurry",
            "within: 10 s of cue call, points: 40",
            "within: 2.5 s of cue call, points: 40"),
        new Flaw("cues-without-end", CUE, CUE + cues()));
  }

  private static String cues() {
    return Stream.iterate(1, i -> i <= 10, i -> i + 1)
        .map(i -> ", {cue: bell-" + i + ", heard: everywhere, text: A bell.}")
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @MethodSource("flaws")
  void whatPlayingShowsIsTold(Flaw flaw) {
    String script = flaw.script();
    if (flaw.name().equals("free-order-in-a-hurry")) {
      script = script.replace("after: {out-superheater: N2}, ", "");
    }
    check(flaw.name(), verdict(script, ProverTest::played).findings());
  }

  @Test
  void aSoundScriptIsSound() {
    Verdict verdict = verdict(SOUND, ProverTest::played);

    assertThat(verdict.findings()).isEmpty();
    assertThat(verdict.mutants()).isGreaterThan(40);
    assertThat(verdict.cheapTries()).isEqualTo(10);
  }

  @Test
  void aTimeThatNobodyCanKeepIsFound() {
    String script =
        SOUND.replace(
            "out-saturated, fitting: fuel-trip-saturated, is: shut, within: 15 s of cue call",
            "out-saturated, fitting: bulkhead-stop, is: shut, within: 2 s of cue call, done: 20 s of cue"
                + " call, place: remote");
    check("too-far", Reach.of(read(script), SHIP));
    assertThat(Reach.of(read(SOUND), SHIP)).isEmpty();
  }

  /** Runs that ought to fail are made to pass, as a fault of the scoring would. */
  @Test
  void idlenessThatPassesIsFound() {
    check("idle", verdict(SOUND, passing(t -> t.name().equals("nothing"))).findings());
  }

  @Test
  void aCheapWinIsFound() {
    check("cheap", verdict(SOUND, passing(t -> t.name().contains("without step"))).findings());
  }

  /** With seed 4 a man of the steam leak repeats another order; the witness catches him. */
  @Test
  void aWrongRepeatBackLetPassIsCharged() {
    Casualty leak = read(text(Path.of("drills/steam-leak.yaml")));
    Outcome caught =
        Outcome.of(leak, SHIP, new Trial("right", 4, () -> new WitnessPlayer(leak, SHIP)));
    List<Mutant> letPass = Uncaught.of(Base.of(leak, SHIP, caught));

    assertThat(caught.isRight()).isTrue();
    assertThat(letPass).hasSize(1);
    Outcome outcome = Outcome.of(leak, SHIP, letPass.get(0).trial());
    assertThat(letPass.get(0).acts()).anyMatch(outcome::isCharged);
  }

  /** One run a word, so that a step of either case is seen to be lost. */
  @Test
  void everyDrawnWordIsTried() {
    Casualty drawn = read(text(Path.of("docs/scripts/examples/drawn-words.yaml")));
    List<Outcome> runs =
        LongStream.rangeClosed(1, 20)
            .mapToObj(s -> new Trial("right", s, () -> new WitnessPlayer(drawn, SHIP)))
            .map(t -> Outcome.of(drawn, SHIP, t))
            .filter(Outcome::isRight)
            .toList();
    List<Base> bases = Bases.of(drawn, SHIP, runs);

    assertThat(bases).hasSizeBetween(2, 6);
    assertThat(bases.stream().flatMap(b -> b.run().words().stream()).distinct())
        .containsExactlyInAnyOrderElementsOf(
            runs.stream().flatMap(o -> o.words().stream()).distinct().toList())
        .hasSizeGreaterThan(1);
  }

  @Test
  void aProofHoldsForItsScriptShipAndEngine() {
    Casualty casualty = read(SOUND);
    Verdict verdict = new Verdict(List.of(), 50, 1, 1, 61 * 20);
    String proof = ProofText.of(casualty, SHIP, verdict);

    assertThat(ProofText.outdated(proof, casualty, SHIP)).isEmpty();
    assertThat(ProofText.parS(proof)).hasValue(61);
    assertThat(ProofText.parS("par: soon\n")).isEmpty();
    assertThat(ProofText.outdated(proof, read(SOUND + "# changed\n"), SHIP))
        .containsExactly("script");
    assertThat(ProofText.outdated(proof.replace("engine: ", "engine: 9"), casualty, SHIP))
        .containsExactly("engine");
    assertThat(ProofText.outdated("", casualty, SHIP))
        .containsExactly("form", "script", "ship", "engine");
  }

  private static Trials passing(Predicate<Trial> which) {
    return trials -> {
      List<Outcome> outcomes = played(trials);
      Outcome right =
          played(List.of(new Trial("right", 1, () -> new WitnessPlayer(read(SOUND), SHIP)))).get(0);
      return outcomes.stream()
          .map(
              o ->
                  which.test(o.trial())
                      ? new Outcome(o.trial(), o.orders(), o.cueTicks(), o.words(), right.sheet())
                      : o)
          .toList();
    };
  }

  private static List<Outcome> played(List<Trial> trials) {
    return played(SOUND, trials);
  }

  private static List<Outcome> played(String script, List<Trial> trials) {
    Casualty casualty = read(script);
    return trials.stream().map(t -> Outcome.of(casualty, SHIP, t)).toList();
  }

  private static Verdict verdict(String script, Trials trials) {
    Trials own = t -> played(script, t);
    return Prover.prove(read(script), SHIP, script.equals(SOUND) ? trials : own, EFFORT);
  }

  static Casualty read(String script) {
    Read<Casualty> read =
        ScriptReader.read("flaw.yaml", script.getBytes(StandardCharsets.UTF_8), SHIP);
    assertThat(read.findings()).filteredOn(Finding::stopsTheDrill).isEmpty();
    return read.value().orElseThrow();
  }

  private static Ship ship() {
    Path folder = Path.of("drills/ships/alder-reach");
    return ShipReader.read(
            name ->
                Files.exists(folder.resolve(name))
                    ? Optional.of(bytes(folder.resolve(name)))
                    : Optional.empty())
        .value()
        .orElseThrow();
  }

  private static void check(String name, List<Finding> findings) {
    Path file = FOLDER.resolve(name + ".findings");
    String told = findings.stream().map(f -> f.text() + "\n").collect(Collectors.joining());
    if (Boolean.getBoolean("golden.update")) {
      write(file, told);
    }
    assertThat(told).isNotEmpty().isEqualTo(text(file));
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    return new String(bytes(file), StandardCharsets.UTF_8);
  }
}
