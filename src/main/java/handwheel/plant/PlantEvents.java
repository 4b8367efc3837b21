package handwheel.plant;

/** Receives what the plant's discrete rules did in a tick, in the order in which they did it. */
public interface PlantEvents {
  /**
   * A burner went out.
   *
   * @param burner which
   */
  void burnerOut(Burner burner);

  /**
   * A burner took fire.
   *
   * @param burner which
   * @param by what lit it
   */
  void burnerLit(Burner burner, LitBy by);

  /**
   * A safety valve lifted.
   *
   * @param valve which
   */
  void safetyLifts(Safety valve);

  /**
   * A safety valve reseated.
   *
   * @param valve which
   */
  void safetyReseats(Safety valve);

  /**
   * A blower tripped for low speed with its steam valve open.
   *
   * @param blower 1 or 2
   */
  void blowerTrips(int blower);

  /**
   * Vapour in a furnace took fire with a pressure rise of 0.3 kPa or more.
   *
   * @param explosion where and how bad
   */
  void furnaceExplosion(FurnaceExplosion explosion);

  /** The water sank out of the bottom of the gauge glass. */
  void waterOutOfSightLow();

  /** The water rose out of the top of the gauge glass. */
  void waterOutOfSightHigh();

  /**
   * A damage or dose reached 1.
   *
   * @param limit which
   */
  void limitReached(Limit limit);

  /** Oil on the deck plates took fire. */
  void oilFireStarts();

  /** The oil fire went out. */
  void oilFireOut();

  /**
   * A figure left the range in which the equations hold. Told once for each range.
   *
   * @param range the range
   * @param si the figure, SI
   */
  void leftRange(ModelRange range, double si);

  /** Listens to nothing. */
  PlantEvents NONE = new NoPlantEvents();
}
