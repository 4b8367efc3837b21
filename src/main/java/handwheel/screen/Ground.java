package handwheel.screen;

/**
 * What reactions and drawings stand on besides the state; the same all through a drill.
 *
 * @param pages the pages that cover the screen
 * @param expander reads the order line
 * @param hazards tells what caution belongs before an order
 */
record Ground(Pages pages, Expander expander, Hazards hazards) {}
