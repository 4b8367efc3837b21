package handwheel.screen;

import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;

/** What happens to the face. */
sealed interface Event {
  <R> R accept(Visitor<R> visitor);

  /** One method for each kind of event. */
  interface Visitor<R> {
    R pressed(Pressed event);

    R tick(Tick event);

    R told(Told event);

    R advised(Advised event);

    R over(Over event);

    R resized(Resized event);

    R stoodStill(StoodStill event);
  }

  /** A key was pressed. */
  record Pressed(Key key) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pressed(this);
    }
  }

  /** Time has passed; this is what is seen now. */
  record Tick(Sighting sighting) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tick(this);
    }
  }

  /** Something reached the trainee's ears or eyes. */
  record Told(Entry entry, String sentence) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.told(this);
    }
  }

  /** This is what to say now. */
  record Advised(Optional<Advice> advice) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.advised(this);
    }
  }

  /** The drill is over and scored. */
  record Over(List<String> sheet) implements Event {
    public Over {
      sheet = List.copyOf(sheet);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.over(this);
    }
  }

  /** The screen has this size now. */
  record Resized(Size size) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.resized(this);
    }
  }

  /** The whole program stood still for a while, as when its process is stopped. */
  record StoodStill(long seconds) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stoodStill(this);
    }
  }
}
