/**
 * A run of a drill: a deterministic fold over ticks and inputs. The session sets the plant's ports,
 * lets the crew hear, walk, work and be hurt, takes the casualty through its phases and writes
 * entries.
 *
 * <p>This package never reads a clock, a file or a default locale, never starts a thread, and never
 * scores. Truth is the plant's; what people know comes through gauges, eyes and voices.
 *
 * <p>Reading order: {@link handwheel.drill.Session}, {@link handwheel.drill.Input}, {@link
 * handwheel.drill.Sight}; inside: {@code Scene}, {@code Crew}, {@code Person}, {@code Doing},
 * {@code Story}, {@code Nevers}, then the control laws.
 */
@org.jspecify.annotations.NullMarked
package handwheel.drill;
