package handwheel.debrief;

import handwheel.logbook.Entry;
import handwheel.scoring.Note;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;

/** People, metal, water and steam: what the run did, before any points. */
final class OutcomeSection {
  private final Debrief debrief;
  private final Times times;
  private final Plain plain;

  OutcomeSection(Debrief debrief, Times times, Plain plain) {
    this.debrief = debrief;
    this.times = times;
    this.plain = plain;
  }

  Page.Section section() {
    List<Block> blocks = new ArrayList<>();
    List<String> lines = new ArrayList<>(people());
    debrief.simulated().ifPresent(s -> lines.addAll(plant(s.outcome())));
    blocks.add(new Block.Bullets(lines));
    List<String> events = events();
    if (!events.isEmpty()) {
      blocks.add(new Block.Paragraph("What followed in the plant (told here, not charged again):"));
      blocks.add(new Block.Bullets(events));
    }
    return new Page.Section("People, metal, water, steam", blocks);
  }

  private List<String> people() {
    List<String> lines = new ArrayList<>();
    for (Note n : debrief.sheet().notes()) {
      if (n.kind() == Note.Kind.HURT || n.kind() == Note.Kind.DOWN) {
        lines.add(
            times.at(n.tick())
                + "  "
                + Names.capital(plain.text(n.text().replaceFirst(", dose .*", "")))
                + ".");
      }
    }
    lines.add(
        0,
        "People: "
            + (lines.isEmpty() ? "nobody hurt, nobody down." : lines.size() + " hurt or down."));
    return lines;
  }

  private static List<String> plant(Outcome o) {
    return List.of(
        "Metal: superheater at most "
            + degrees(o.superheaterMetalK())
            + ", generating tubes at most "
            + degrees(o.tubeMetalK())
            + ".",
        "Water: lowest "
            + inches(o.lowestLevelM())
            + ", highest "
            + inches(o.highestLevelM())
            + " from the middle of the glass.",
        "Steam: "
            + kilograms(o.steamIntoRoomKg())
            + " into the fire room; the main line held less"
            + " than half of its pressure for "
            + Times.clock(o.withoutSteamTicks())
            + " of the drill's "
            + Times.clock(o.lengthTicks())
            + ".");
  }

  static String degrees(double kelvin) {
    return Measure.ofSi(kelvin, Unit.FAHRENHEIT).text();
  }

  static String inches(double metres) {
    return Measure.ofSi(metres, Unit.INCH).text();
  }

  static String kilograms(double kg) {
    return Math.round(kg) + " kg";
  }

  /** Events of the same second stand in one line; what comes again is told once, with its count. */
  private List<String> events() {
    SortedMap<String, List<Note>> again = new TreeMap<>();
    List<Note> first = new ArrayList<>();
    for (Note n : debrief.sheet().notes()) {
      if (n.kind() == Note.Kind.PLANT) {
        List<Note> same = again.computeIfAbsent(n.text(), k -> new ArrayList<>());
        same.add(n);
        if (same.size() == 1) {
          first.add(n);
        }
      }
    }
    List<String> lines = new ArrayList<>();
    String second = "";
    for (Note n : first) {
      String clock = times.at(n.tick());
      String text = n.text() + times(again.getOrDefault(n.text(), List.of())) + left(n);
      if (clock.equals(second)) {
        lines.set(lines.size() - 1, lines.get(lines.size() - 1) + "; " + text);
      } else {
        lines.add(clock + "  " + text);
      }
      second = clock;
    }
    return lines;
  }

  private String times(List<Note> same) {
    return same.size() < 2
        ? ""
        : " ("
            + same.size()
            + " times, last at "
            + times.at(same.get(same.size() - 1).tick())
            + ")";
  }

  /**
   * Who left a handwheel left it where it stood: water that runs away then is no act of anybody.
   */
  private String left(Note note) {
    OptionalLong leftTick = leftTick();
    boolean isWater = note.text().startsWith("water out of sight");
    return isWater && leftTick.isPresent() && leftTick.getAsLong() <= note.tick()
        ? " (the checkman had left at "
            + times.at(leftTick.getAsLong())
            + ": nobody was at the feed check, and it stays where he left it; not charged)"
        : "";
  }

  /** When whoever holds the level first stood outside the fire room. */
  private OptionalLong leftTick() {
    return debrief.run().stream()
        .filter(e -> e instanceof Entry.Arrived a && isHolder(a.who()) && isOutside(a.place()))
        .mapToLong(Entry::t)
        .findFirst();
  }

  private boolean isHolder(String who) {
    return debrief.request().found().ship().watchstander(who).stream()
        .flatMap(w -> w.holds().stream())
        .flatMap(id -> debrief.request().found().ship().gauge(id).stream())
        .anyMatch(g -> g.of() == handwheel.plant.Quantity.DRUM_LEVEL);
  }

  private boolean isOutside(String place) {
    return debrief.request().found().ship().place(place).filter(p -> !p.isInside()).isPresent();
  }
}
