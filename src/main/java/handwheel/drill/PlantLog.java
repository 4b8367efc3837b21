package handwheel.drill;

import handwheel.logbook.Entry;
import handwheel.plant.Burner;
import handwheel.plant.FurnaceExplosion;
import handwheel.plant.Limit;
import handwheel.plant.LitBy;
import handwheel.plant.ModelRange;
import handwheel.plant.PlantEvents;
import handwheel.plant.Safety;
import java.util.Locale;

/** Writes down what the plant did by itself. */
final class PlantLog implements PlantEvents {
  private final Scene scene;

  PlantLog(Scene scene) {
    this.scene = scene;
  }

  private void log(String what) {
    scene.log(new Entry.PlantEvent(scene.now, what));
  }

  private static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public void burnerOut(Burner burner) {
    log("burner " + words(burner) + " out");
  }

  @Override
  public void burnerLit(Burner burner, LitBy by) {
    log("burner " + words(burner) + " lit by " + words(by));
  }

  @Override
  public void safetyLifts(Safety valve) {
    log("safety valve " + words(valve) + " lifts");
  }

  @Override
  public void safetyReseats(Safety valve) {
    log("safety valve " + words(valve) + " reseats");
  }

  @Override
  public void blowerTrips(int blower) {
    log("blower " + blower + " trips");
  }

  @Override
  public void furnaceExplosion(FurnaceExplosion explosion) {
    log(words(explosion.side()) + " furnace: " + words(explosion.severity()));
  }

  @Override
  public void waterOutOfSightLow() {
    log("water out of sight low");
  }

  @Override
  public void waterOutOfSightHigh() {
    log("water out of sight high");
  }

  @Override
  public void limitReached(Limit limit) {
    log(
        switch (limit) {
          case SUPERHEATER_DAMAGE -> "a superheater tube fails of heat";
          case TUBE_DAMAGE -> "a generating tube fails of heat";
          case UPPER_DOSE -> "the heat above would by now have put down whoever stayed";
          case LOWER_DOSE -> "the heat below would by now have put down whoever stayed";
        });
  }

  @Override
  public void oilFireStarts() {
    log("oil fire starts");
  }

  @Override
  public void oilFireOut() {
    log("oil fire out");
  }

  @Override
  public void leftRange(ModelRange range, double si) {
    log(
        "outside the model: "
            + range.name()
            + " "
            + range.figure(si)
            + ", its equations hold "
            + range.limits());
  }
}
