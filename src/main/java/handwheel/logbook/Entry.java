package handwheel.logbook;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** One line of a run. Ticks are 0.05 s of simulated time. */
public sealed interface Entry {
  /** What {@code hurt} says where a man can stand for ever, ticks. */
  long NO_HURT_TICKS = 1_000_000;

  /**
   * Returns the word that says what kind of line it is.
   *
   * @return the value of {@code k}
   */
  String kind();

  /**
   * Returns when it was.
   *
   * @return tick; 0 for lines from before the first tick and for the score
   */
  default long t() {
    return 0;
  }

  /**
   * One charge of a score.
   *
   * @param points points lost
   * @param type class of the error, lower-kebab
   * @param step id of the step or rule
   * @param tick when
   * @param why what happened and what should have, for people
   * @param basis ground of the charge
   */
  record Loss(int points, String type, String step, long tick, String why, String basis) {}

  /**
   * The first line of the chain: what fixes the run, apart from the inputs.
   *
   * @param v version of the record form
   * @param engine version of the program
   * @param ship id of the ship
   * @param shipSha hash of the ship's files
   * @param script id of the script
   * @param scriptSha hash of the script
   * @param seed seed of the run
   * @param mode {@code learn}, {@code practice} or {@code scored}
   */
  record Run(
      int v,
      String engine,
      String ship,
      String shipSha,
      String script,
      String scriptSha,
      long seed,
      String mode)
      implements Entry {
    @Override
    public String kind() {
      return "run";
    }

    /**
     * Returns whether the run counts before a board.
     *
     * @return true of a scored run, sealed or not
     */
    public boolean isScored() {
      return mode.equals("scored") || mode.equals("sealed");
    }
  }

  /**
   * A variation's draw.
   *
   * @param name name of the variation
   * @param nano what was drawn, SI x 1e9, rounded down
   */
  record Drawn(String name, long nano) implements Entry {
    @Override
    public String kind() {
      return "drawn";
    }
  }

  /**
   * A caution was shown and acknowledged before the start.
   *
   * @param id id of the caution
   */
  record CautionShown(String id) implements Entry {
    @Override
    public String kind() {
      return "caution";
    }
  }

  /**
   * The trainee said an order. An input.
   *
   * @param t tick of Enter
   * @param from tick of its first key
   * @param n number of the order, from 1
   * @param say canonical text
   * @param need ticks the man needs to walk there and do it; -1 where nothing is walked or worked
   * @param hurt ticks until a man standing there is hurt at the rate of now, at most {@link
   *     #NO_HURT_TICKS}
   * @param jet whether the place is in a jet of steam now
   */
  record OrderSaid(long t, long from, int n, String say, long need, long hurt, boolean jet)
      implements Entry {
    @Override
    public String kind() {
      return "order";
    }
  }

  /**
   * Somebody inside could have done what a man outside was told to do.
   *
   * @param t tick
   * @param n number of the order
   * @param who id of the man who is soonest there
   * @param need ticks he needs to walk there and do it
   * @param hurt ticks until a man standing there is hurt at the rate of now, at most {@link
   *     #NO_HURT_TICKS}
   */
  record Inside(long t, int n, String who, long need, long hurt) implements Entry {
    @Override
    public String kind() {
      return "inside";
    }
  }

  /**
   * The trainee acknowledged what he heard. An input.
   *
   * @param t tick
   */
  record Acknowledged(long t) implements Entry {
    @Override
    public String kind() {
      return "heard";
    }
  }

  /**
   * The trainee stopped the drill for a while. An input.
   *
   * @param t tick
   */
  record Stopped(long t) implements Entry {
    @Override
    public String kind() {
      return "stop";
    }
  }

  /**
   * The drill went on. An input.
   *
   * @param t tick
   */
  record Resumed(long t) implements Entry {
    @Override
    public String kind() {
      return "resume";
    }
  }

  /**
   * The trainee or the leader ended the drill before its time. An input.
   *
   * @param t tick
   * @param why short reason
   */
  record Ended(long t, String why) implements Entry {
    @Override
    public String kind() {
      return "ended";
    }
  }

  /**
   * A man repeated an order back.
   *
   * @param t tick
   * @param n number of the order
   * @param who station id
   * @param say the order as he repeated it; another text than was said is a wrong repeat-back
   */
  record Repeated(long t, int n, String who, String say) implements Entry {
    @Override
    public String kind() {
      return "repeat";
    }
  }

  /**
   * A man cannot or will not do it.
   *
   * @param t tick
   * @param n number of the order
   * @param who station id
   * @param fitting id of the fitting or place it was about; may be empty
   * @param why his reason, as he says it
   * @param fault whether crew or gear is the cause, not the order
   */
  record Refused(long t, int n, String who, String fitting, String why, boolean fault)
      implements Entry {
    @Override
    public String kind() {
      return "refused";
    }
  }

