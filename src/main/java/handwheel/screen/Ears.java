package handwheel.screen;

import handwheel.debrief.Sentences;
import handwheel.drill.Sight;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes the entries of a run: all go to the record, those that reach the trainee to his face. */
final class Ears implements EntrySink {
  private final EntrySink record;
  private final Sentences sentences;
  private final Listener listener;
  private final EntrySink coach;
  private final Earshot earshot = new Earshot();
  private final List<Entry> entries = new ArrayList<>();
  private Optional<Sight> sight = Optional.empty();

  /** Takes what reaches the trainee. */
  @FunctionalInterface
  interface Listener {
    void heard(Entry entry, String sentence);
  }

  Ears(Script script, Listener listener, EntrySink coach) {
    this.coach = coach;
    this.record = script.record();
    this.sentences = new Sentences(script.found());
    this.listener = listener;
  }

  /** Lets him see from now on. */
  void open(Sight now) {
    sight = Optional.of(now);
  }

  @Override
  public void accept(Entry entry) {
    entries.add(entry);
    record.accept(entry);
    coach.accept(entry);
    Optional<String> sentence = sentences.heard(entry);
    if (earshot.reaches(entry, sight)) {
      sentence.ifPresent(s -> listener.heard(entry, s));
    }
  }

  /** Returns every entry so far. */
  List<Entry> entries() {
    return entries;
  }
}
