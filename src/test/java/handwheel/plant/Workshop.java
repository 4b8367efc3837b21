package handwheel.plant;

import handwheel.units.Unit;
import handwheel.water.SaturationTable;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Makes a ship's start conditions by running her plant from the reference conditions: trimmed at a
 * load, banked after a purge, on one burner, raising steam from cold.
 */
final class Workshop {
  private static final int MINUTE = 1200;

  /** Creep and spalling of cool metal and brick; written as none. */
  private static final double NOTHING = 1e-15;

  private final PlantNumbers numbers;

  Workshop(PlantNumbers numbers) {
    this.numbers = numbers;
  }

  /** Returns a plant of this ship's sizes in a reference condition, its water in proportion. */
  Plant from(String start) {
    Plant plant = Plant.of(numbers, SaturationTable.standard());
    SortedMap<String, Double> states = Starts.states(start);
    scale(states, "drum.water-volume", PlantNumber.DRUM_TOTAL_VOLUME);
    scale(states, "drum.riser-steam", PlantNumber.DRUM_RISER_VOLUME);
    scale(states, "drum.bubbles", PlantNumber.DRUM_TOTAL_VOLUME);
    scale(states, "drum.chloride-mass", PlantNumber.DRUM_TOTAL_VOLUME);
    plant.restore(states, Starts.ports(start));
    return plant;
  }

  private void scale(SortedMap<String, Double> states, String name, PlantNumber size) {
    states.computeIfPresent(name, (n, x) -> x * numbers.get(size) / size.usual());
  }

  /** Trims a load for as long as its brick needs. */
  Plant load(String start, double outletF) {
    Plant plant = from(start);
    plant.set(Port.BULKHEAD_STOP, start.equals("100") ? 1 : 0);
    double airRatio = start.equals("25") ? 1.32 : 1.18;
    double outletK = Unit.FAHRENHEIT.toSi(outletF);
    new Trimmer(plant, new Trimmer.Aim(Physics.RATED_PA, airRatio, outletK)).settle(12);
    return plant;
  }

  /** One saturated burner carries the auxiliaries; the stop is shut, the superheater unlit. */
  Plant oneBurner() {
    Plant plant = from("25");
    for (Burner burner : Burner.values()) {
      boolean isLit = burner == Burner.S3;
      plant.set(Port.of(Port.ROOT_S1, burner), isLit ? 1 : 0);
      plant.set(Port.of(Port.REGISTER_S1, burner), isLit ? 1 : 0);
      plant.set(Port.of(Port.PLATE_S1, burner), 2);
    }
    plant.set(Port.THROTTLE_ORDERED, 0);
    plant.set(Port.GENERATOR_LOAD, 0);
    plant.set(Port.MAIN_STOP, 0);
    plant.set(Port.SUPERHEATER_DRAINS, 0.1);
    plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
    plant.set(Port.BLOWER_2_STOP, 0);
    plant.set(Port.BLOWER_2_STEAM, 0);
    new Trimmer(plant, new Trimmer.Aim(Physics.RATED_PA, 1.25, 0)).settle(20);
    return plant;
  }

  /**
   * Fires out an hour ago, purged, bottled up on the other room's auxiliary steam, the superheater
   * drains cracked.
   */
  Plant banked() {
    Plant plant = from("25");
    plant.set(Port.OTHER_AUXILIARY_STEAM, 1);
    plant.set(Port.AUXILIARY_STOP, 0);
    plant.set(Port.THROTTLE_ORDERED, 0);
    plant.set(Port.GENERATOR_LOAD, 0);
    plant.set(Port.FUEL_TRIP_SATURATED, 0);
    plant.set(Port.FUEL_TRIP_SUPERHEATER, 0);
    for (Burner burner : Burner.values()) {
      plant.set(Port.of(Port.ROOT_S1, burner), 0);
      plant.set(Port.of(Port.REGISTER_S1, burner), 1);
    }
    plant.set(Port.BLOWER_1_STEAM, 0.06);
    plant.set(Port.BLOWER_2_STEAM, 0.06);
    Run.ticks(plant, MINUTE);
    plant.set(Port.MAIN_STOP, 0);
    Run.ticks(plant, 5 * MINUTE);
    for (Burner burner : Burner.values()) {
      plant.set(Port.of(Port.REGISTER_S1, burner), 0);
    }
    plant.set(Port.BLOWER_1_STOP, 0);
    plant.set(Port.BLOWER_2_STOP, 0);
    plant.set(Port.SUPERHEATER_DRAINS, 0.2);
    holdLevel(plant, 60);
    plant.set(Port.FEED_CHECK, 0);
    plant.set(Port.SURFACE_BLOW, 0);
    plant.set(Port.MAIN_FEED_PUMP, 0);
    Run.ticks(plant, MINUTE);
    return plant;
  }

