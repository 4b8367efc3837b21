package handwheel.scoring;

import handwheel.casualty.StepTest;
import handwheel.logbook.Entry;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is told beside the charges: harm and upsets with the charge that came last before each, what
 * crew and gear failed, what was done unordered or moved back later. None of it costs anything: one
 * mistake, one charge. That something followed a mistake does not prove that it came of it.
 */
final class Aftermath {
  private final RunLog log;
  private final Movements movements;
  private final Fates fates;
  private final Harmed harmed;

  Aftermath(RunLog log, Movements movements, Harmed harmed) {
    this.log = log;
    this.movements = movements;
    this.fates = new Fates(log);
    this.harmed = harmed;
  }

  List<Note> notes(List<Charge> charges, List<Mark> marks) {
    List<Charge> acts = charges.stream().filter(Aftermath::isAMistake).toList();
    List<Charge> moves = acts.stream().filter(c -> !isTalk(c, marks)).toList();
    Stream<Note> people = harmed.notes().map(note -> after(note, acts));
    Stream<Note> upsets = plant().map(note -> after(note, moves));
    return Stream.of(people, upsets, refusals(), mishearings(), remarks(marks))
        .flatMap(notes -> notes)
        .sorted(Comparator.comparingLong(Note::tick))
        .toList();
  }

  private static boolean isAMistake(Charge c) {
    return c.type() != ErrorClass.HARM && (c.points() > 0 || c.isCritical());
  }

  /** Nothing in the plant follows from what was not read, reported or counted. */
  private static boolean isTalk(Charge c, List<Mark> marks) {
    return marks.stream()
        .map(Mark::step)
        .anyMatch(s -> s.id().equals(c.step()) && !(s.test() instanceof StepTest.FittingIs));
  }

  private static Note after(Note note, List<Charge> charges) {
    return charges.stream()
        .filter(c -> c.tick() <= note.tick())
        .max(Comparator.comparingLong(Charge::tick))
        .map(c -> new Note(note.tick(), note.kind(), c.step(), note.text()))
        .orElse(note);
  }

  private Stream<Note> plant() {
    return log.all(Entry.PlantEvent.class).map(e -> new Note(e.t(), Note.Kind.PLANT, "", e.what()));
  }

  private Stream<Note> refusals() {
    return log.all(Entry.Refused.class)
        .filter(Entry.Refused::fault)
        .map(r -> new Note(r.t(), Note.Kind.CREW_OR_GEAR, "", r.who() + ": " + r.why()));
  }

  private Stream<Note> mishearings() {
    return log.orders().stream().flatMap(o -> log.wrongRepeat(o).map(r -> misheard(o, r)).stream());
  }

  private Note misheard(Told told, Entry.Repeated wrong) {
    Aim any = Aim.of(order -> true);
    boolean isCaught = !fates.of(told, any, log.lastTick()).is(Fate.Kind.NOT_CONFIRMED);
    String text =
        wrong.who()
            + " repeated `"
            + wrong.say()
            + "` for `"
            + told.said().say()
            + (isCaught ? "`; caught" : "`; not caught");
    return new Note(wrong.t(), Note.Kind.CREW_OR_GEAR, "", text);
  }

  private Stream<Note> remarks(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            m -> m.base().stream().flatMap(b -> b.act().deeds().stream()).flatMap(d -> of(m, d)));
  }

  private Stream<Note> of(Mark mark, Deed deed) {
    return deed.moved().stream()
        .flatMap(moved -> Stream.of(unordered(mark, moved), movedBack(mark, moved)))
        .flatMap(Optional::stream);
  }

  private static Optional<Note> unordered(Mark mark, Entry.Moved moved) {
    String text = moved.who() + " moved " + moved.fitting() + " unordered";
    return moved.n() > 0 ? Optional.empty() : Optional.of(remark(mark, moved, text));
  }

  private Optional<Note> movedBack(Mark mark, Entry.Moved moved) {
    return movements.of(moved.fitting()).stream()
        .filter(m -> m.t() > moved.t() && m.pos() != moved.pos())
        .findFirst()
        .map(m -> remark(mark, m, m.fitting() + " was moved again afterwards"));
  }

  private static Note remark(Mark mark, Entry.Moved moved, String text) {
    return new Note(moved.t(), Note.Kind.REMARK, mark.step().id(), text);
  }
}
