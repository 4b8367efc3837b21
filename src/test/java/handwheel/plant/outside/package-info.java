/**
 * Checks of the plant against the world outside: published tables, formulas and models, another
 * integrator. Each check names its source and how far that source was seen.
 */
@org.jspecify.annotations.NullMarked
package handwheel.plant.outside;
