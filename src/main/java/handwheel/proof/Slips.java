package handwheel.proof;

import handwheel.casualty.Step;
import handwheel.drill.Engine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Slips of time and order: an order left out, late, early, swapped, said twice. */
final class Slips {
  /** How the name of a mutant begins that leaves an order out. */
  static final String DROP = "drop";

  private static final List<Integer> DELAYS_S = List.of(10, 30, 120);
  private static final long AGAIN_TICKS = 30L * Engine.TICKS_PER_S;

  private final Base base;
  private final List<Mutant> mutants = new ArrayList<>();

  private Slips(Base base) {
    this.base = base;
  }

  static List<Mutant> of(Base base) {
    Slips slips = new Slips(base);
    for (int i = 0; i < base.orders(); i++) {
      if (!Uncaught.isBelay(base, i)) {
        slips.all(i);
      }
    }
    return slips.mutants;
  }

  private void all(int at) {
    dropped(at);
    delayed(at);
    repeated(at);
    if (at > 0 && !Uncaught.isBelay(base, at - 1)) {
      advanced(at);
      swapped(at);
    }
  }

  private void dropped(int at) {
    Mutant.Expected expected =
        base.served(at).isEmpty() ? Mutant.Expected.ANY : Mutant.Expected.CHARGED;
    add(DROP, at, expected, (i, say) -> i == at ? List.of() : said(say));
  }

  private void delayed(int at) {
    for (int seconds : DELAYS_S) {
      long later = (long) seconds * Engine.TICKS_PER_S;
      add(
          "delay by " + seconds + " s",
          at,
          Mutant.Expected.ANY,
          (i, say) -> i == at ? List.of(new Alteration.Saying(later, say)) : said(say));
    }
  }

  private void repeated(int at) {
    add(
        "repeat",
        at,
        Mutant.Expected.FREE,
        (i, say) ->
            i == at
                ? List.of(new Alteration.Saying(0, say), new Alteration.Saying(AGAIN_TICKS, say))
                : said(say));
  }

  /** Says an order before all others. */
  private void advanced(int at) {
    List<Integer> before =
        IntStream.range(0, at).filter(b -> base.mustFollow(at, b)).boxed().toList();
    String early = base.say(at);
    Mutant.Expected expected =
        before.isEmpty() || !base.isByOrder(at) ? Mutant.Expected.ANY : Mutant.Expected.CHARGED;
    add(
        "advance",
        at,
        expected,
        before,
        (i, say) ->
            i == 0
                ? List.of(new Alteration.Saying(0, early), new Alteration.Saying(1, say))
                : i == at ? List.of() : said(say));
  }

  private void swapped(int at) {
    String first = base.say(at - 1);
    String second = base.say(at);
    Mutant.Expected expected =
        base.mustFollow(at, at - 1) && base.isByOrder(at)
            ? Mutant.Expected.CHARGED
            : isOneVolley(at) ? Mutant.Expected.FREE : Mutant.Expected.ANY;
    add(
        "swap with the one before",
        at,
        expected,
        List.of(at - 1),
        (i, say) -> i == at - 1 ? said(second) : i == at ? said(first) : said(say));
  }

  /** Said one right behind the other, on nothing but each other. */
  private boolean isOneVolley(int at) {
    long gap = base.run().orders().get(at).t() - base.run().orders().get(at - 1).t();
    return gap <= 2L * Engine.TICKS_PER_S && servesSomething(at) && servesSomething(at - 1);
  }

  private boolean servesSomething(int at) {
    return !base.served(at).isEmpty();
  }

  private void add(String what, int at, Mutant.Expected expected, Alteration alteration) {
    add(what, at, expected, List.of(), alteration);
  }

  /** Where two orders are in the wrong order, either of them may be charged. */
  private void add(
      String what, int at, Mutant.Expected expected, List<Integer> others, Alteration alteration) {
    String name = what + " `" + base.say(at) + "`";
    List<String> acts =
        Stream.concat(Stream.of(at), others.stream())
            .flatMap(i -> base.served(i).stream())
            .map(Step::id)
            .toList();
    mutants.add(new Mutant(name, expected, acts, base.spot(at), base.altered(name, alteration)));
  }

  static List<Alteration.Saying> said(String say) {
    return List.of(new Alteration.Saying(0, say));
  }
}
