package handwheel.debrief;

import handwheel.scoring.ErrorClass;
import java.util.Optional;

/** What a person does differently: mistakes of the same kind are one behaviour. */
enum Behaviour {
  FINISH("Run the whole list in your head before you rest: what is still open?"),
  SOONER("Say it as soon as the cue is there; the first order need not be the perfect one."),
  ORDER("Prove first, then move on: ask what must come before this."),
  PLACE("Before each order ask: where will he stand, and can he stand there long enough?"),
  SAFE("Before you move a fitting or send a man, ask what it does now."),
  LISTEN("Listen to every repeat-back to its end; say the fitting's whole name.");

  private final String words;

  Behaviour(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  static Optional<Behaviour> of(ErrorClass type) {
    return switch (type) {
      case OMITTED, PARTIAL, NOT_REPORTED -> Optional.of(FINISH);
      case LATE -> Optional.of(SOONER);
      case EARLY, OUT_OF_ORDER -> Optional.of(ORDER);
      case WRONG_PLACE -> Optional.of(PLACE);
      case UNSAFE, WRONG_WAY -> Optional.of(SAFE);
      case WRONG_FITTING, NOT_CONFIRMED -> Optional.of(LISTEN);
      case HARM, NO_FAULT -> Optional.empty();
    };
  }
}
