package handwheel.drill;

import handwheel.plant.Difference;
import handwheel.ship.Control;
import java.util.List;

/** Where the crew and the reference light-off differ from published figures. */
final class DrillDifferences {
  private static final int HOUR_S = 3_600;
  private static final int LAST_S = 12_900;

  private DrillDifferences() {}

  static List<Difference> all() {
    Film lightOff = Film.of("10a-light-off", "boiler", "brick S");
    return List.of(
        new Difference(
            "fastest hour of the reference light-off, saturation temperature, F",
            "100, rule for drums (from memory)",
            fastest(lightOff, "boiler"),
            "one burner with the smallest plate is left lit; a ship's card may ask for pauses"),
        new Difference(
            "first hour of the same on the brick face, F",
            "100 to 200, cured brick (from memory); 100, castable dried out (read)",
            lightOff.change("brick S", HOUR_S),
            "the face is the outer lump of two; its core follows in hours"),
        new Difference(
            "main stop by reach rod over by hand, time",
            "2 to 3 (from memory)",
            WalkingChecks.control("main-stop", "remote-station").timeS() / byHand().timeS(),
            "this ship's figures"),
        new Difference(
            "eight turns of a tank suction valve by hand, s",
            "16, AWWA gate valve of 2 in at 30 turns a minute (from memory)",
            WalkingChecks.control("tank-valve-1", "fuel-station").timeS(),
            "this ship's figures; a small wheel spins faster"),
        new Difference(
            "fastest climb of a ladder, m/s",
            "0.25 to 0.4 on a vertical one (from memory); 0.84 on stairs (read)",
            Pace.fastest().upMPerS(),
            "this ship's ladders are taken as stairs"));
  }

  private static Control byHand() {
    return WalkingChecks.control("main-stop", "stop-grating");
  }

  private static double fastest(Film film, String column) {
    double most = 0;
    for (int s = HOUR_S; s <= LAST_S; s += 10) {
      most = Math.max(most, film.at(column, s) - film.at(column, s - HOUR_S));
    }
    return most;
  }
}
