package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Starts;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Plays what was done in a reference run on the plant, with its people at their valves. */
final class Replay {
  private static final double SOON_S = 1e-9;

  final Plant plant;
  final RunListener log = new RunListener();

  private final Trajectory run;
  private final List<String[]> due;
  private final List<Move> moves = new ArrayList<>();
  private final PumpmanLaw pumpman = new PumpmanLaw(PumpmanLimits.USUAL);
  private final BlowermanLaw blowerman = new BlowermanLaw(BlowermanLimits.USUAL);
  private @Nullable CheckmanLaw checkman;
  private @Nullable WarmUpWatch warmUp;

  Replay(Trajectory run) {
    this.run = run;
    this.plant = Starts.plant(run.start());
    this.due = new ArrayList<>(run.inputs());
    if (!run.start().equals("boiler-cold")) {
      man(CheckmanSkill.DRILLED);
    }
  }

  /** A valve on its way. */
  private record Move(Port port, double from, double to, double startS, double overS) {
    double at(double t) {
      return t >= startS + overS - SOON_S ? to : from + (to - from) * (t - startS) / overS;
    }
  }

  private void man(CheckmanSkill skill) {
    CheckmanLaw law = new CheckmanLaw(skill);
    law.takeOver(plant);
    checkman = law;
  }

  /** Who looks on at every tick. */
  interface Onlooker {
    /** The plant is evaluated, no rule has been applied yet. */
    void evaluated(Plant plant);

    /** The rules have been applied, nobody has moved a hand yet. */
    void ruled(Plant plant);
  }

  /** Plays the run to its end, showing the plant at every row. */
  void play(Consumer<Plant> row) {
    int every = run.spacingS() * 20;
    play(
        new Onlooker() {
          @Override
          public void evaluated(Plant plant) {
            // A row shows what the rules have left.
          }

          @Override
          public void ruled(Plant plant) {
            if (log.tick % every == 0) {
              row.accept(plant);
            }
          }
        });
  }

  /** Plays the run to its end, showing the plant at every tick. */
  void play(Onlooker onlooker) {
    int last = run.durationS() * 20;
    for (int tick = 0; tick <= last; tick++) {
      log.tick = tick;
      orders(tick * 0.05);
      plant.evaluate();
      onlooker.evaluated(plant);
      plant.applyRules(log);
      onlooker.ruled(plant);
      people();
      plant.advance();
    }
  }

  private void orders(double t) {
    while (!due.isEmpty() && Double.parseDouble(due.get(0)[0]) <= t + SOON_S) {
      order(due.remove(0));
    }
    moves.forEach(m -> plant.set(m.port(), m.at(t)));
    moves.removeIf(m -> m.at(t) == m.to() && t > m.startS());
  }

  private void order(String[] line) {
    String value = line[2];
    switch (line[1]) {
      case "checkman" -> checkman(value);
      case "pumpman" -> pumpman(value.split(":", -1));
      case "blowerman" -> blowerman(value);
      case "warmup" -> warmUp = new WarmUpWatch();
      default -> position(line);
    }
    if (!line[4].isEmpty()) {
      log.note(line[4]);
    }
  }

  private void checkman(String word) {
    switch (word) {
      case "off" -> checkman = null;
      case "green" -> man(CheckmanSkill.GREEN);
      case "drilled" -> man(CheckmanSkill.DRILLED);
      default -> throw new IllegalArgumentException(word);
    }
  }

  private void pumpman(String[] words) {
    double psi = Double.parseDouble(words[1]);
    if (words[0].equals("header")) {
      pumpman.holdHeader(plant, psi);
    } else {
      pumpman.holdDrum(plant, psi);
    }
  }

  private void blowerman(String words) {
    if (words.equals("trim")) {
      blowerman.trim(plant);
    } else {
      String[] valves = words.substring("valve:".length()).split("/", -1);
      blowerman.toValves(Double.parseDouble(valves[0]), Double.parseDouble(valves[1]));
    }
  }

  private void position(String[] line) {
    Port port = Starts.port(line[1]);
    double to = Starts.position(line[1], line[2]);
    double over = Double.parseDouble(line[3]);
    moves.removeIf(m -> m.port() == port);
    if (over > 0) {
      moves.add(new Move(port, plant.position(port), to, Double.parseDouble(line[0]), over));
    } else {
      plant.set(port, to);
    }
  }

  private void people() {
    CheckmanLaw atTheCheck = checkman;
    if (atTheCheck != null) {
      atTheCheck.tick(plant, plant::value);
    }
    pumpman.tick(plant, plant::value);
    blowerman.tick(plant, plant::value);
    WarmUpWatch watch = warmUp;
    if (watch != null) {
      watch.tick(plant, log, () -> man(CheckmanSkill.DRILLED));
    }
  }
}
