package handwheel.screen;

import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Ship;
import handwheel.ship.Verb;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Short forms that follow one rule, so that none has to be learned by itself: thing, number, letter
 * of the verb, {@code r} for the remote station. {@code s3i} lights saturated three, {@code s45rs}
 * shuts the roots of saturated four and five, {@code dp?} reads the drum pressure, {@code o180}
 * sets the oil to 180 psig. Common practice, no source.
 */
final class FormFamilies {
  private static final Pattern WORK = Pattern.compile("([a-z]+[0-9]?)([osxia])(r?)");
  private static final Pattern BURNERS = Pattern.compile("([sh])([1-9]*)([rg])([os])");
  private static final Pattern SETTING = Pattern.compile("([oaclt])(-?[0-9]+(?:\\.[0-9]+)?)");
  private static final Pattern READING = Pattern.compile("([a-z]+[0-9]?)(\\?\\??)(r?)");
  private static final Pattern REPORT = Pattern.compile("/([a-z-]+)");
  private static final String REMOTE = "remote-station";

  /** Code of a thing, the fitting, who works it where it stands. */
  private static final List<Thing> THINGS =
      List.of(
          new Thing("ms", "main-stop", "checkman"),
          new Thing("bks", "bulkhead-stop", "messenger"),
          new Thing("as", "auxiliary-stop", "checkman"),
          new Thing("c", "feed-check", "checkman"),
          new Thing("sb", "surface-blow", "checkman"),
          new Thing("bb", "bottom-blow", "pumpman"),
          new Thing("eg", "easing-gear", "messenger"),
          new Thing("fp", "fuel-pump", "pumpman"),
          new Thing("mf", "main-feed-pump", "pumpman"),
          new Thing("ef", "emergency-feed-pump", "pumpman"),
          new Thing("ed", "eductors", "pumpman"),
          new Thing("fo", "foam", "remote-hand"),
          new Thing("sf", "supply-fan", "remote-hand"),
          new Thing("xf", "exhaust-fan", "remote-hand"),
          new Thing("shv", "header-valve-saturated", "burnerman-saturated"),
          new Thing("hhv", "header-valve-superheater", "burnerman-superheater"),
          new Thing("v", "superheater-vent", "burnerman-superheater"),
          new Thing("sd", "superheater-drains", "burnerman-superheater"),
          new Thing("b#", "blower-#", "blowerman"),
          new Thing("bv#", "blower-valve-#", "blowerman"),
          new Thing("f#", "intake-flap-#", "blowerman"),
          new Thing("df#", "discharge-flap-#", "blowerman"),
          new Thing("d#", "scroll-drain-#", "messenger"),
          new Thing("t#", "tank-valve-#", "pumpman"),
          new Thing("s#", "burner-s#", "burnerman-saturated"),
          new Thing("h#", "burner-h#", "burnerman-superheater"));

  /** Code of a gauge, its id, who reads it where he stands. */
  private static final List<Thing> GAUGES =
      List.of(
          new Thing("w", "drum-level", "checkman"),
          new Thing("dp", "drum-pressure", "burnerman-saturated"),
          new Thing("lp", "line-pressure", "remote-hand"),
          new Thing("bl", "burner-line-pressure", "remote-hand"),
          new Thing("bs", "burner-line-saturated", "burnerman-saturated"),
          new Thing("bh", "burner-line-superheater", "burnerman-superheater"),
          new Thing("hp", "header-pressure", "pumpman"),
          new Thing("so", "superheater-outlet", "burnerman-superheater"),
          new Thing("sf", "superheater-flow", "burnerman-superheater"),
          new Thing("fd", "feed-pressure", "checkman"),
          new Thing("ft", "fuel-temperature", "pumpman"),
          new Thing("ab", "air-box-pressure", "blowerman"),
          new Thing("bk", "black-smoke", "blowerman"),
          new Thing("wh", "white-smoke", "blowerman"),
          new Thing("sa", "salinity", "pumpman"),
          new Thing("bi", "bilge", "messenger"),
          new Thing("t#", "tank-#", "pumpman"));

  private final Ship ship;
  private final List<String> messages;
  private final SortedMap<String, Function<Matcher, List<String>>> rules = new TreeMap<>();

  /** What a code stands for; {@code #} is a number in all of its parts. */
  private record Thing(String code, String id, String who) {
    boolean is(String typed) {
      String number = number(typed);
      return code.equals(number.isEmpty() ? typed : typed.replace(number, "#"));
    }

    String idOf(String typed) {
      return id.replace("#", number(typed));
    }

    private static String number(String typed) {
      char last = typed.charAt(typed.length() - 1);
      return Character.isDigit(last) ? String.valueOf(last) : "";
    }
  }

  FormFamilies(Ship ship, List<String> messages) {
    this.ship = ship;
    this.messages = List.copyOf(messages);
    rules.put(BURNERS.pattern(), this::burners);
    rules.put(WORK.pattern(), this::work);
    rules.put(SETTING.pattern(), FormFamilies::setting);
    rules.put(READING.pattern(), this::reading);
    rules.put(REPORT.pattern(), this::report);
  }

