package handwheel.plant;

/** Sizes of one furnace: areas m2 (with emissivity), capacities J/K, conductance W/K, volume m3. */
record FurnaceSize(
    double wallM2,
    double brickM2,
    double faceJPerK,
    double coreJPerK,
    double conductanceWPerK,
    double volumeM3) {

  static FurnaceSize of(Side side, PlantNumbers numbers) {
    return switch (side) {
      case SATURATED ->
          new FurnaceSize(
              numbers.get(PlantNumber.FURNACE_SATURATED_WALL_AREA),
              numbers.get(PlantNumber.FURNACE_SATURATED_BRICK_AREA),
              numbers.get(PlantNumber.FURNACE_SATURATED_FACE_CAPACITY),
              numbers.get(PlantNumber.FURNACE_SATURATED_CORE_CAPACITY),
              numbers.get(PlantNumber.FURNACE_SATURATED_BRICK_CONDUCTANCE),
              numbers.get(PlantNumber.FURNACE_SATURATED_VOLUME));
      case SUPERHEATER ->
          new FurnaceSize(
              numbers.get(PlantNumber.FURNACE_SUPERHEATER_WALL_AREA),
              numbers.get(PlantNumber.FURNACE_SUPERHEATER_BRICK_AREA),
              numbers.get(PlantNumber.FURNACE_SUPERHEATER_FACE_CAPACITY),
              numbers.get(PlantNumber.FURNACE_SUPERHEATER_CORE_CAPACITY),
              numbers.get(PlantNumber.FURNACE_SUPERHEATER_BRICK_CONDUCTANCE),
              numbers.get(PlantNumber.FURNACE_SUPERHEATER_VOLUME));
    };
  }
}
