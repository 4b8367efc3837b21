package handwheel.screen;

import handwheel.drill.Mode;
import handwheel.logbook.Entry;
import handwheel.screen.Sighting.Seen;
import java.util.ArrayList;
import java.util.List;

/** States and sights made up for tests of reactions and drawings. */
final class Sample {
  static final Size SMALL = new Size(80, 24);

  private Sample() {}

  static Sighting board(long tick) {
    List<Dial> dials = new ArrayList<>();
    dials.add(new Dial("drum-pressure", "drum pressure", "592 psig", 0.74, new Scale(0, 800)));
    dials.add(new Dial("drum-level", "drum level", "-1.2 in", 0.41, new Scale(-7, 7)));
    dials.add(
        new Dial("superheater-outlet", "superheater outlet", "850 F", 0.77, new Scale(0, 1100)));
    for (int i = 4; i <= 18; i++) {
      dials.add(
          new Dial(
              "gauge-" + i, "gauge number " + i, i * 10 + " psig", i / 18.0, new Scale(0, 180)));
    }
    List<Seen> people =
        List.of(
            new Seen("burnerman saturated side", "standing by"),
            new Seen("burnerman superheater side", "tripping superheater fuel trip"),
            new Seen("pumpman", "on his way"),
            new Seen("messenger", "hurt, on his way"));
    return new Sighting(tick, "gauge board", false, "A roar drowns every voice.", dials, people);
  }

  static Sighting outside(long tick) {
    return new Sighting(tick, "lower passage", true, "", List.of(), List.of());
  }

  /** A drill that runs, with something heard. */
  static State running(long tick) {
    Hearing hearing = Hearing.NOTHING;
    for (int n = 1; n <= 20; n++) {
      Entry.OrderSaid said = new Entry.OrderSaid(n, n, n, "checkman go workshop", -1, 1000, false);
      hearing = hearing.with(said, "You to checkman: go to workshop " + n + ".");
    }
    hearing =
        hearing.with(
            new Entry.Repeated(400, 20, "checkman", "checkman go engine-room"),
            "Checkman: go to engine room, aye. And so that it does not fit into one row of eighty"
                + " he says more than he has to.");
    State state = State.first(Mode.PRACTICE).at(Stage.RUNNING);
    return state.hearing(hearing).sighting(board(tick));
  }
}
