package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.casualty.CrewState;
import handwheel.diagnostics.Finding;
import handwheel.diagnostics.SourceSpot;
import handwheel.drill.Draws;
import handwheel.drill.Engine;
import handwheel.scoring.Charge;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Proves a script by playing it: its witness earns all points with every seed; nobody passes by
 * doing nothing, nor without an order for a critical step; mistakes cost what they must and
 * harmless acts nothing; every point can be lost and every rule be broken.
 */
public final class Prover {
  private static final Effort FULL = new Effort(50, 100);
  private static final int IDLE_SEEDS = 5;
  private static final String GREEN = "crew=" + CrewState.GREEN;
  private static final int MOST_UNCAUGHT = 10;

  /** Cues a person can follow: ten in ten minutes (informed by EEMUA 191, value from memory). */
  private static final int MOST_CUES = 10;

  private static final long CUE_TICKS = 600L * Engine.TICKS_PER_S;

  private final Casualty casualty;
  private final Ship ship;
  private final Trials trials;
  private final Effort effort;
  private final List<Finding> findings = new ArrayList<>();

  /** Steps, rules and outcomes that anything cost points on. */
  private final TreeSet<String> charged = new TreeSet<>();

  /** With how many seeds the witness is played, from 1, and how many short lists are tried. */
  record Effort(int seeds, int cheapTries) {}

  private Prover(Casualty casualty, Ship ship, Trials trials, Effort effort) {
    this.effort = effort;
    this.casualty = casualty;
    this.ship = ship;
    this.trials = trials;
  }

  /**
   * Proves a script that can be read and has a witness.
   *
   * @param casualty the script
   * @param ship its ship
   * @param trials plays what is to be tried
   * @return what it showed
   */
  public static Verdict prove(Casualty casualty, Ship ship, Trials trials) {
    return prove(casualty, ship, trials, FULL);
  }

  static Verdict prove(Casualty casualty, Ship ship, Trials trials, Effort effort) {
    return new Prover(casualty, ship, trials, effort).verdict();
  }

  private Verdict verdict() {
    List<Outcome> witness = trials.play(witness());
    witness.stream().filter(o -> !o.isRight()).findFirst().ifPresent(this::lacking);
    List<Outcome> right = witness.stream().filter(Outcome::isRight).toList();
    List<Base> bases = Bases.of(casualty, ship, right);
    List<Outcome> idle = trials.play(idle(bases));
    idle.stream().filter(o -> o.sheet().isPass()).findFirst().ifPresent(this::idlePasses);
    cues(witness.get(0));
    cues(idle.get(0));
    idle.forEach(this::took);
    int mutants = bases.isEmpty() ? 0 : mutants(bases, right);
    int cheap = bases.isEmpty() ? 0 : cheap(bases);
    Judge judge = new Judge(casualty);
    judge.outcomes(charged);
    findings.addAll(judge.findings());
    findings.sort(Comparator.comparing(Finding::spot).thenComparing(Finding::id));
    List<Finding> told = findings.stream().distinct().toList();
    return new Verdict(told, effort.seeds(), mutants, cheap, par(witness));
  }

  private static long par(List<Outcome> witness) {
    long[] ticks = witness.stream().mapToLong(Outcome::actingTicks).sorted().toArray();
    return ticks[ticks.length / 2];
  }

  private List<Trial> witness() {
    return LongStream.rangeClosed(1, effort.seeds())
        .mapToObj(seed -> new Trial("the witness", seed, () -> player(seed)))
        .toList();
  }

  private WitnessPlayer player(long seed) {
    return new WitnessPlayer(Draws.inRun(casualty, seed), ship);
  }

  /** Nothing is ordered, with a few seeds and in every case that was drawn. */
  private static List<Trial> idle(List<Base> bases) {
    return LongStream.concat(
            LongStream.rangeClosed(1, IDLE_SEEDS),
            bases.stream().mapToLong(Base::seed).filter(seed -> seed > IDLE_SEEDS))
        .mapToObj(seed -> new Trial("nothing", seed, () -> new ListPlayer(List.of())))
        .toList();
  }

  private void lacking(Outcome outcome) {
    Optional<Charge> first = outcome.sheet().charges().stream().findFirst();
    String lost =
        first.map(c -> ", first on `" + c.step() + "` (" + c.type().word() + ")").orElse("");
    findings.add(
        ProofId.WITNESS_LACKS_POINTS.at(
            first.map(Charge::spot).orElseGet(this::start),
            "the witness earns "
                + outcome.sheet().points()
                + " points with seed "
                + outcome.trial().seed()
                + lost,
            "Look at `rehearse " + casualty.id() + " --seed " + outcome.trial().seed() + "`."));
  }

  private void idlePasses(Outcome outcome) {
    findings.add(
        ProofId.IDLE_PASSES.at(
            start(),
            "a run in which nothing is ordered passes with " + outcome.sheet().points() + " points",
            "Grade what people must do, and mark as critical what must not be missing."));
  }

  private void cues(Outcome outcome) {
    List<Long> ticks = outcome.cueTicks();
    for (int i = MOST_CUES; i < ticks.size(); i++) {
      if (ticks.get(i) - ticks.get(i - MOST_CUES) <= CUE_TICKS) {
        findings.add(
            ProofId.MANY_CUES.at(
                start(),
                "more than " + MOST_CUES + " cues come within ten minutes",
                "Leave out what does not help to tell the casualty."));
        return;
      }
    }
  }

  private SourceSpot start() {
    return casualty.witness().get(0).spot();
  }

  private int mutants(List<Base> bases, List<Outcome> right) {
    List<Mutant> each = each(bases);
    right.stream()
        .flatMap(o -> Uncaught.of(Base.of(casualty, ship, o)).stream())
        .limit(MOST_UNCAUGHT)
        .forEach(each::add);
    List<Outcome> outcomes = play(each);
    Judge judge = new Judge(casualty);
    judge.each(each, outcomes);
    judge.points(each, outcomes);
    judge.needed(each, outcomes);
    Rules rules = new Rules(casualty, bases);
    int harms = rules.tryAll(this::play);
    judge.rules(rules.broken());
    findings.addAll(judge.findings());
    return each.size() + harms;
  }

  /** The first run's mutants; of the others what they add, and every order left out. */
  private static List<Mutant> each(List<Base> bases) {
    TreeSet<String> tried = new TreeSet<>();
    return bases.stream()
        .flatMap(b -> Stream.concat(Slips.of(b).stream(), Wrongs.of(b).stream()))
        .filter(m -> tried.add(m.what()) || m.what().startsWith(Slips.DROP))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  /**
   * What a drilled watch does unordered is no cheap win; so with a green one where there is one.
   */
  private int cheap(List<Base> all) {
    List<Base> green = all.stream().filter(b -> b.run().words().contains(GREEN)).toList();
    List<Base> bases = green.isEmpty() ? all : green;
    List<Mutant> tries = new ArrayList<>();
    for (int i = 0; i < bases.size(); i++) {
      int upTo = effort.cheapTries() * (i + 1) / bases.size();
      tries.addAll(CheapTries.of(bases.get(i), upTo - tries.size()));
    }
    Judge judge = new Judge(casualty);
    judge.cheap(tries, play(tries));
    findings.addAll(judge.findings());
    return tries.size();
  }

  private List<Outcome> play(List<Mutant> mutants) {
    List<Outcome> outcomes = trials.play(mutants.stream().map(Mutant::trial).toList());
    outcomes.forEach(this::took);
    return outcomes;
  }

  private void took(Outcome outcome) {
    charged.addAll(outcome.charged());
  }
}
