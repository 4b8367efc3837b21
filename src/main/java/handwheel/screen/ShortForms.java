package handwheel.screen;

import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The short forms: thing, number, letter of the verb ({@code s} shut, {@code x} out, stop or trip,
 * {@code ?} ask); local unless it ends in {@code r}. One fixed set for everybody; a form whose
 * orders this ship does not know is left out. Common practice, no source. Those that are needed
 * with no time to think stand on the card; the rest follow the same rule ({@link FormFamilies}).
 */
public final class ShortForms {
  private static final String HX = "burnerman-superheater trip fuel-trip-superheater";
  private static final String SX = "burnerman-saturated trip fuel-trip-saturated";
  private static final String REMOTE = " from remote-station";

  private final OrderText reader;
  private final List<Form> forms = new ArrayList<>();
  private final FormFamilies families;

  /**
   * One short form.
   *
   * @param code what is typed
   * @param name what it does, in a few words
   * @param orders the full orders it stands for
   */
  record Form(String code, String name, List<String> orders) {
    Form {
      orders = List.copyOf(orders);
    }
  }

  ShortForms(Ship ship, List<String> messages) {
    this.reader = new OrderText(ship, messages);
    fires();
    put("mss", "main stop shut", "checkman shut main-stop from stop-grating");
    put("mssr", "main stop shut", "remote-hand shut main-stop" + REMOTE);
    put("bksr", "bulkhead stop shut", "messenger shut bulkhead-stop" + REMOTE);
    put("b1x", "blower one trip", "blowerman trip blower-1");
    put("b2x", "blower two trip", "blowerman trip blower-2");
    put("bxr", "both blowers trip", "pumpman trip blower-1 blower-2" + REMOTE);
    put("gg", "everyone leave", "everyone leave");
    exit(ship).ifPresent(p -> put("ct", "count at the exit", "muster " + p.id()));
    put("rg", "send remote hand", "remote-hand go remote-station");
    put("bl?", "read burner lines", "read burner-line-pressure");
    put("bl?r", "ask burner lines", "remote-hand read burner-line-pressure");
    put("lp?r", "ask line pressure", "remote-hand read line-pressure");
    put("w?", "read drum level", "read drum-level");
    if (messages.size() == 1) {
      put("/", "one-breath report", "report " + messages.get(0) + " to watch-engineer");
    }
    this.families = new FormFamilies(ship, messages);
  }

  private void fires() {
    put("xx", "fires out", HX, SX);
    put("hx", "superheater out", HX);
    put("sx", "saturated out", SX);
    String both = "remote-hand trip fuel-trip-superheater fuel-trip-saturated";
    put("xxr", "fires out", both + REMOTE);
  }

  /** The count is at the first place outside that the ship's file names. */
  private static Optional<Place> exit(Ship ship) {
    return ship.places().stream().filter(p -> !p.isInside()).findFirst();
  }

  private void put(String code, String name, String... orders) {
    Form form = new Form(code, name, List.of(orders));
    if (areKnown(form.orders())) {
      forms.add(form);
    }
  }

  private boolean isKnown(String order) {
    return reader.read(order) instanceof OrderResult.Understood;
  }

  /** Returns the short form that is typed: one of the card, else one made by the rule. */
  Optional<Form> of(String typed) {
    Optional<Form> fixed = forms.stream().filter(f -> f.code().equals(typed)).findFirst();
    return fixed.or(() -> families.of(typed).filter(f -> areKnown(f.orders())));
  }

  private boolean areKnown(List<String> orders) {
    return orders.stream().allMatch(this::isKnown);
  }

  /** Returns the card of short forms. */
  List<Form> card() {
    return List.copyOf(forms);
  }
}
