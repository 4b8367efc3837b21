package handwheel.plant.outside;

import java.util.List;

/**
 * A constant of the plant, to be changed.
 *
 * @param what what it is
 * @param classes classes that hold it, below {@code handwheel}; none for a plant number
 * @param value its value, or the id of the plant number
 * @param kinds kinds of checks that look at its machine
 */
record Alteration(String what, List<String> classes, String value, List<String> kinds) {
  /** The pressure in one line of the steam table, in place of a constant. */
  static final String CELL = "saturation.csv";

  /** Every constant that is tried. */
  static final List<Alteration> ALL =
      List.of(
          new Alteration("steam pressure at 500 K", List.of(), CELL, List.of("steam")),
          constant(
              "superheated steam, linear term", "water.SuperheatedSteam", "867.8288769", "steam"),
          constant("hole times choked factor", "plant.MainSteamLine", "0.56695", "leak"),
          constant("gas constant in the leaks", "plant.MainSteamLine", "433.81", "leak"),
          constant("heat capacity of steel", "plant.SteamDrum", "500", "drum ship"),
          number("drum.steel", "drum ship"),
          number("drum.total-volume", "drum ship"),
          number("drum.riser-volume", "drum ship"),
          number("drum.downcomer-area", "ship"),
          number("drum.water-area", "ship"),
          constant("time of riser steam in the drum", "plant.SteamDrum", "0.65", "ship"),
          constant("time of flashed bubbles", "plant.SteamDrum", "1.8", "ship"),
          constant("slip, and time of the risers", "plant.SteamDrum", "2.5", "ship"),
          constant("friction of the circulation", "plant.SteamDrum", "28", "ship"),
          new Alteration(
              "air for oil",
              List.of("plant.BurnerFront", "plant.Furnace", "plant.SideFire"),
              "14.3",
              List.of("fire")),
          constant("net heat of oil", "plant.Furnace", "42.7e6", "fire"),
          new Alteration(
              "heat capacity of gas",
              List.of("plant.Furnace", "plant.Superheater", "plant.GasPath"),
              "1230",
              List.of("fire")),
          constant("heat transfer of the bank", "plant.GasPath", "2.4", "fire"),
          constant("heat transfer of the economizer", "plant.GasPath", "1.1", "fire"),
          number("furnace.saturated.wall-area", "fire"),
          number("furnace.superheater.wall-area", "fire"),
          number("superheater.gas-conductance", "fire"),
          number("register.conductance", "fire"),
          constant("length of a step", "plant.State", "0.05", "step"));

  private static Alteration constant(String what, String owner, String value, String kinds) {
    return new Alteration(what, List.of(owner), value, List.of(kinds.split(" ", -1)));
  }

  private static Alteration number(String id, String kinds) {
    return new Alteration("plant number", List.of(), id, List.of(kinds.split(" ", -1)));
  }

  boolean isCell() {
    return value.equals(CELL);
  }

  boolean isNumber() {
    return classes.isEmpty() && !isCell();
  }
}
