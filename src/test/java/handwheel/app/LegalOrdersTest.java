package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Step;
import handwheel.casualty.Window;
import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Input;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.scoring.Charge;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.StepResult;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Properties of a fair score, on every drill that is shipped: orders said in another permitted
 * sequence and at other times inside their windows score 100; leaving an order out is never cheaper
 * than giving it late; nothing is charged twice; looking is free.
 *
 * <p>Permitted sequences are made without the scorer: orders of one volley (said one behind the
 * other, waiting for nothing) change places, unless a step of the one must follow a step of the
 * other, or both are meant for the same man, or he was ordered out, or a window would be missed.
 * Then each order is said later by a random while, and all that follows by as much, as far as every
 * window allows it.
 */
final class LegalOrdersTest {
  private static final int SEEDS = Integer.getInteger("legal.seeds", 2);
  private static final int SHUFFLES = Integer.getInteger("legal.shuffles", 2);
  private static final long VOLLEY_TICKS = 60;
  private static final long LATER_TICKS = 120 * 20;
  private static final int MOST_DELAY_TICKS = 3 * 20;

  private static final long AGAIN_TICKS = 15 * 20;
  private static final long MOST_AGAIN_TICKS = 120 * 20;

  /** A man's hand and walk may take so much longer another time. */
  private static final long MARGIN_TICKS = 2 * 20;

  private static final LongAdder OTHER_SEQUENCES = new LongAdder();
  private static final LongAdder OTHER_TIMES = new LongAdder();

  /** An order of a right run. */
  private record Said(
      long tick, String say, List<String> steps, long delayTicks, long completeTicks) {
    Said at(long other) {
      return new Said(other, say, steps, delayTicks, completeTicks);
    }

    /** Who is told; a belayed man must be told again after it. */
    String who() {
      String[] words = say.split(" ", 3);
      return words[0].equals("belay") ? words[1] : words[0];
    }
  }

  static Stream<String> drills() {
    return Shipped.DRILLS.scripts().stream()
        .filter(d -> d.contains(System.getProperty("legal.drill", "")));
  }

  @AfterAll
  static void otherSequencesAndTimesWereTried() {
    assertThat(OTHER_SEQUENCES.sum()).isPositive();
    assertThat(OTHER_TIMES.sum()).isPositive();
  }

  @ParameterizedTest
  @MethodSource("drills")
  void theScoreIsFair(String drill) throws IOException, Usage {
    Scripts.Found found = Shipped.DRILLS.load(Shipped.DRILLS.file(drill)).found().orElseThrow();
    LongStream.rangeClosed(1, SEEDS)
        .parallel()
        .forEach(seed -> new Fair(found.played(seed, Mode.PRACTICE), seed).check());
  }

  /** One drill with one seed. */
  private static final class Fair {
    private final Scripts.Found found;
    private final long seed;
    private final Random random;
    private final Scored base;
    private final List<Said> right;

    Fair(Scripts.Found found, long seed) {
      this.found = found;
      this.seed = seed;
      this.random = new Random(seed);
      this.base = play(new WitnessPlayer(found.casualty(), found.ship()));
      this.right = said();
    }

    void check() {
      assertThat(base.sheet().points()).as("%s, the witness", name()).isEqualTo(100);
      for (int i = 0; i < SHUFFLES; i++) {
        List<Said> other = untilSeen(delayed(shuffled(right)));
        count(other);
        ScoreSheet sheet = played(other);
        assertThat(sheet.points()).as("%s, %s: %s", name(), other, sheet.charges()).isEqualTo(100);
      }
      List<Said> acts = right.stream().filter(s -> !s.steps.isEmpty()).toList();
      int at = right.indexOf(acts.get(random.nextInt(acts.size())));
      ScoreSheet late =
          played(with(at, Optional.of(right.get(at).at(right.get(at).tick + LATER_TICKS))));
      ScoreSheet out = played(with(at, Optional.empty()));
      assertThat(out.points())
          .as("%s, `%s` left out against late", name(), right.get(at).say)
          .isLessThanOrEqualTo(late.points());
      ScoreSheet swapped = played(shuffled(with(at, Optional.empty())));
      assertThat(swapped.points())
          .as("%s, free orders swapped where `%s` is left out", name(), right.get(at).say)
          .isEqualTo(out.points());
      chargedOnce(late);
      chargedOnce(out);
      lookingIsFree();
    }

