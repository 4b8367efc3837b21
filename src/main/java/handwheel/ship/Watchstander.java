package handwheel.ship;

import java.util.List;

/**
 * One of the watch.
 *
 * @param id station id, such as {@code checkman}
 * @param title the station in words
 * @param name the invented person's name
 * @param at id of the place where he stands at first
 * @param holds ids of the gauges he holds at a value by hand when told, or always
 */
public record Watchstander(String id, String title, String name, String at, List<String> holds) {
  /**
   * Copies the list.
   *
   * @param id station id, such as {@code checkman}
   * @param title the station in words
   * @param name the invented person's name
   * @param at id of the place where he stands at first
   * @param holds ids of the gauges he holds at a value by hand when told, or always
   */
  public Watchstander {
    holds = List.copyOf(holds);
  }
}