  /**
   * A hand is on a fitting and it begins to move.
   *
   * @param t tick
   * @param n number of the order; 0 unordered
   * @param who station id
   * @param fitting id of the fitting
   * @param at id of the place
   */
  record Began(long t, int n, String who, String fitting, String at) implements Entry {
    @Override
    public String kind() {
      return "began";
    }
  }

  /**
   * A fitting has reached where it was going.
   *
   * @param t tick
   * @param n number of the order; 0 unordered
   * @param who station id
   * @param fitting id of the fitting
   * @param at id of the place
   * @param pos position, thousandths of the first port's SI value
   */
  record Moved(long t, int n, String who, String fitting, String at, int pos) implements Entry {
    @Override
    public String kind() {
      return "moved";
    }
  }

  /**
   * A person arrived at a place.
   *
   * @param t tick
   * @param who station id
   * @param place id of the place
   */
  record Arrived(long t, String who, String place) implements Entry {
    @Override
    public String kind() {
      return "arrived";
    }
  }

  /**
   * A gauge was read, or its reading heard.
   *
   * @param t tick
   * @param n number of the order
   * @param who station id
   * @param gauge id of the gauge
   * @param milli thousandths of the gauge's unit
   */
  record Reading(long t, int n, String who, String gauge, long milli) implements Entry {
    @Override
    public String kind() {
      return "read";
    }
  }

  /**
   * A man told what he sees at a place.
   *
   * @param t tick
   * @param n number of the order
   * @param who station id
   * @param place id of the place
   * @param say what he says
   */
  record Looked(long t, int n, String who, String place, String say) implements Entry {
    @Override
    public String kind() {
      return "looked";
    }
  }

  /**
   * A report was passed.
   *
   * @param t tick
   * @param n number of the order
   * @param message id of the report
   * @param to station id
   */
  record Passed(long t, int n, String message, String to) implements Entry {
    @Override
    public String kind() {
      return "passed";
    }
  }

  /**
   * The watch was counted by name.
   *
   * @param t tick
   * @param n number of the order
   * @param present how many stood there
   * @param of how many there should be
   * @param missing station ids of the missing, separated by blanks
   */
  record Counted(long t, int n, int present, int of, String missing) implements Entry {
    @Override
    public String kind() {
      return "counted";
    }
  }

  /**
   * A cue was given.
   *
   * @param t tick
   * @param id id of the cue
   * @param noticed whether it reached the trainee where he stood
   */
  record CueGiven(long t, String id, boolean noticed) implements Entry {
    @Override
    public String kind() {
      return "cue";
    }
  }

  /**
   * The casualty entered a phase.
   *
   * @param t tick
   * @param id id of the phase
   */
  record PhaseEntered(long t, String id) implements Entry {
    @Override
    public String kind() {
      return "phase";
    }
  }

  /**
   * A person's state changed.
   *
   * @param t tick
   * @param who station id
   * @param is {@code hurt}, {@code down}, {@code left} (on his own)
   * @param dose heat dose, thousandths of incapacitation
   */
  record Person(long t, String who, String is, long dose) implements Entry {
    @Override
    public String kind() {
      return "person";
    }
  }

  /**
   * Something happened in the plant by itself.
   *
   * @param t tick
   * @param what event in words
   */
  record PlantEvent(long t, String what) implements Entry {
    @Override
    public String kind() {
      return "plant";
    }
  }

  /**
   * A forbidden act began, or something came to pass that must not.
   *
   * @param t tick
   * @param n number of the order; 0 unordered, and of what came to pass
   * @param never id of the rule or outcome
   * @param what the act or outcome in words
   * @param milli the reading that forbids it, thousandths of SI; 0 where there is none
   */
  record Broke(long t, int n, String never, String what, long milli) implements Entry {
    @Override
    public String kind() {
      return "broke";
    }
  }

  /**
   * The digest of the whole state and what the gauges show.
   *
   * @param t tick
   * @param sha SHA-256 of the state's raw bits, lower-case hex
   * @param gauge the gauges whose printed figure changed, by id, thousandths of the unit
   */
  record State(long t, String sha, SortedMap<String, Long> gauge) implements Entry {
    /**
     * Copies the map.
     *
     * @param t tick
     * @param sha SHA-256 of the state's raw bits, lower-case hex
     * @param gauge the gauges whose printed figure changed, by id, thousandths of the unit
     */
    public State {
      gauge = Collections.unmodifiableSortedMap(new TreeMap<>(gauge));
    }

    @Override
    public String kind() {
      return "state";
    }
  }

  /**
   * The score; its {@code h} is the run's digest.
   *
   * @param points 0 to 100
   * @param verdict {@code pass} or {@code fail}
   * @param lost every charge
   */
  record Score(int points, String verdict, List<Loss> lost) implements Entry {
    /**
     * Copies the list.
     *
     * @param points 0 to 100
     * @param verdict {@code pass} or {@code fail}
     * @param lost every charge
     */
    public Score {
      lost = List.copyOf(lost);
    }

    @Override
    public String kind() {
      return "score";
    }
  }
}