    private void count(List<Said> other) {
      boolean isSameSequence =
          other.stream().map(Said::say).toList().equals(right.stream().map(Said::say).toList());
      OTHER_SEQUENCES.add(isSameSequence ? 0 : 1);
      OTHER_TIMES.add(other.equals(right) ? 0 : 1);
    }

    private String name() {
      return found.casualty().id() + " seed " + seed;
    }

    private static void chargedOnce(ScoreSheet sheet) {
      int lost = sheet.charges().stream().mapToInt(Charge::points).sum();
      assertThat(sheet.points()).isEqualTo(100 - lost);
      assertThat(sheet.charges().stream().map(c -> c.step() + " " + c.type()).toList())
          .doesNotHaveDuplicates();
    }

    /** He looks at the gauge before him before anything happens. */
    private void lookingIsFree() {
      String at = found.ship().watch().get(0).at();
      found.ship().gauges().stream()
          .filter(g -> g.at().contains(at))
          .findFirst()
          .ifPresent(
              g -> {
                List<Said> looked = new ArrayList<>(right);
                looked.add(0, new Said(20, "read " + g.id(), List.of(), 0, 0));
                assertThat(played(looked).points()).as("%s, a look", name()).isEqualTo(100);
              });
    }

    private List<Said> said() {
      List<Said> all = new ArrayList<>();
      for (Entry e : base.entries()) {
        if (e instanceof Entry.OrderSaid o) {
          List<StepResult> served =
              base.sheet().steps().stream().filter(s -> s.orders().contains(o.n())).toList();
          long delay = served.stream().mapToLong(s -> s.instantTick() - o.t()).max().orElse(0);
          long done = served.stream().mapToLong(s -> s.completeTick() - o.t()).max().orElse(0);
          all.add(
              new Said(
                  o.t(),
                  o.say(),
                  served.stream().map(StepResult::step).toList(),
                  Math.max(0, delay),
                  Math.max(0, done)));
        }
      }
      return all;
    }

    private List<Said> with(int at, Optional<Said> instead) {
      List<Said> other = new ArrayList<>(right);
      other.remove(at);
      instead.ifPresent(other::add);
      other.sort(Comparator.comparingLong(Said::tick));
      return other;
    }

    /** Tries random exchanges of neighbours inside a volley; keeps those that are permitted. */
    private List<Said> shuffled(List<Said> from) {
      List<Said> orders = new ArrayList<>(from);
      IntStream.range(0, 10 * orders.size())
          .map(i -> 1 + random.nextInt(Math.max(1, orders.size() - 1)))
          .filter(i -> i < orders.size())
          .forEach(i -> exchange(orders, i));
      return orders;
    }

    /** A plant that was worked later shows it later: who reads a gauge for a proof reads again. */
    private List<Said> untilSeen(List<Said> from) {
      List<Said> orders = new ArrayList<>(from);
      for (Said s : from) {
        long slack = slack(s);
        boolean isProof = s.say.contains("read ") && !s.steps.isEmpty();
        for (long t = AGAIN_TICKS;
            isProof && t <= Math.min(slack, MOST_AGAIN_TICKS);
            t += AGAIN_TICKS) {
          orders.add(s.at(s.tick + t));
        }
      }
      orders.sort(Comparator.comparingLong(Said::tick));
      return orders;
    }

    /** Says each order later, and what follows by as much, as far as every window allows it. */
    private List<Said> delayed(List<Said> from) {
      List<Said> orders = new ArrayList<>();
      long[] slack = new long[from.size() + 1];
      slack[from.size()] = Long.MAX_VALUE;
      for (int i = from.size() - 1; i >= 0; i--) {
        slack[i] = Math.min(slack[i + 1], slack(from.get(i)));
      }
      long late = 0;
      for (int i = 0; i < from.size(); i++) {
        long most = isHurried(from, i) ? 0 : Math.min(MOST_DELAY_TICKS, slack[i] - late);
        late += most > 0 ? random.nextInt((int) most + 1) : 0;
        orders.add(from.get(i).at(from.get(i).tick + late));
      }
      return orders;
    }

