package handwheel.debrief;

import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.screen.SteamLeak;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Right and wrong runs of the shipped drill, with a roar 37 s after the start. */
final class Runs {
  static final long SEED = 7;
  static final long ROAR_TICK = 746;

  /** The stop is shut before the fires are out, and the man is sent into the jet for it. */
  static final List<String> STOP_FIRST =
      List.of(
          "3 remote-hand go remote-station",
          "4 checkman shut main-stop",
          "6 everyone leave",
          "10 burnerman-saturated trip fuel-trip-saturated",
          "12 burnerman-superheater trip fuel-trip-superheater",
          "22 report leak-report to watch-engineer",
          "27 muster lower-passage",
          "62 remote-hand read burner-line-pressure",
          "72 remote-hand shut main-stop",
          "74 messenger shut bulkhead-stop from remote-station");

  /** All in order, and far too late. */
  static final List<String> TOO_LATE =
      List.of(
          "17 burnerman-superheater trip fuel-trip-superheater",
          "22 burnerman-saturated trip fuel-trip-saturated",
          "37 everyone leave",
          "52 remote-hand go remote-station",
          "62 report leak-report to watch-engineer",
          "112 remote-hand read burner-line-pressure",
          "127 remote-hand shut main-stop");

  /** The fires are tripped from outside, and a man is sent back in. */
  static final List<String> WRONG_PLACE =
      List.of(
          "2 everyone leave",
          "4 remote-hand go remote-station",
          "22 report leak-report to watch-engineer",
          "24 muster lower-passage",
          "52 remote-hand trip fuel-trip-superheater",
          "54 remote-hand trip fuel-trip-saturated",
          "58 messenger go upper-door",
          "62 remote-hand read burner-line-pressure",
          "66 remote-hand shut main-stop",
          "74 burnerman-saturated shut bulkhead-stop from remote-station",
          "76 pumpman trip blower-1 blower-2 from remote-station");

  private Runs() {}

  static Rehearsal.Setup setup() {
    return new Rehearsal.Setup(
        SteamLeak.FOUND.ship(), SteamLeak.FOUND.casualty(), SEED, Mode.PRACTICE);
  }

  static WitnessPlayer witness() {
    return new WitnessPlayer(SteamLeak.FOUND.casualty(), SteamLeak.FOUND.ship());
  }

  /** Plays orders that are so many seconds after the roar. */
  static Played orders(List<String> lines) {
    OrderText reader = new OrderText(SteamLeak.FOUND.ship(), SteamLeak.FOUND.casualty().messages());
    List<Entry> said = lines.stream().map(Runs::said).toList();
    if (said.stream()
        .anyMatch(
            e -> !(reader.read(((Entry.OrderSaid) e).say()) instanceof OrderResult.Understood))) {
      throw new IllegalArgumentException("an order is not understood");
    }
    return Played.play(setup(), new RecordedInputs(said, reader));
  }

  private static Entry said(String line) {
    String[] parts = line.split(" ", 2);
    long tick = ROAR_TICK + 20 * Long.parseLong(parts[0]);
    return new Entry.OrderSaid(tick, tick, 0, parts[1], 0, 0, false);
  }

  static Debrief debrief(List<Entry> entries, Optional<OwnLines> own) {
    return Debrief.of(
        new Debrief.Request(
            entries, SteamLeak.FOUND, List.of(), own, List.of("Again."), Optional.empty()),
        witness());
  }

  static Stream<List<String>> wrong() {
    return Stream.of(STOP_FIRST, TOO_LATE, WRONG_PLACE);
  }
}
