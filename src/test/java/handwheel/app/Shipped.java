package handwheel.app;

import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.ship.OrderText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** The shipped drills, as tests play them. */
final class Shipped {
  static final Drills DRILLS = new Drills(Path.of("drills"));
  static final Scripts.Found STEAM_LEAK = load("steam-leak");

  private Shipped() {}

  private static Scripts.Found load(String name) {
    try {
      return DRILLS.load(DRILLS.file(name)).found().orElseThrow();
    } catch (IOException | Usage e) {
      throw new IllegalStateException(e);
    }
  }

  static Rehearsal.Setup setup(long seed) {
    return new Rehearsal.Setup(STEAM_LEAK.ship(), STEAM_LEAK.casualty(), seed, Mode.PRACTICE);
  }

  static Scored witness(long seed) {
    Player player = new WitnessPlayer(STEAM_LEAK.casualty(), STEAM_LEAK.ship());
    return Scored.play(setup(seed), player, e -> {}, s -> {});
  }

  /** Plays orders that are so many seconds after the roar. */
  static Scored orders(long seed, List<String> afterRoar) throws Usage {
    long roar = roarTick(witness(seed).entries());
    List<String> lines = afterRoar.stream().map(l -> shifted(l, roar / 20.0)).toList();
    OrderText reader = new OrderText(STEAM_LEAK.ship(), STEAM_LEAK.casualty().messages());
    return Scored.play(setup(seed), OrdersFile.of("test", lines, reader), e -> {}, s -> {});
  }

  private static String shifted(String line, double bySeconds) {
    int blank = line.indexOf(' ');
    double at = Double.parseDouble(line.substring(0, blank)) + bySeconds;
    return Math.round(at * 100) / 100.0 + line.substring(blank);
  }

  static long roarTick(List<Entry> entries) {
    return entries.stream()
        .filter(e -> e instanceof Entry.CueGiven c && c.id().equals("roar"))
        .findFirst()
        .orElseThrow()
        .t();
  }

  /** What a command printed and returned. */
  record Said(int exit, String out, String err) {}

  static Said run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit =
        Main.run(
            List.of(args),
            new Console(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8)));
    return new Said(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
