package handwheel.drill;

import static handwheel.drill.Claim.says;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

/** What a steam leak, its ventilation, an oil fire and flooding do in the fire room. */
final class RoomClaims {
  private static final String NEVER = ">";

  /** Doses of the upper man out at 10, 15, 20, 30 s; when it is 1; lower at 60, 120, 300; 1. */
  private static final List<List<String>> DOSES =
      List.of(
          List.of(
              "050", "0.0019", "0.0046", "0.0090", "0.02", "335.5", "0", "4.4e-5", "3.1e-4", NEVER),
          List.of("075", "0.0080", "0.02", "0.05", "0.13", "91.4", "2.8e-3", "0.04", "0.18", NEVER),
          List.of("0875", "0.02", "0.05", "0.10", "0.28", "57.6", "0.02", "0.11", "0.44", "535.8"),
          List.of("100", "0.03", "0.09", "0.20", "0.54", "40.4", "0.06", "0.26", "1.00", "300.3"),
          List.of("125", "0.09", "0.29", "0.63", "1.62", "24.2", "0.30", "1.18", "4.32", "108.4"));

  /** Upper F at 30, 60; lower F; upper dose at 20, 30; lower dose at 60, 120; when each is 1. */
  private static final List<List<String>> FANS =
      List.of(
          List.of(
              "7a-leak-100",
              "248.3",
              "259.9",
              "145.4",
              "160.5",
              "0.20",
              "0.54",
              "0.06",
              "0.26",
              "40.4",
              "300.3"),
          List.of(
              "7h-leak-100-vent-exhaust-only",
              "277.2",
              "302.9",
              "150.0",
              "176.0",
              "0.29",
              "0.84",
              "0.09",
              "0.57",
              "32.2",
              "159.7"),
          List.of(
              "7h-leak-100-vent-supply-only",
              "274.0",
              "291.9",
              "167.0",
              "192.3",
              "0.30",
              "0.86",
              "0.22",
              "0.97",
              "32.0",
              "122.2"),
          List.of(
              "7h-leak-100-vent-none",
              "316.8",
              "358.6",
              "175.0",
              "231.1",
              "0.45",
              "1.50",
              "0.39",
              "3.96",
              "26.1",
              "77.2"));

  private RoomClaims() {}

  static List<Claim> all() {
    Stream<Claim> doses =
        DOSES.stream().map(row -> new Claim("dose, hole " + row.get(0), () -> dose(row)));
    Stream<Claim> fans =
        FANS.stream().map(row -> new Claim("ventilation, " + row.get(0), () -> fans(row)));
    Stream<Claim> rest =
        Stream.of(
            new Claim("which fan helps", RoomClaims::exhaustHelps),
            new Claim("oil spray fire", RoomClaims::oilFire),
            new Claim("flooding", RoomClaims::flooding));
    return Stream.of(doses, fans, rest).flatMap(s -> s).toList();
  }

  private static void dose(List<String> row) {
    Film film = Film.of("7a-leak-" + row.get(0), "upper dose", "lower dose");
    says(film.at("upper dose", 10), row.get(1));
    says(film.at("upper dose", 15), row.get(2));
    says(film.at("upper dose", 20), row.get(3));
    says(film.at("upper dose", 30), row.get(4));
    reaches(film, "FEDU", row.get(5));
    says(film.at("lower dose", 60), row.get(6));
    says(film.at("lower dose", 120), row.get(7));
    says(film.at("lower dose", 300), row.get(8));
    reaches(film, "FEDL", row.get(9));
  }

  private static void fans(List<String> row) {
    Film film = Film.of(row.get(0), "upper", "lower", "upper dose", "lower dose");
    says(film.at("upper", 30), row.get(1));
    says(film.at("upper", 60), row.get(2));
    says(film.at("lower", 30), row.get(3));
    says(film.at("lower", 60), row.get(4));
    says(film.at("upper dose", 20), row.get(5));
    says(film.at("upper dose", 30), row.get(6));
    says(film.at("lower dose", 60), row.get(7));
    says(film.at("lower dose", 120), row.get(8));
    reaches(film, "FEDU", row.get(9));
    reaches(film, "FEDL", row.get(10));
  }

  private static void reaches(Film film, String dose, String s) {
    List<Double> times = film.times(dose + " reaches 1");
    if (s.equals(NEVER)) {
      assertThat(times).isEmpty();
    } else {
      says(times.get(0), s);
    }
  }

  /** The exhaust takes hot wet air from the top; supply alone drives it down. */
  private static void exhaustHelps() {
    double exhaust = lowerDose("7h-leak-100-vent-exhaust-only");
    double supply = lowerDose("7h-leak-100-vent-supply-only");
    says(supply / exhaust, "2.4");
    assertThat(lowerDose("7a-leak-100")).isLessThan(exhaust);
    assertThat(lowerDose("7h-leak-100-vent-none")).isGreaterThan(supply);
  }

  private static double lowerDose(String run) {
    return Film.of(run, "lower dose").at("lower dose", 60);
  }

  private static void oilFire() {
    Film film = Film.of("11a-oil-fire", "fire", "upper dose");
    says(film.highest("fire"), "10");
    says(film.times("FEDU reaches 1").get(0), "28");
    Film fought = Film.of("11b-oil-fire-response", "fire");
    assertThat(fought.told("oil fire out")).hasSize(1);
  }

  private static void flooding() {
    says(Film.of("12a-flooding", "bilge").at("bilge", 600), "2.6");
  }
}
