/**
 * Handwheel, an emergency casualty drill trainer for a hand-operated steam fire room. This root
 * holds packages only; read {@code docs/architecture.md} for their order.
 */
@org.jspecify.annotations.NullMarked
package handwheel;
