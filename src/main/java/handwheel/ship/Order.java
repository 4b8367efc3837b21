package handwheel.ship;

import java.util.List;
import java.util.Optional;

/**
 * An order in its canonical form: ids only, the same on every screen, in records, witnesses and
 * files of orders. {@link #text()} prints what {@link OrderText} reads.
 */
public sealed interface Order {
  /**
   * Returns the canonical text.
   *
   * @return one line
   */
  String text();

  /**
   * Calls the visitor's method for this kind of order.
   *
   * @param <R> what the visitor returns
   * @param visitor the visitor
   * @return what the visitor returned
   */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of order.
   *
   * @param <R> what the methods return
   */
  interface Visitor<R> {
    /**
     * Handles work on fittings.
     *
     * @param order the order
     * @return the result
     */
    R work(Work order);

    /**
     * Handles being sent.
     *
     * @param order the order
     * @return the result
     */
    R go(Go order);

    /**
     * Handles being told to look.
     *
     * @param order the order
     * @return the result
     */
    R look(Look order);

    /**
     * Handles the reading of a gauge.
     *
     * @param order the order
     * @return the result
     */
    R read(Read order);

    /**
     * Handles the passing of a report.
     *
     * @param order the order
     * @return the result
     */
    R report(Report order);

    /**
     * Handles the clearing of the space.
     *
     * @param order the order
     * @return the result
     */
    R everyoneLeave(EveryoneLeave order);

    /**
     * Handles the head count.
     *
     * @param order the order
     * @return the result
     */
    R muster(Muster order);

    /**
     * Handles the calling back of an order.
     *
     * @param order the order
     * @return the result
     */
    R belay(Belay order);
  }

  /**
   * {@code WHO VERB FITTING... [to SETTING] [from PLACE]}.
   *
   * @param who station id
   * @param verb what is done
   * @param fittings ids of fittings, or of one gauge to be held
   * @param setting what to set it to
   * @param from id of the place to work it from; empty: the nearest control
   */
  record Work(
      String who,
      Verb verb,
      List<String> fittings,
      Optional<Setting> setting,
      Optional<String> from)
      implements Order {
    /**
     * Copies the list.
     *
     * @param who station id
     * @param verb what is done
     * @param fittings ids of fittings, or of one gauge to be held
     * @param setting what to set it to
     * @param from id of the place to work it from; empty: the nearest control
     */
    public Work {
      fittings = List.copyOf(fittings);
    }

    @Override
    public String text() {
      String to = setting.map(s -> " to " + s.text()).orElse("");
      String at = from.map(p -> " from " + p).orElse("");
      return who + " " + verb.word() + " " + String.join(" ", fittings) + to + at;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.work(this);
    }
  }

  /**
   * {@code WHO go PLACE}.
   *
   * @param who station id
   * @param place id of the place
   */
  record Go(String who, String place) implements Order {
    @Override
    public String text() {
      return who + " go " + place;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.go(this);
    }
  }

  /**
   * {@code WHO look PLACE}: goes there and tells what he sees.
   *
   * @param who station id
   * @param place id of the place
   */
  record Look(String who, String place) implements Order {
    @Override
    public String text() {
      return who + " look " + place;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.look(this);
    }
  }

  /**
   * {@code [WHO] read GAUGE}; nobody named: the supervisor reads it himself.
   *
   * @param who station id
   * @param gauge id of the gauge
   */
  record Read(Optional<String> who, String gauge) implements Order {
    @Override
    public String text() {
      return who.map(w -> w + " ").orElse("") + "read " + gauge;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.read(this);
    }
  }

  /**
   * {@code report MESSAGE to WHO}.
   *
   * @param message id of the message
   * @param to station id
   */
  record Report(String message, String to) implements Order {
    @Override
    public String text() {
      return "report " + message + " to " + to;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.report(this);
    }
  }

  /** {@code everyone leave}. */
  record EveryoneLeave() implements Order {
    @Override
    public String text() {
      return "everyone leave";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.everyoneLeave(this);
    }
  }

  /**
   * {@code muster PLACE}: all who are out come to the place and are counted by name.
   *
   * @param place id of the place
   */
  record Muster(String place) implements Order {
    @Override
    public String text() {
      return "muster " + place;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.muster(this);
    }
  }

  /**
   * {@code belay WHO}: he stops what he was last told.
   *
   * @param who station id
   */
  record Belay(String who) implements Order {
    @Override
    public String text() {
      return "belay " + who;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.belay(this);
    }
  }
}
