package handwheel.scoring;

import handwheel.casualty.Grade;
import handwheel.casualty.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * What a marked step is charged: one line for its place, one for its order or its time, or one for
 * not being done. Together never more than it is worth.
 */
final class StepCharges {
  private final List<Mark> marks;
  private final Precedence precedence;

  StepCharges(List<Mark> marks, Precedence precedence) {
    this.marks = List.copyOf(marks);
    this.precedence = precedence;
  }

  List<Charge> of(Mark mark) {
    if (mark.miss().isPresent()) {
      return List.of(missed(mark.step(), mark.miss().get()));
    }
    Base base = mark.base().orElseThrow();
    List<Charge> all = new ArrayList<>();
    base.place().filter(f -> !f.isChargedByRule()).ifPresent(f -> all.add(place(base, f)));
    if (mark.share().isPresent()) {
      all.add(order(mark, base));
    } else {
      base.late().filter(l -> base.latePoints() > 0).ifPresent(l -> all.add(late(base, l)));
    }
    return all;
  }

  private static Charge missed(Step step, Miss miss) {
    Grade grade = step.grade();
    return new Charge(
        miss.points(),
        miss.type(),
        step.id(),
        miss.tick(),
        miss.reading(),
        grade.spot(),
        Wording.why(miss.what(), Wording.should(step), grade),
        grade.basis(),
        Wording.isCritical(grade) && !miss.isNoFault());
  }

  private static Charge place(Base base, PlaceFault fault) {
    Grade grade = base.step().grade();
    return new Charge(
        base.placePoints(),
        fault.isUnsafe() ? ErrorClass.UNSAFE : ErrorClass.WRONG_PLACE,
        base.step().id(),
        fault.tick(),
        fault.reading(),
        grade.spot(),
        Wording.why(fault.what(), Wording.should(base.step()), grade),
        grade.basis(),
        Wording.isCritical(grade) && fault.isUnsafe());
  }

  private static Charge late(Base base, Late late) {
    Grade grade = base.step().grade();
    String because = base.isMisheard() ? "A wrong repeat-back was not caught. Came " : "Came ";
    String happened = because + Clock.seconds(late.ticks()) + " late, allowed: " + late.allowed();
    return new Charge(
        base.latePoints(),
        base.isMisheard() ? ErrorClass.NOT_CONFIRMED : ErrorClass.LATE,
        base.step().id(),
        late.tick(),
        Clock.seconds(late.ticks()) + " late",
        grade.spot(),
        Wording.why(happened, Wording.should(base.step()), grade),
        grade.basis(),
        Wording.isCritical(grade));
  }

  /** Lateness of the same step is in it: the larger of the two is charged, not both. */
  private Charge order(Mark mark, Base base) {
    Grade grade = base.step().grade();
    int points = mark.share().getAsInt() + base.latePoints();
    boolean isCut = mark.share().getAsInt() < base.left();
    return new Charge(
        points,
        mark.isDoneEarly() ? ErrorClass.EARLY : ErrorClass.OUT_OF_ORDER,
        base.step().id(),
        base.act().instantTick(),
        apart(mark),
        grade.spot(),
        Wording.why(String.join("; ", pairs(mark)), Wording.should(base.step()), grade)
            + (isCut ? " Charged no more than leaving the acts out would have cost." : ""),
        grade.basis(),
        Wording.isCritical(grade));
  }

  private List<String> pairs(Mark mark) {
    return mark.conflicts().stream().map(c -> pair(mark, c)).toList();
  }

  private String pair(Mark mark, Conflict c) {
    boolean isEarly = c.early() == mark.index();
    String other = id(isEarly ? c.late() : c.early());
    return (isEarly ? "Done before `" : "Done after `")
        + other
        + (isEarly ? "`, which must come first (" : "`, which must come later (")
        + precedence.because(c.late(), c.early())
        + ")";
  }

  private String apart(Mark mark) {
    return String.join(", ", mark.conflicts().stream().map(this::apart).toList());
  }

  private String apart(Conflict c) {
    return id(c.early()) + " " + Clock.seconds(ticksApart(c)) + " before " + id(c.late());
  }

  private long ticksApart(Conflict c) {
    return instantTick(c.late()) - instantTick(c.early());
  }

  private long instantTick(int index) {
    return marks.get(index).base().orElseThrow().act().instantTick();
  }

  private String id(int index) {
    return marks.get(index).step().id();
  }
}
