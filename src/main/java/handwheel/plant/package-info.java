/**
 * The physical plant of the fire room: one oil-fired two-furnace boiler, its steam, air, fuel and
 * feed machinery, the compartment around it, and its faults. Deterministic: the same inputs give
 * the same bits on every machine, and nothing is allocated in a step.
 *
 * <p>A step is {@link handwheel.plant.Plant#evaluate}, {@link handwheel.plant.Plant#applyRules},
 * {@link handwheel.plant.Plant#advance}. This package never knows of scripts, people, gauges,
 * scores, screens, clocks or files.
 *
 * <p>Inside, figures are SI doubles named with their unit. Reading order: {@link
 * handwheel.plant.Port}, {@link handwheel.plant.Quantity}, {@link handwheel.plant.Plant}, then the
 * machines in the order in which the plant evaluates them.
 */
@org.jspecify.annotations.NullMarked
package handwheel.plant;
