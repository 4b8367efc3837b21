package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Grade;
import handwheel.casualty.Never;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.Step;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import handwheel.scoring.StepResult;
import java.util.List;
import java.util.Optional;

/** One lost point for the person who lost it: what happened, what should have, what to do. */
final class Lost {
  private static final String SAFER =
      "Leave him where he is. What can be worked from outside the fire room is worked from there. ";

  /** A rule about more places than these is about a whole level of the fire room. */
  private static final int MOST_PLACES = 4;

  private final Casualty casualty;
  private final Told told;
  private final Attempts attempts;
  private final Circumstance circumstance;

  /** What the words are made from. */
  record Told(List<Entry> run, StepWords words, Plain plain, Trigger trigger, List<Says> witness) {
    Told {
      run = List.copyOf(run);
      witness = List.copyOf(witness);
    }

    List<String> says(String step) {
      return witness.stream()
          .filter(s -> s.step().equals(step))
          .findFirst()
          .map(Says::says)
          .orElse(List.of());
    }
  }

  /** By which orders the witness does a step. */
  record Says(String step, List<String> says) {
    Says {
      says = List.copyOf(says);
    }
  }

  Lost(Casualty casualty, Told told) {
    this.casualty = casualty;
    this.told = told;
    this.attempts = new Attempts(told.run(), told.words());
    this.circumstance = new Circumstance(told.run(), told.words(), attempts);
  }

  static List<Says> says(Played witness) {
    return witness.sheet().steps().stream().map(r -> says(witness, r)).toList();
  }

  private static Says says(Played witness, StepResult result) {
    return new Says(
        result.step(),
        witness.orders().stream()
            .filter(o -> result.orders().contains(o.n()))
            .map(o -> o.say())
            .toList());
  }

  Optional<Step> step(Charge c) {
    return casualty.step(c.step()).filter(s -> s.grade().spot().equals(c.spot()));
  }

  private Optional<Never> never(Charge c) {
    return casualty.nevers().stream()
        .filter(n -> n.id().equals(c.step()) && n.grade().spot().equals(c.spot()))
        .findFirst();
  }

  String name(Charge c) {
    return step(c)
        .map(s -> Names.capital(told.words().act(s)))
        .or(() -> never(c).map(n -> "Forbidden: " + act(n)))
        .orElse(Names.capital(c.step().replace('-', ' ')));
  }

  String happened(Charge c) {
    if (c.type() == ErrorClass.HARM && isOfPeople(c)) {
      return circumstance.harmed();
    }
    String more = step(c).map(s -> circumstance.of(c, s)).orElse("");
    boolean isLate = c.type() == ErrorClass.LATE;
    String what =
        isLate
            ? c.happened().replaceFirst(", allowed: .*", ".").replaceFirst("(\\.\\d)\\d s", "$1 s")
            : c.happened();
    return told.plain().text(what) + more;
  }

  /** The figure behind a charge; empty where what happened tells it already. */
  Optional<String> reading(Charge c) {
    String reading = c.reading().replaceFirst("\\.$", "");
    boolean isTold = c.happened().contains(reading) || isOfPeople(c);
    return isTold ? Optional.empty() : Optional.of(told.plain().text(Figures.text(reading)) + ".");
  }

  String should(Charge c) {
    return step(c)
        .map(told.words()::should)
        .or(() -> never(c).map(this::avoided))
        .orElse(isOfPeople(c) ? "Nobody hurt." : "Kept from coming to this.");
  }

  private String avoided(Never never) {
    String danger = new Danger(told.words()).text(never.during());
    return "Not this: " + act(never) + (danger.isEmpty() ? "." : " " + danger + ".");
  }

  private boolean isOfPeople(Charge c) {
    return c.type() == ErrorClass.HARM
        && casualty.outcomes().stream()
            .noneMatch(o -> o instanceof OutcomeRule.Came && o.grade().spot().equals(c.spot()));
  }

  private String act(Never never) {
    if (never.act() instanceof Never.Moving m) {
      String name = told.words().names().fitting(m.fitting());
      return name + " moved toward " + (m.isOpening() ? "open" : "shut");
    }
    Never.Sending s = (Never.Sending) never.act();
    boolean isAnyone = s.who().equals("anyone");
    String who = isAnyone ? "anybody" : told.words().names().title(s.who());
    return who + " sent " + (s.places().size() > MOST_PLACES ? "back inside" : "to " + places(s));
  }

  private String places(Never.Sending sending) {
    return String.join(", ", sending.places().stream().map(told.words().names()::place).toList());
  }

  String why(Charge c) {
    Optional<Grade> grade =
        step(c).map(Step::grade).or(() -> never(c).map(Never::grade)).or(() -> outcome(c));
    return grade
        .map(g -> g.why() + (g.rule().isEmpty() ? "" : " Rule " + g.rule() + "."))
        .orElse("");
  }

  private Optional<Grade> outcome(Charge c) {
    return casualty.outcomes().stream()
        .map(OutcomeRule::grade)
        .filter(g -> g.spot().equals(c.spot()))
        .findFirst();
  }

  /** What to do next time. */
  String next(Charge c) {
    if (c.type() == ErrorClass.HARM) {
      return (isOfPeople(c) ? "Get people out first, and do" : "Do")
          + " the acts above in time: see what each mistake cost.";
    }
    Optional<Step> own = step(c).or(() -> never(c).flatMap(n -> stepOf(n, c)));
    if (own.isPresent()) {
      String next = told.trigger().next(own.get(), told.says(own.get().id()));
      return next + stillThere(c) + heard(c) + confirm(c);
    }
    return never(c).map(this::leaveAlone).orElse("");
  }

  private String leaveAlone(Never never) {
    String alone =
        never.act() instanceof Never.Moving m
            ? "Leave the " + told.words().names().fitting(m.fitting()) + " as it stands. "
            : SAFER;
    return alone + never.grade().why();
  }

  /** A man who was ordered out can no longer work what is inside. */
  private String stillThere(Charge c) {
    boolean isLocal = step(c).flatMap(Step::place).filter(p -> p == Step.Side.LOCAL).isPresent();
    return c.type() == ErrorClass.WRONG_PLACE && isLocal
        ? " Say it while he still stands there."
        : "";
  }

  private String heard(Charge c) {
    return step(c).filter(attempts::isUnanswered).isPresent()
        ? " No answer means that he did not hear: say it again until he repeats it back."
        : "";
  }

  private static String confirm(Charge c) {
    return c.type() == ErrorClass.NOT_CONFIRMED
        ? " Listen to the repeat-back; if it is wrong, belay him and say it again."
        : "";
  }

  /** The step that works the fitting of a rule, or that the forbidden order was for. */
  private Optional<Step> stepOf(Never never, Charge c) {
    return never.act() instanceof Never.Moving m
        ? casualty.response().stream()
            .filter(
                s ->
                    s.test() instanceof handwheel.casualty.StepTest.FittingIs f
                        && f.fittings().contains(m.fitting())
                        && f.isOpen() == m.isOpening())
            .findFirst()
        : attempts
            .order(c.tick())
            .flatMap(
                o -> casualty.response().stream().filter(s -> Attempts.isFor(o, s)).findFirst());
  }
}
