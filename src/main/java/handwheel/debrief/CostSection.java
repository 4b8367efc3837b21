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
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("As it was", simulated.outcome()));
    for (Cost c : simulated.costs()) {
      String alone = c.isEnough() ? "" : " (*)";
      rows.add(
          row(
              lost.name(c.charge())
                  + ", "
                  + c.charge().type().word()
                  + ", "
                  + times.at(c.charge().tick())
                  + alone,
              c.mended()));
    }
    rows.add(row("All of them mended", simulated.allMended()));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(ASSUMPTION));
    blocks.add(
        new Block.Table(
            "The run with one act mended",
            List.of(
                "Mended",
                "Hurt",
                "Down",
                "Hottest metal",
                "Lowest water",
                "Without steam",
                "Steam in room",
                "Points"),
            rows));
    if (simulated.outcome().points() == 0) {
      blocks.add(
          new Block.Paragraph(
              "Points do not fall below 0: here more was lost than there was, so one act mended may"
                  + " show no gain in points. Look at the people first."));
    }
    if (simulated.costs().stream().anyMatch(c -> !c.isEnough())) {
      blocks.add(
          new Block.Paragraph(
              "(*) Mended alone this was not enough: something that comes before it was missing or"
                  + " wrong too."));
    }
    return new Page.Section("What each mistake cost", blocks);
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
