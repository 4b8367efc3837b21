package handwheel.plant;

/**
 * Auxiliary steam: drives blowers, feed and fuel pumps, heats the fuel and the ship. No state.
 *
 * <p>Its pressure is a share of 600 psig: the drum's through the auxiliary stop, or the other
 * source's if that is higher, which then carries the whole load. Losing drum pressure therefore
 * takes the machinery down with it unless the other source is open.
 *
 * <p>Source: engineering estimate.
 */
final class AuxiliarySteam {
  private static final double HOTEL_KG_PER_S = 0.35;

  double share;
  double flowKgPerS;

  private final Positions ports;

  AuxiliarySteam(Positions ports) {
    this.ports = ports;
  }

  /** First part: the pressure all auxiliaries see. */
  void look(SteamDrum drum) {
    share =
        Math.max(
            drum.pressureShare * ports.at(Port.AUXILIARY_STOP),
            ports.at(Port.OTHER_AUXILIARY_STEAM));
  }

  /** Second part: what the drum gives, once every consumer is known. */
  void evaluate(SteamDrum drum, double blowersKgPerS, FeedSystem feed, FuelSystem fuel) {
    double hotel = ports.isOn(Port.HOTEL_STEAM) ? HOTEL_KG_PER_S * share : 0;
    double all =
        blowersKgPerS + feed.pumpSteamKgPerS + fuel.pumpSteamKgPerS + fuel.heaterKgPerS + hotel;
    boolean isOwn =
        ports.isOn(Port.AUXILIARY_STOP)
            && ports.at(Port.OTHER_AUXILIARY_STEAM) < drum.pressureShare;
    flowKgPerS = isOwn ? all : 0;
  }
}