  /** Returns the form that is typed; its orders may be unknown on this ship. */
  Optional<ShortForms.Form> of(String typed) {
    return Stream.of(BURNERS, WORK, SETTING, READING, REPORT)
        .map(p -> p.matcher(typed))
        .filter(Matcher::matches)
        .map(m -> rules.getOrDefault(m.pattern().pattern(), x -> List.of()).apply(m))
        .filter(orders -> !orders.isEmpty())
        .map(orders -> new ShortForms.Form(typed, "", orders))
        .findFirst();
  }

  private List<String> work(Matcher m) {
    Optional<Thing> thing = THINGS.stream().filter(t -> t.is(m.group(1))).findFirst();
    Optional<Fitting> fitting = thing.flatMap(t -> ship.fitting(t.idOf(m.group(1))));
    Optional<Verb> verb = fitting.flatMap(f -> verb(f, m.group(2).charAt(0)));
    if (verb.isEmpty()) {
      return List.of();
    }
    String act = " " + verb.get().word() + " " + fitting.orElseThrow().id();
    boolean isRemote = !m.group(3).isEmpty() || isOnlyRemote(fitting.orElseThrow());
    String who = thing.orElseThrow().who();
    String far = m.group(3).isEmpty() ? who : "remote-hand";
    return List.of(isRemote ? far + act + " from " + REMOTE : who + act);
  }

  private static boolean isOnlyRemote(Fitting fitting) {
    return fitting.controls().stream().allMatch(c -> c.place().equals(REMOTE));
  }

  private static Optional<Verb> verb(Fitting fitting, char letter) {
    List<Verb> verbs =
        switch (letter) {
          case 'o' -> List.of(Verb.OPEN);
          case 's' -> List.of(Verb.SHUT);
          case 'i' -> List.of(Verb.LIGHT);
          case 'a' -> List.of(Verb.START);
          default -> List.of(Verb.TRIP, Verb.STOP, Verb.SECURE);
        };
    return verbs.stream().filter(v -> !fitting.moves(v).isEmpty()).findFirst();
  }

  /** Roots and registers: those of the burners named, else of the whole side. */
  private List<String> burners(Matcher m) {
    String side = m.group(1);
    String kind = (m.group(3).equals("r") ? "root-" : "register-") + side;
    String ids =
        ship.fittings().stream()
            .map(Fitting::id)
            .filter(id -> id.startsWith(kind) && isNamed(id, m.group(2)))
            .collect(Collectors.joining(" "));
    String who = side.equals("s") ? "burnerman-saturated" : "burnerman-superheater";
    String verb = m.group(4).equals("o") ? " open " : " shut ";
    return ids.isEmpty() ? List.of() : List.of(who + verb + ids);
  }

  private static boolean isNamed(String id, String numbers) {
    return numbers.isEmpty() || numbers.indexOf(id.charAt(id.length() - 1)) >= 0;
  }

  private static List<String> setting(Matcher m) {
    String to = " to " + m.group(2);
    return switch (m.group(1)) {
      case "o" -> List.of("pumpman set fuel-governor" + to + " psig");
      case "a" -> List.of("blowerman set blower-valve-1 blower-valve-2" + to + " %");
      case "t" -> List.of("pumpman set fuel-suction to tank-" + m.group(2));
      case "c" -> List.of("checkman set feed-check" + to + " %");
      default -> List.of("checkman set drum-level" + to + " in");
    };
  }

  /** One question mark: he reads it himself if it hangs before him at the start, else his man. */
  private List<String> reading(Matcher m) {
    Optional<Thing> thing = GAUGES.stream().filter(t -> t.is(m.group(1))).findFirst();
    Optional<Gauge> gauge = thing.flatMap(t -> ship.gauge(t.idOf(m.group(1))));
    if (gauge.isEmpty()) {
      return List.of();
    }
    String read = "read " + gauge.get().id();
    if (!m.group(3).isEmpty()) {
      return List.of("remote-hand " + read);
    }
    boolean isHis = m.group(2).length() == 1 && gauge.get().at().contains(post());
    return List.of(isHis ? read : thing.orElseThrow().who() + " " + read);
  }

  private String post() {
    return ship.watchstander(Ship.SUPERVISOR).map(w -> w.at()).orElse("");
  }

  /** A report is named by the beginning that only one has. */
  private List<String> report(Matcher m) {
    List<String> fitting = messages.stream().filter(id -> id.startsWith(m.group(1))).toList();
    return fitting.size() == 1
        ? List.of("report " + fitting.get(0) + " to watch-engineer")
        : List.of();
  }

  /** Returns the rule in lines, for the help page. */
  static List<String> card() {
    return List.of(
        "By rule: thing, number, o open s shut x out i light a start, r remote:",
        "  s3i h1x burners  s45rs hrs roots  sgo registers  f1s intake flap  csr",
        "  fpa efx mfx pumps  shvs header valve  o180 oil  a60 air  t2 suction",
        "  dp? bs? hp? read it   bs?? your man reads it   bl?r remote   /l report");
  }
}
