package handwheel.screen;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The short forms: thing, number, letter of the verb ({@code o} open, {@code s} shut, {@code x}
 * out, stop or trip); at the fitting unless it ends in {@code r}. One fixed set for everybody.
 */
public final class ShortForms {
  private final SortedMap<String, List<String>> forms = new TreeMap<>();

  ShortForms(List<String> messages) {
    String hx = "burnerman-superheater trip fuel-trip-superheater";
    String sx = "burnerman-saturated trip fuel-trip-saturated";
    put("xx", hx, sx);
    put("hx", hx);
    put("sx", sx);
    put("xxr", "remote-hand trip fuel-trip-superheater fuel-trip-saturated from remote-station");
    put("gg", "everyone leave");
    put("ct", "muster lower-passage");
    put("rg", "remote-hand go remote-station");
    put("bl?", "remote-hand read burner-line-pressure");
    put("lp?", "remote-hand read line-pressure");
    put("w?", "read drum-level");
    put("mss", "checkman shut main-stop from stop-grating");
    put("mssr", "remote-hand shut main-stop from remote-station");
    put("bksr", "messenger shut bulkhead-stop from remote-station");
    put("b1x", "blowerman trip blower-1");
    put("b2x", "blowerman trip blower-2");
    put("bxr", "pumpman trip blower-1 blower-2 from remote-station");
    if (!messages.isEmpty()) {
      put("/", "report " + messages.get(0) + " to watch-engineer");
    }
  }

  private void put(String form, String... orders) {
    forms.put(form, List.of(orders));
  }

  /** Returns the orders of a short form; empty if it is none. */
  List<String> of(String typed) {
    return forms.getOrDefault(typed, List.of());
  }

  /**
   * Returns the card of short forms.
   *
   * @return lines such as {@code xx burnerman-superheater trip ...}
   */
  List<String> card() {
    return forms.entrySet().stream()
        .map(
            e ->
                e.getKey() + " ".repeat(6 - e.getKey().length()) + String.join(" + ", e.getValue()))
        .toList();
  }
}
