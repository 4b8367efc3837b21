package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.casualty.Never;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** A random script with every kind of step, and a random run of it. */
final class AnyRun {
  static final int STEPS = 7;

  /** Something the trainee does: a step, or from {@link #STEPS} on a look. */
  record Event(long tick, int what) {}

  final Casualty casualty;
  final List<Event> events = new ArrayList<>();
  private final Random random;
  private final long[] hurtTicks = new long[STEPS];
  private final boolean[] isInside = new boolean[STEPS];

  AnyRun(Random random) {
    this.random = random;
    this.casualty = script().casualty();
    for (int step = 0; step < STEPS; step++) {
      hurtTicks[step] = random.nextInt(3) == 0 ? random.nextInt(300) : 1_000_000;
      isInside[step] = random.nextBoolean();
      for (int times = random.nextInt(3); times > 0; times--) {
        events.add(new Event(someTick(), step));
      }
    }
  }

  long someTick() {
    return 100 + 10L * random.nextInt(100);
  }

  private Script script() {
    Script script = new Script().pass(50);
    for (int then = 0; then < STEPS; then++) {
      Script.Building step = step(then).points(1 + random.nextInt(14));
      for (int first = 0; first < then; first++) {
        if (random.nextInt(3) == 0) {
          step.after("s" + first, random.nextInt(4) == 0 ? Precedence.PREFERENCE : "O2");
        }
      }
      script.with(random.nextInt(3) == 0 ? step.critical() : step);
    }
    return script
        .never("n0", new Never.Moving("f0", false), 60, true)
        .outcome(OutcomeRule.Harm.HURT, 0, 70);
  }

  private Script.Building step(int index) {
    String id = "s" + index;
    Script.Building step =
        switch (index) {
          case 0, 1, 2 -> Script.shut(id, "f" + index).side(Step.Side.REMOTE);
          case 3, 4 -> Script.proved(id);
          case 5 -> Script.reported(id, "what-is-wrong");
          case 6 -> Script.counted(id);
          default -> throw new IllegalArgumentException("no step " + index);
        };
    return random.nextBoolean() ? step.within(10 + random.nextInt(30)) : step;
  }

  Run run() {
    return run(events);
  }

  Run run(List<Event> some) {
    Run run = new Run().cue(100);
    some.stream().sorted(Comparator.comparingLong(Event::tick)).forEach(e -> happen(run, e));
    return run.until(2400);
  }

  private void happen(Run run, Event e) {
    switch (e.what()) {
      case 0, 1, 2 -> work(run, e);
      case 3, 4 -> run.read(e.tick(), 2_000);
      case 5 -> run.report(e.tick(), "what-is-wrong");
      case 6 -> run.counted(e.tick(), "");
      case 7 -> run.say(e.tick(), "checkman look grating");
      case 8 -> run.say(e.tick(), "read level");
      default -> throw new IllegalArgumentException("no event " + e.what());
    }
  }

  private void work(Run run, Event e) {
    String fitting = "f" + e.what();
    int n = run.say(run.at(e.tick(), "checkman shut " + fitting, 100, hurtTicks[e.what()]));
    String at = isInside[e.what()] ? TestShip.INSIDE : TestShip.OUTSIDE;
    run.moved(e.tick() + 40, n, fitting, at, 0);
  }

  ScoreSheet score() {
    return run().score(casualty);
  }
}
