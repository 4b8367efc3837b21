package handwheel.plant;

/** One of the boiler's two furnaces. */
public enum Side {
  /** Furnace that boils water only; burners S1 to S5. */
  SATURATED,
  /** Furnace whose gas passes the superheater; burners H1 to H3. */
  SUPERHEATER
}
