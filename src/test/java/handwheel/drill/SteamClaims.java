package handwheel.drill;

import static handwheel.drill.Claim.says;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

/** Feed, superheater, main steam, tube rupture. */
final class SteamClaims {
  private SteamClaims() {}

  static List<Claim> all() {
    return List.of(
        new Claim("feed lost", SteamClaims::feedLost),
        new Claim("feed lost, with response", SteamClaims::feedLostResponse),
        new Claim("superheater flow lost: stop shut over a minute", SteamClaims::stopShut),
        new Claim("superheater flow lost: stop slammed, left lit", SteamClaims::leftLit),
        new Claim("superheater safety valve cycles", SteamClaims::safetyCycles),
        new Claim("steam leak: the upper level", SteamClaims::leakUpper),
        new Claim("steam leak with response", SteamClaims::leakResponse),
        new Claim("steam leak fed from the other room", SteamClaims::backFeed),
        new Claim("cue words: what falls fast and what sags", SteamClaims::cueWords),
        new Claim("tube rupture", SteamClaims::tubeRupture));
  }

  private static void feedLost() {
    Film film = Film.of("5a-feed-lost", "drum p", "level", "dry");
    assertThat(film.at("drum p", 20)).isGreaterThan(620); // it rises
    says(film.at("level", 20), "-2.6");
    says(film.at("level", 30), "-3.8");
    says(film.times("water out of sight low").get(0), "57");
    says(film.when("dry", 0, d -> d >= 50), "184");
    says(film.times("Dtube reaches 1").get(0), "262");
  }

  private static void feedLostResponse() {
    Film film = Film.of("5b-feed-lost-response", "level");
    says(film.lowest("level"), "-5.4");
    assertThat(film.told("water out of sight")).isEmpty();
    assertThat(film.when("level", film.whenLowest("level"), in -> in >= 0)).isBetween(120.0, 200.0);
  }

  private static void stopShut() {
    Film film = Film.of("6a-stop-shut-on-fire", "superheater flow", "superheater metal");
    assertThat(film.at("superheater flow", 30))
        .isGreaterThan(0.95 * film.at("superheater flow", 0));
    assertThat(film.at("superheater flow", 40))
        .isGreaterThan(0.75 * film.at("superheater flow", 0));
    assertThat(film.at("superheater flow", 50)).isLessThan(0.5 * film.at("superheater flow", 0));
    says(film.times("safety sh lifts").get(0), "54");
    // The list has 1,178, cut off where the table of the same run has 1,179.
    says(film.at("superheater metal", 120), "1179");
    says(film.at("superheater metal", 240), "1298");
  }

  private static void leftLit() {
    Film film = Film.of("6d-superheater-left-lit", "superheater metal", "superheater out");
    says(film.change("superheater metal", 10) / 10, "4.6");
    says(film.at("superheater metal", 30), "1049");
    says(film.at("superheater metal", 120), "1235");
    Film eased = Film.of("6f-no-flow", "superheater metal");
    says(eased.at("superheater metal", 120), "1388");
    says(film.at("superheater out", 30), "819");
    assertThat(film.at("superheater out", 30)).isLessThan(film.at("superheater out", 0));
  }

  /** Four per cent of blowdown: every 20 to 60 s, to the ten, over and over. */
  private static void safetyCycles() {
    List<Double> lifts = Film.of("6d-superheater-left-lit", "drum p").times("safety sh lifts");
    assertThat(lifts.size()).isBetween(9, 12);
    for (int i = 1; i < lifts.size(); i++) {
      assertThat(lifts.get(i) - lifts.get(i - 1)).isBetween(15.0, 65.0);
    }
  }

  private static void leakUpper() {
    upper("7a-leak-050", "148", "163", "168");
    upper("7a-leak-075", "171", "201", "209");
    upper("7a-leak-0875", "186", "223", "234");
    upper("7a-leak-100", "202", "248", "260");
    upper("7a-leak-125", "239", "299", "311");
  }

  private static void upper(String run, String at10, String at30, String at60) {
    Film film = Film.of(run, "upper");
    says(film.at("upper", 10), at10);
    says(film.at("upper", 30), at30);
    says(film.at("upper", 60), at60);
  }

  private static void leakResponse() {
    Film local = Film.of("7c-leak-100-local", "header", "burner line S", "level", "leak");
    Film remote = Film.of("7d-leak-100-remote", "level", "leak");
    says(local.at("header", 33), "263");
    assertThat(local.at("burner line S", 11)).isZero(); // tripped at 10 s
    says(local.lowest("level"), "-3.3");
    says(local.whenRow("leak", 60, k -> k < 0.4), "101");
    says(remote.whenRow("leak", 60, k -> k < 0.4), "127");
  }

  private static void backFeed() {
    Film one = Film.of("7i-leak-100-back-feed", "line p", "leak");
    says(one.at("line p", 60), "565");
    says(one.at("line p", 119), "565");
    assertThat(one.at("leak", 119)).isGreaterThan(16);
    assertThat(one.at("leak", 240)).isLessThan(0.01);
    Film both = Film.of("7j-leak-100-both-ends", "leak");
    assertThat(both.at("leak", 119)).isLessThan(0.5);
  }

  private static void cueWords() {
    Film leak = Film.of("7a-leak-100", "drum p", "level");
    says(leak.change("drum p", 10), "-7.6");
    says(leak.at("level", 10), "0.3");
    Film out = Film.of("3a-suction-lost", "drum p");
    double perS = (out.at("drum p", 20) - out.at("drum p", 15)) / 5;
    assertThat(perS).isBetween(-6.65, -4.95);
    Film half = Film.of("7a-leak-050", "upper dose");
    assertThat(half.at("upper dose", 60)).isLessThan(0.3);
    assertThat(half.at("upper dose", 120)).isLessThan(0.3);
  }

  private static void tubeRupture() {
    Film film = Film.of("8b-tube-rupture", "furnace p", "air box", "feed", "upper", "upper dose");
    assertThat(film.at("furnace p", 2)).isGreaterThan(film.at("air box", 2));
    assertThat(film.at("upper", 5)).isGreaterThan(film.at("upper", 0) + 5); // out of the fronts
    assertThat(film.times("burner S")).hasSize(3).allMatch(t -> t < 1);
    says(film.times("water out of sight low").get(0), "63");
    assertThat(film.highest("feed")).isCloseTo(134.9, within(0.1));
    Film stopped = Film.of("8c-tube-rupture-response", "feed");
    says(stopped.times("water out of sight low").get(0), "25");
  }
}
