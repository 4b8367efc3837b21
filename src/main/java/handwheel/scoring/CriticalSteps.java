package handwheel.scoring;

import handwheel.casualty.Grade;
import java.util.List;
import java.util.Optional;

/**
 * Whether the critical steps were met: done, with all that must come before it done before it and
 * no blame for the order, in time, and not at an unsafe place. What had to come first and was left
 * out counts as not done before: leaving a thing out must never turn out better than doing it late.
 */
final class CriticalSteps {
  private final List<Mark> marks;
  private final Precedence precedence;

  CriticalSteps(List<Mark> marks, Precedence precedence) {
    this.marks = List.copyOf(marks);
    this.precedence = precedence;
  }

  /** How a step came out; empty if it is not critical. */
  Optional<CriticalAct> of(Mark mark) {
    return Wording.isCritical(mark.step().grade()) ? Optional.of(act(mark)) : Optional.empty();
  }

  private CriticalAct act(Mark mark) {
    String id = mark.step().id();
    if (mark.miss().filter(Miss::isNoFault).isPresent()) {
      Miss miss = mark.miss().get();
      return new CriticalAct(id, CriticalAct.Standing.NO_FAULT, miss.tick(), miss.what());
    }
    return failure(mark)
        .map(f -> new CriticalAct(id, CriticalAct.Standing.NOT_MET, f.tick(), f.text()))
        .orElseGet(
            () ->
                new CriticalAct(id, CriticalAct.Standing.MET, tick(mark), "done as it should be"));
  }

  private static long tick(Mark mark) {
    return mark.base().orElseThrow().act().instantTick();
  }

  /**
   * The line that explains a failed critical step where its points were lost elsewhere: no points,
   * but the verdict.
   */
  Optional<Charge> unpaid(Mark mark) {
    Grade grade = mark.step().grade();
    return Wording.isCritical(grade) && mark.isDone()
        ? failure(mark)
            .map(
                f ->
                    new Charge(
                        0,
                        f.type(),
                        mark.step().id(),
                        f.tick(),
                        f.text(),
                        grade.spot(),
                        Wording.why(
                            f.text() + ", charged elsewhere", Wording.should(mark.step()), grade),
                        grade.basis(),
                        true))
        : Optional.empty();
  }

  private Optional<Failure> failure(Mark mark) {
    if (mark.miss().isPresent()) {
      Miss miss = mark.miss().get();
      return Optional.of(new Failure(miss.type(), miss.tick(), miss.what()));
    }
    Base base = mark.base().orElseThrow();
    return base.place()
        .filter(PlaceFault::isUnsafe)
        .map(f -> new Failure(ErrorClass.UNSAFE, f.tick(), f.what()))
        .or(() -> outOfOrder(mark))
        .or(() -> leftOut(mark))
        .or(() -> base.late().map(CriticalSteps::tooLate));
  }

  private static Failure tooLate(Late late) {
    return new Failure(
        ErrorClass.LATE, late.tick(), "Came " + Clock.seconds(late.ticks()) + " after its time");
  }

  private Optional<Failure> outOfOrder(Mark mark) {
    Optional<Integer> first =
        mark.conflicts().stream()
            .filter(c -> c.early() == mark.index())
            .map(Conflict::late)
            .findFirst();
    if (first.isPresent()) {
      String text = "Done before `" + id(first.get()) + "`, which must come first";
      return Optional.of(new Failure(ErrorClass.EARLY, tick(mark), text));
    }
    return mark.share().isPresent()
        ? Optional.of(new Failure(ErrorClass.OUT_OF_ORDER, tick(mark), "Done out of its order"))
        : Optional.empty();
  }

  /** The superheater-first preference alone fails nobody. */
  private Optional<Failure> leftOut(Mark mark) {
    return marks.stream()
        .filter(other -> precedence.isStrictlyBefore(other.index(), mark.index()))
        .filter(other -> other.miss().filter(m -> !m.isExcused()).isPresent())
        .findFirst()
        .map(o -> "Done without `" + o.step().id() + "`, which must come first")
        .map(text -> new Failure(ErrorClass.EARLY, tick(mark), text));
  }

  private String id(int index) {
    return marks.get(index).step().id();
  }

  /**
   * Why a critical step was not met.
   *
   * @param type class of the error
   * @param tick when
   * @param text what happened, for people
   */
  private record Failure(ErrorClass type, long tick, String text) {}
}
