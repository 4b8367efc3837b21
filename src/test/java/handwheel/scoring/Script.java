package handwheel.scoring;

import handwheel.casualty.Basis;
import handwheel.casualty.Bound;
import handwheel.casualty.Casualty;
import handwheel.casualty.CrewState;
import handwheel.casualty.Grade;
import handwheel.casualty.Never;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.Start;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.When;
import handwheel.casualty.Window;
import handwheel.diagnostics.SourceSpot;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Builds scripts for tests. Line numbers are those of the steps in their order. */
final class Script {
  static final String CUE = "roar";

  private final List<Step> steps = new ArrayList<>();
  private final List<Never> nevers = new ArrayList<>();
  private final List<OutcomeRule> outcomes = new ArrayList<>();
  private int passPoints = 80;
  private String id = "test-casualty";
  private String title = "Trouble";

  Script named(String newId, String newTitle) {
    id = newId;
    title = newTitle;
    return this;
  }

  static Building ordered(String id, String order) {
    return new Building(id, new StepTest.Ordered(order));
  }

  static Building shut(String id, String... fittings) {
    return new Building(id, new StepTest.FittingIs(Arrays.asList(fittings), false));
  }

  static Building open(String id, String... fittings) {
    return new Building(id, new StepTest.FittingIs(Arrays.asList(fittings), true));
  }

  /** A burner line read below 5 psig. */
  static Building proved(String id) {
    Bound bound = new Bound(true, Unit.PSIG.toSi(5));
    return new Building(id, new StepTest.ReadProof("burner-line", bound, Unit.PSIG));
  }

  static Building reported(String id, String message) {
    return new Building(id, new StepTest.Reported(message, "watch-engineer"));
  }

  static Building counted(String id) {
    return new Building(id, new StepTest.Mustered());
  }

  Script with(Building step) {
    steps.add(step.build(spot(steps.size() + 1)));
    return this;
  }

  Script never(String id, Never.Act act, int points, boolean isCritical) {
    Grade grade = new Grade(points, isCritical, Basis.TRADE_RULE, "N3", "It harms.", spot(90));
    nevers.add(new Never(id, act, new When.GaugeIs("burner-line", new Bound(false, 0), 0), grade));
    return this;
  }

  Script outcome(OutcomeRule.Harm harm, int above, int points) {
    Grade grade = new Grade(points, true, Basis.TRADE_RULE, "", "People first.", spot(95));
    outcomes.add(new OutcomeRule.People(harm, above, grade));
    return this;
  }

  Script pass(int points) {
    passPoints = points;
    return this;
  }

  Casualty casualty() {
    return new Casualty(
        id,
        title,
        "test",
        "test-ship",
        "Learn it.",
        "00",
        List.of(),
        "You have the watch.",
        new Start("full-power", CrewState.GREEN),
        9600,
        List.of(),
        List.of(),
        steps,
        nevers,
        outcomes,
        passPoints,
        List.of());
  }

  private SourceSpot spot(int line) {
    return new SourceSpot(id.replace("-casualty", "") + ".yaml", line, 5);
  }

  /** A step being built. */
  static final class Building {
    private final String id;
    private final StepTest test;
    private final SortedMap<String, String> after = new TreeMap<>();
    private Optional<Window> within = Optional.empty();
    private Optional<Window> done = Optional.empty();
    private Optional<Step.Side> place = Optional.empty();
    private Basis basis = Basis.TRADE_RULE;
    private boolean isCritical;
    private int points = 10;
    private String rule = "O2";
    private String why;

    private Building(String id, StepTest test) {
      this.id = id;
      this.test = test;
      this.why = "Because of " + id + ".";
    }

    Building points(int worth) {
      points = worth;
      return this;
    }

    Building critical() {
      isCritical = true;
      return this;
    }

    Building within(int seconds) {
      within = Optional.of(new Window(seconds * 20L, Window.Since.CUE, CUE));
      return this;
    }

    Building since(int seconds, Window.Since since, String of) {
      within = Optional.of(new Window(seconds * 20L, since, of));
      return this;
    }

    Building done(int seconds) {
      done = Optional.of(new Window(seconds * 20L, Window.Since.CUE, CUE));
      return this;
    }

    Building side(Step.Side side) {
      place = Optional.of(side);
      return this;
    }

    Building after(String step, String because) {
      after.put(step, because);
      return this;
    }

    Building basis(Basis ground) {
      basis = ground;
      return this;
    }

    Building rule(String ruleId) {
      rule = ruleId;
      return this;
    }

    Building why(String reason) {
      why = reason;
      return this;
    }

    private Step build(SourceSpot spot) {
      Grade grade = new Grade(points, isCritical, basis, rule, why, spot);
      return new Step(id, test, within, done, place, after, grade, Optional.empty());
    }
  }
}
