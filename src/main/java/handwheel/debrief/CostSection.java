package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;

/** What each mistake cost: the run with one act mended beside the run as it was. */
final class CostSection {
  private static final String ASSUMPTION =
      "The drill was simulated again with that one act mended and all else as you did it. It is taken"
          + " that the crew would have acted alike: same walk, same hearing, same hand on the"
          + " handwheels. A model's answer, not a promise. Without steam: how long the main line"
          + " held less than half of its pressure, to the end of each drill.";

  private static final List<String> HEAD =
      List.of(
          "Mended",
          "Hurt",
          "Down",
          "Hottest metal",
          "Lowest water",
          "Without steam",
          "Steam in room",
          "Points");

  /** So much hotter is told, K; own choice. */
  private static final double HOTTER_K = 50;

  private final Debrief.Simulated simulated;
  private final Lost lost;
  private final Times times;

  CostSection(Debrief.Simulated simulated, Lost lost, Times times) {
    this.simulated = simulated;
    this.lost = lost;
    this.times = times;
  }

  Page.Section section() {
    if (simulated.costs().isEmpty()) {
      return new Page.Section(
          "What each mistake cost",
          List.of(new Block.Paragraph("There was no mistake that could be mended.")));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(ASSUMPTION));
    blocks.add(new Block.Table("The run with one act mended", HEAD, rows()));
    notes().forEach(n -> blocks.add(new Block.Paragraph(n)));
    return new Page.Section("What each mistake cost", blocks);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("As it was", simulated.outcome()));
    for (Cost c : simulated.costs()) {
      String alone = c.isEnough() ? "" : " (*)";
      String what = c.charge().type().word() + ", " + times.at(c.charge().tick());
      rows.add(row(lost.name(c.charge()) + ", " + what + alone, c.mended()));
    }
    rows.add(row("All of them mended", simulated.allMended()));
    return rows;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (simulated.outcome().points() == 0) {
      notes.add(
          "Points do not fall below 0: here more was lost than there was, so one act mended may"
              + " show no gain in points. Look at the people first.");
    }
    if (simulated.costs().stream().anyMatch(c -> isWorse(c.mended()))) {
      notes.add(
          "Where a row is worse than the run as it was: with the other mistakes left in, that act"
              + " alone does harm. An act is right only in its place in the order.");
    }
    if (simulated.costs().stream().anyMatch(c -> !c.isEnough())) {
      notes.add(
          "(*) Mended alone this was not enough: something that comes before it was missing or"
              + " wrong too.");
    }
    return notes;
  }

  private boolean isWorse(Outcome mended) {
    Outcome was = simulated.outcome();
    boolean isHotter =
        Math.max(mended.superheaterMetalK(), mended.tubeMetalK())
            > Math.max(was.superheaterMetalK(), was.tubeMetalK()) + HOTTER_K;
    return isHotter || mended.points() < was.points() || mended.hurt() > was.hurt();
  }

  private static List<String> row(String name, Outcome o) {
    return List.of(
        name,
        String.valueOf(o.hurt()),
        String.valueOf(o.down()),
        OutcomeSection.degrees(Math.max(o.superheaterMetalK(), o.tubeMetalK())),
        OutcomeSection.inches(o.lowestLevelM()),
        Times.clock(o.withoutSteamTicks()),
        OutcomeSection.kilograms(o.steamIntoRoomKg()),
        String.valueOf(o.points()));
  }
}
