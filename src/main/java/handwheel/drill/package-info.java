/**
 * The drill: the session and the crew. The laws by which hands on watch move a valve live here and
 * not in the plant: when a man leaves, his valve stays where it is.
 */
@org.jspecify.annotations.NullMarked
package handwheel.drill;
