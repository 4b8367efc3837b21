package handwheel.screen;

/**
 * What reactions and drawings stand on besides the state; the same all through a drill.
 *
 * @param pages the pages that cover the screen
 * @param expander reads the order line
 */
record Ground(Pages pages, Expander expander) {}