    /** Who is on his way out would be gone, who heard wrong would have done it. */
    private static boolean isHurried(List<Said> orders, int i) {
      boolean isGoing =
          isOut(orders, i) && orders.get(i).tick - orders.get(i - 1).tick <= VOLLEY_TICKS;
      return isGoing || IntStream.range(i, orders.size()).anyMatch(j -> isToStop(orders, i, j));
    }

    /** Whether the man who is belayed at {@code j} was told the wrong thing before {@code i}. */
    private static boolean isToStop(List<Said> orders, int i, int j) {
      String who = orders.get(j).who();
      return orders.get(j).say.startsWith("belay")
          && orders.subList(i, j).stream().noneMatch(s -> s.who().equals(who));
    }

    /** How much later an order may be said for every window of its steps. */
    private long slack(Said said) {
      return said.steps.stream()
          .flatMap(s -> found.casualty().step(s).stream())
          .flatMap(
              s ->
                  Stream.of(
                      s.within().map(w -> due(w) - said.tick - said.delayTicks),
                      s.done().map(w -> due(w) - said.tick - said.completeTicks)))
          .flatMap(Optional::stream)
          .mapToLong(ticks -> Math.max(0, ticks - MARGIN_TICKS))
          .min()
          .orElse(Long.MAX_VALUE);
    }

    private void exchange(List<Said> orders, int i) {
      Said first = orders.get(i - 1);
      Said second = orders.get(i);
      boolean isVolley = second.tick - first.tick <= VOLLEY_TICKS;
      boolean isFree = isVolley && !mustFollow(second, first) && !first.who().equals(second.who());
      boolean isGoing = isOut(orders, i) && !first.steps.isEmpty();
      boolean isFixed = isFixed(first) || isFixed(second) || isGoing;
      if (isFree && !isFixed && isInTime(first.at(second.tick))) {
        orders.set(i - 1, second.at(first.tick));
        orders.set(i, first.at(second.tick));
      }
    }

    /** Who was ordered out goes, and what he was to do first is not put off. */
    private static boolean isOut(List<Said> orders, int before) {
      return orders.subList(0, before).stream().anyMatch(s -> s.say.equals("everyone leave"));
    }

    /** Who is counted must have been ordered out, who is belayed told before. */
    private static boolean isFixed(Said said) {
      return Stream.of("muster", "everyone leave", "belay").anyMatch(said.say::startsWith);
    }

    private boolean mustFollow(Said later, Said earlier) {
      return later.steps.stream()
          .flatMap(s -> found.casualty().step(s).stream())
          .anyMatch(s -> s.after().keySet().stream().anyMatch(earlier.steps::contains));
    }

    private boolean isInTime(Said said) {
      return said.steps.stream()
          .flatMap(s -> found.casualty().step(s).stream())
          .map(Step::within)
          .flatMap(Optional::stream)
          .allMatch(w -> said.tick + said.delayTicks <= due(w));
    }

    private long due(Window window) {
      return base.entries().stream()
          .filter(e -> e instanceof Entry.CueGiven c && c.id().equals(window.of()))
          .mapToLong(e -> e.t() + window.ticks())
          .findFirst()
          .orElse(Long.MIN_VALUE);
    }

    private ScoreSheet played(List<Said> orders) {
      OrderText reader = new OrderText(found.ship(), found.casualty().messages());
      return play(new Listed(orders, reader)).sheet();
    }

    private Scored play(Player player) {
      Rehearsal.Setup setup =
          new Rehearsal.Setup(found.ship(), found.casualty(), seed, Mode.PRACTICE).unkept();
      return Scored.play(setup, player, e -> {}, s -> {});
    }
  }

  /** Says each order at its tick. */
  private static final class Listed implements Player {
    private final List<Said> orders;
    private final OrderText reader;

    Listed(List<Said> orders, OrderText reader) {
      this.orders = List.copyOf(orders);
      this.reader = reader;
    }

    @Override
    public void note(Entry entry) {
      // What is said was settled before.
    }

    @Override
    public List<Input> inputs(long now) {
      return orders.stream()
          .filter(o -> o.tick == now)
          .<Input>map(
              o -> new Input.Said(((OrderResult.Understood) reader.read(o.say)).order(), now))
          .toList();
    }
  }
}
