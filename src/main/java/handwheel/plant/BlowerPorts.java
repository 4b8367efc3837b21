package handwheel.plant;

/** The ports of one blower. */
record BlowerPorts(
    int number,
    Port steam,
    Port stop,
    Port reset,
    Port seaWater,
    Port intakeFlap,
    Port flapStuck,
    Port scrollDrain,
    Port trip) {

  static final BlowerPorts FIRST =
      new BlowerPorts(
          1,
          Port.BLOWER_1_STEAM,
          Port.BLOWER_1_STOP,
          Port.BLOWER_1_RESET,
          Port.BLOWER_1_SEA_WATER,
          Port.BLOWER_1_INTAKE_FLAP,
          Port.BLOWER_1_FLAP_STUCK,
          Port.BLOWER_1_SCROLL_DRAIN,
          Port.BLOWER_1_TRIP);

  static final BlowerPorts SECOND =
      new BlowerPorts(
          2,
          Port.BLOWER_2_STEAM,
          Port.BLOWER_2_STOP,
          Port.BLOWER_2_RESET,
          Port.BLOWER_2_SEA_WATER,
          Port.BLOWER_2_INTAKE_FLAP,
          Port.BLOWER_2_FLAP_STUCK,
          Port.BLOWER_2_SCROLL_DRAIN,
          Port.BLOWER_2_TRIP);
}
