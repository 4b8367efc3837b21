package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.Scored;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * The shipped steam leak, played right and wrong. What is right follows common practice, no source;
 * the windows are the invented ship's figures.
 */
class SteamLeakTest {
  /** A right response in seconds after the roar, for a file of orders. */
  private static final List<String> RIGHT =
      List.of(
          "3 everyone leave",
          "4 burnerman-superheater trip fuel-trip-superheater",
          "5 burnerman-saturated trip fuel-trip-saturated",
          "6 remote-hand go remote-station",
          "7 report leak-report to watch-engineer",
          "14 muster lower-passage",
          "60 remote-hand read burner-line-pressure",
          "65 remote-hand shut main-stop",
          "66 messenger shut bulkhead-stop from remote-station",
          "67 pumpman trip blower-1 blower-2 from remote-station",
          "255 remote-hand read line-pressure");

  /** A seed in which nobody mishears in {@link #RIGHT}. */
  private static final long SEED = 1;

  @Test
  void theWitnessScoresFullWithEverySeed() {
    TreeSet<String> digests = new TreeSet<>();
    TreeSet<Long> holes = new TreeSet<>();
    LongStream.concat(LongStream.rangeClosed(1, 50), LongStream.rangeClosed(1001, 1050))
        .forEach(
            seed -> {
              Scored run = Shipped.witness(seed);
              assertThat(run.sheet().points()).as("seed %d", seed).isEqualTo(100);
              assertThat(run.sheet().isPass()).as("seed %d", seed).isTrue();
              digests.add(ChainedEntries.digestOf(run.entries()).orElseThrow());
              holes.add(drawn(run, "hole"));
            });
    assertThat(digests).hasSize(100);
    double range = 0.25 * 0.0254 * 1e9;
    assertThat((holes.last() - holes.first()) / range).isGreaterThan(0.8);
  }

