package handwheel.drill;

import handwheel.plant.Plant;

/** A hand that moves a valve no faster than it can. */
final class Hand {
  private Hand() {}

  /** Returns where a hand is one tick later on its way from one position to another. */
  static double toward(double from, double to, double ratePerS) {
    double step = ratePerS * Plant.TICK_S;
    if (to > from + step) {
      return from + step;
    }
    return to < from - step ? from - step : to;
  }

  static double clip(double x, double low, double high) {
    return x < low ? low : x > high ? high : x;
  }
}
