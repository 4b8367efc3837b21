package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts names where a text has ids. What stands between backticks is an order and stays. */
final class Plain {
  private static final Pattern TOKEN = Pattern.compile("`[^`]*`|[a-z0-9]+(?:-[a-z0-9]+)+");

  private final SortedMap<String, String> names = new TreeMap<>();
  private final SortedMap<String, String> steps = new TreeMap<>();

  Plain(Ship ship, Casualty casualty, StepWords words) {
    for (Step step : casualty.response()) {
      steps.put(step.id(), words.act(step));
    }
    names.putAll(steps);
    ship.fittings().stream().forEach(f -> put(f));
    ship.gauges().stream().forEach(g -> put(g));
    ship.places().stream().forEach(p -> put(p));
    ship.watch().stream().forEach(w -> put(w));
    casualty.messages().forEach(m -> names.put(m, m.replace('-', ' ')));
  }

  private void put(Fitting f) {
    names.put(f.id(), f.name());
  }

  private void put(Gauge g) {
    names.put(g.id(), g.name());
  }

  private void put(Place p) {
    names.put(p.id(), p.name());
  }

  private void put(Watchstander w) {
    names.put(w.id(), w.title());
  }

  String text(String text) {
    Matcher m = TOKEN.matcher(text);
    StringBuilder out = new StringBuilder();
    while (m.find()) {
      m.appendReplacement(out, Matcher.quoteReplacement(word(m.group())));
    }
    m.appendTail(out);
    return out.toString();
  }

  private String word(String token) {
    if (!token.startsWith("`")) {
      return Optional.ofNullable(names.get(token)).orElse(token);
    }
    String step = steps.get(token.substring(1, token.length() - 1));
    return step == null ? token : "\"" + step + "\"";
  }
}