  private static long drawn(Scored run, String name) {
    return run.entries().stream()
        .filter(e -> e instanceof Entry.Drawn d && d.name().equals(name))
        .map(e -> ((Entry.Drawn) e).nano())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theRightOrdersScoreFull() throws Usage {
    assertThat(charges(RIGHT)).isEmpty();
  }

  @Test
  void doingNothingFailsWithPeopleHurt() throws Usage {
    Scored run = Shipped.orders(SEED, List.of());
    assertThat(run.sheet().isPass()).isFalse();
    assertThat(run.entries()).anyMatch(e -> e instanceof Entry.Person p && p.is().equals("hurt"));
  }

  @Test
  void shuttingTheStopOnFireFails() throws Usage {
    List<String> wrong = new ArrayList<>(RIGHT);
    wrong.removeIf(l -> l.contains("fuel-trip") || l.contains("shut main-stop"));
    wrong.add(1, "3.5 remote-hand shut main-stop");
    Scored run = Shipped.orders(SEED, wrong);
    assertThat(run.sheet().isPass()).isFalse();
    assertThat(steps(run)).contains("stop-on-fire", "out-superheater", "out-saturated");
  }

  @Test
  void stayingInTheUpperLevelFailsWithPeopleHurt() throws Usage {
    List<String> wrong = new ArrayList<>(RIGHT);
    wrong.removeIf(l -> l.contains("everyone leave"));
    Scored run = Shipped.orders(SEED, wrong);
    assertThat(run.sheet().isPass()).isFalse();
    assertThat(steps(run)).contains("clear");
    assertThat(run.entries())
        .anyMatch(
            e ->
                e instanceof Entry.Person p && p.who().equals("checkman") && p.is().equals("hurt"));
  }

  @Test
  void sendingSomebodyIntoTheJetFailsEvenIfHeRefuses() throws Usage {
    Scored run = Shipped.orders(SEED, with("6.5 messenger go main-run"));
    assertThat(run.sheet().isPass()).isFalse();
    assertThat(steps(run)).contains("into-the-jet");
  }

  @Test
  void forgettingTheOtherEndFails() throws Usage {
    List<String> wrong = new ArrayList<>(RIGHT);
    wrong.removeIf(l -> l.contains("bulkhead-stop"));
    Scored run = Shipped.orders(SEED, wrong);
    assertThat(run.sheet().isPass()).isFalse();
    assertThat(steps(run)).contains("other-end");
  }

  @Test
  void goingBackInBeforeTheCountFails() throws Usage {
    Scored run = Shipped.orders(SEED, with("13 pumpman go fuel-station"));
    assertThat(run.sheet().isPass()).isFalse();
    assertThat(steps(run)).contains("back-inside");
  }

  @Test
  void aProofIsOnlyWhatTheGaugeShowsBelowItsBound() throws Usage {
    List<String> early = new ArrayList<>(RIGHT);
    early.set(RIGHT.size() - 1, "160 remote-hand read line-pressure");
    Scored run = Shipped.orders(SEED, early);
    assertThat(run.entries())
        .anyMatch(
            e ->
                e instanceof Entry.Reading r
                    && r.gauge().equals("line-pressure")
                    && r.milli() > 20_000);
    assertThat(steps(run)).containsExactly("isolated");
  }

  @Test
  void resettingATripOrReopeningAStopFails() throws Usage {
    assertBreaks("120 burnerman-saturated reset fuel-trip-saturated", "saturated-trip-reset");
    assertBreaks("200 messenger open bulkhead-stop from remote-station", "other-end-reopened");
  }

  @Test
  void goingBackIntoTheRoarFailsEvenAfterTheCount() throws Usage {
    assertBreaks("55 pumpman go lower-door", "back-into-the-roar");
  }

  @Test
  void trippingAHealthyBoilerFails() throws Usage {
    assertBreaks("-10 burnerman-saturated trip fuel-trip-saturated", "saturated-tripped-unbidden");
  }

  @Test
  void aBlowerStoppedBeforeTheFuelFails() throws Usage {
    assertBreaks("2 blowerman trip blower-1", "blower-before-fuel");
  }

  private static void assertBreaks(String order, String rule) throws Usage {
    Scored run = Shipped.orders(SEED, with(order));
    assertThat(run.sheet().isPass()).as(order).isFalse();
    assertThat(steps(run)).as(order).contains(rule);
  }

  @Test
  void nobodyWhoIsOutIsSentBackInUnlessTheOrderNamesThePlace() throws Usage {
    Scored run = Shipped.orders(SEED, with("30 burnerman-saturated trip fuel-trip-saturated"));
    assertThat(run.sheet().charges()).isEmpty();
    assertThat(run.entries())
        .anyMatch(
            e ->
                e instanceof Entry.Moved m
                    && m.fitting().equals("fuel-trip-saturated")
                    && m.at().equals("remote-station"));
  }

  @Test
  void theSupervisorReadsOnlyWhatStandsBeforeHim() throws Usage {
    Scored run = Shipped.orders(SEED, with("20 read burner-line-pressure"));
    assertThat(run.sheet().charges()).isEmpty();
    assertThat(run.entries())
        .anyMatch(e -> e instanceof Entry.Refused r && r.why().contains("from here"));
  }

  @Test
  void whatIsFreeCostsNothing() throws Usage {
    List<String> chatty = with("2 read drum-level");
    chatty.add("270 remote-hand read burner-line-pressure");
    assertThat(charges(chatty)).isEmpty();
  }

  private static List<String> with(String order) {
    List<String> orders = new ArrayList<>(RIGHT);
    double at = at(order);
    int i = 0;
    while (i < orders.size() && at(orders.get(i)) < at) {
      i++;
    }
    orders.add(i, order);
    return orders;
  }

  private static double at(String order) {
    return Double.parseDouble(order.substring(0, order.indexOf(' ')));
  }

  private static List<Charge> charges(List<String> orders) throws Usage {
    return Shipped.orders(SEED, orders).sheet().charges();
  }

  private static List<String> steps(Scored run) {
    return run.sheet().charges().stream().map(Charge::step).toList();
  }
}