  private static void holdLevel(Plant plant, int minutes) {
    for (int s = 0; s < minutes * 60; s++) {
      Run.ticks(plant, 20);
      double lowM = -plant.value(Quantity.DRUM_LEVEL);
      plant.set(Port.FEED_CHECK, Curve.clip(2 * lowM, 0, 0.2));
      plant.set(Port.SURFACE_BLOW, Curve.clip(-2 * lowM, 0, 1));
    }
  }

  /** Ninety minutes after the first torch, one burner on the smallest plate. */
  Plant raisingSteam() {
    Plant plant = from("boiler-cold");
    Run.ticks(plant, 10 * 20);
    plant.set(Port.TORCH_S3, 1);
    plant.set(Port.PLATE_S3, 1);
    plant.set(Port.REGISTER_S3, 1);
    plant.set(Port.ROOT_S3, 1);
    Run.ticks(plant, 10 * 20);
    plant.set(Port.TORCH_S3, 0);
    while (psig(plant) < 100) {
      Run.ticks(plant, 20);
      if (psig(plant) > 15) {
        plant.set(Port.DRUM_VENT, 0);
      }
      blow(plant);
    }
    plant.set(Port.SURFACE_BLOW, 0);
    return plant;
  }

  private static void blow(Plant plant) {
    double levelM = plant.value(Quantity.DRUM_LEVEL);
    if (levelM > 0.05) {
      plant.set(Port.SURFACE_BLOW, 1);
    } else if (levelM < -0.02) {
      plant.set(Port.SURFACE_BLOW, 0);
    }
  }

  static double psig(Plant plant) {
    return (plant.value(Quantity.DRUM_PRESSURE) - Physics.ATMOSPHERE_PA) / Plant.PSI;
  }

  /** Returns a condition's file. */
  static String text(String id, Plant plant) {
    StringBuilder states = new StringBuilder();
    StringBuilder ports = new StringBuilder();
    SortedMap<String, Double> flags = new TreeMap<>();
    var continuous = plant.continuousStates();
    plant.walk(
        (name, value) -> {
          if (name.startsWith("port.")) {
            Port port = Port.ofId(name.substring(5)).orElseThrow();
            if (value != port.min()) {
              line(ports, port.id(), position(port, value));
            }
          } else if (continuous.contains(name)) {
            line(states, name, plain(value));
          } else if (value != 0) {
            flags.put(name, value);
          }
          return value;
        });
    flags.forEach((name, value) -> line(states, name, plain(value)));
    return "handwheel: condition 1\nid: " + id + "\nstates:\n" + states + "ports:\n" + ports;
  }

  private static String position(Port port, double value) {
    if (port.kind() != Port.Kind.CHOICE) {
      return plain(value);
    }
    String word = port.words().get((int) value);
    return word.matches("off|on|[0-9]+") ? '"' + word + '"' : word;
  }

  private static void line(StringBuilder text, String name, String value) {
    text.append("  ").append(name).append(": ").append(value).append('\n');
  }

  private static String plain(double value) {
    return Math.abs(value) < NOTHING ? "0" : new BigDecimal(Double.toString(value)).toPlainString();
  }
}
