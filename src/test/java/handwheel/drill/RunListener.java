package handwheel.drill;

import handwheel.plant.Burner;
import handwheel.plant.FurnaceExplosion;
import handwheel.plant.Limit;
import handwheel.plant.LitBy;
import handwheel.plant.ModelRange;
import handwheel.plant.PlantEvents;
import handwheel.plant.Safety;
import handwheel.plant.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes down what happens in the words of the reference runs. */
final class RunListener implements PlantEvents {
  final List<String[]> events = new ArrayList<>();
  final List<String> outside = new ArrayList<>();
  int tick;

  void note(String words) {
    add("> " + words);
  }

  private void add(String words) {
    events.add(new String[] {String.format(Locale.ROOT, "%.2f", tick * 0.05), words});
  }

  @Override
  public void burnerOut(Burner burner) {
    add("burner " + burner + " out");
  }

  @Override
  public void burnerLit(Burner burner, LitBy by) {
    add("burner " + burner + " lit by " + words(by));
  }

  private static String words(LitBy by) {
    return switch (by) {
      case TORCH -> "torch";
      case HOT_BRICK -> "hot brick";
      case NEIGHBOUR -> "neighbour";
    };
  }

  @Override
  public void safetyLifts(Safety valve) {
    add("safety " + words(valve) + " lifts");
  }

  @Override
  public void safetyReseats(Safety valve) {
    add("safety " + words(valve) + " reseats");
  }

  private static String words(Safety valve) {
    return switch (valve) {
      case SUPERHEATER -> "sh";
      case DRUM_1 -> "d1";
      case DRUM_2 -> "d2";
    };
  }

  @Override
  public void blowerTrips(int blower) {
    add("blower " + blower + " trips");
  }

  @Override
  public void furnaceExplosion(FurnaceExplosion e) {
    add(
        String.format(
            Locale.ROOT,
            "furnace %s %s %.2f kPa (phi %.3f vapour %.4f kg)",
            e.side() == Side.SATURATED ? "S" : "H",
            e.severity().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            e.overpressurePa() / 1000,
            e.equivalenceRatio(),
            e.vapourKg()));
  }

  @Override
  public void waterOutOfSightLow() {
    add("water out of sight low");
  }

  @Override
  public void waterOutOfSightHigh() {
    add("water out of sight high");
  }

  @Override
  public void limitReached(Limit limit) {
    String name =
        switch (limit) {
          case SUPERHEATER_DAMAGE -> "Dsh";
          case TUBE_DAMAGE -> "Dtube";
          case UPPER_DOSE -> "FEDU";
          case LOWER_DOSE -> "FEDL";
        };
    add(name + " reaches 1");
  }

  @Override
  public void oilFireStarts() {
    add("oil fire starts");
  }

  @Override
  public void oilFireOut() {
    add("oil fire out");
  }

  /** The study has no such event: it is kept apart. */
  @Override
  public void leftRange(ModelRange range, double si) {
    outside.add(range.name() + " at " + tick / 20 + " s");
  }
}
