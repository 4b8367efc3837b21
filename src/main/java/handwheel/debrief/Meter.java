package handwheel.debrief;

import handwheel.drill.Engine;
import handwheel.drill.Session;
import handwheel.plant.Quantity;
import handwheel.scoring.Note;
import handwheel.scoring.ScoreSheet;
import java.util.function.Consumer;

/** Measures a run while it is simulated. */
final class Meter implements Consumer<Session> {
  private static final double HALF = 0.5;

  private double superheaterK;
  private double tubeK;
  private double lowM = Double.MAX_VALUE;
  private double highM = -Double.MAX_VALUE;
  private double steamKg;
  private double lineAtStartPa;
  private long withoutSteam;
  private long ticks;

  @Override
  public void accept(Session session) {
    superheaterK = Math.max(superheaterK, session.truth(Quantity.SUPERHEATER_METAL_TEMPERATURE));
    tubeK = Math.max(tubeK, session.truth(Quantity.TUBE_TEMPERATURE));
    double levelM = session.truth(Quantity.DRUM_LEVEL);
    lowM = Math.min(lowM, levelM);
    highM = Math.max(highM, levelM);
    steamKg += session.truth(Quantity.LEAK_ROOM_FLOW) / Engine.TICKS_PER_S;
    double linePa = session.truth(Quantity.MAIN_LINE_PRESSURE);
    lineAtStartPa = ticks == 0 ? linePa : lineAtStartPa;
    withoutSteam += linePa < HALF * lineAtStartPa ? 1 : 0;
    ticks++;
  }

  Outcome outcome(ScoreSheet sheet) {
    return new Outcome(
        count(sheet, Note.Kind.HURT),
        count(sheet, Note.Kind.DOWN),
        superheaterK,
        tubeK,
        lowM,
        highM,
        steamKg,
        withoutSteam,
        ticks,
        sheet.points());
  }

  private static int count(ScoreSheet sheet, Note.Kind kind) {
    return (int) sheet.notes().stream().filter(n -> n.kind() == kind).count();
  }
}
