package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.casualty.Upon;
import handwheel.ship.Gauge;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a witness waits for, such as {@code cue roar} or {@code read G below 5 psig}. */
final class UponReader implements NodeReader<Upon> {
  private static final Map<String, String> FORMS = forms();
  private static final Pattern READ = Pattern.compile("read +(\\S+) +(below|above) +(\\S.*?)");

  private final Scope scope;

  UponReader(Scope scope) {
    this.scope = scope;
  }

  private static Map<String, String> forms() {
    Map<String, String> forms = new LinkedHashMap<>();
    forms.put("cue", "cue CUE");
    forms.put("said", "said");
    forms.put("done", "done FITTING");
    forms.put("refused", "refused FITTING");
    forms.put("read", "read GAUGE below FIGURE");
    forms.put("arrived", "arrived WHO PLACE");
    forms.put("wrong", "wrong WHO");
    forms.put("counted", "counted");
    forms.put("passed", "passed REPORT");
    return forms;
  }

  @Override
  public Optional<Upon> read(YamlNode node, Findings findings) {
    return Scalars.scalar(node, "what the witness waits for", findings)
        .filter(s -> Scalars.text(Limits.ORDER_CHARS).read(s, findings).isPresent())
        .flatMap(s -> upon(s, findings));
  }

  private Optional<Upon> upon(YamlNode.Scalar scalar, Findings findings) {
    List<String> words = List.of(scalar.text().strip().split(" +"));
    Names names = scope.names();
    String second = words.size() > 1 ? words.get(1) : "";
    Matcher read = READ.matcher(scalar.text().strip());
    return switch (words.get(0) + " " + words.size()) {
      case "said 1" -> Optional.of(new Upon.Said());
      case "counted 1" -> Optional.of(new Upon.Counted());
      case "cue 2" -> one(Named.CUE, second, scalar, findings).map(Upon.CueNoticed::new);
      case "done 2" -> one(Named.FITTING, second, scalar, findings).map(Upon.Done::new);
      case "refused 2" -> one(Named.FITTING, second, scalar, findings).map(Upon.Refused::new);
      case "wrong 2" -> one(Named.WATCHSTANDER, second, scalar, findings).map(Upon.Wrong::new);
      case "passed 2" -> one(Named.REPORT, second, scalar, findings).map(Upon.Passed::new);
      case "arrived 3" -> {
        boolean isWho = names.isKnown(Named.WATCHSTANDER, scalar, second, findings);
        boolean isPlace = names.isKnown(Named.PLACE, scalar, words.get(2), findings);
        yield isWho && isPlace
            ? Optional.of(new Upon.Arrived(second, words.get(2)))
            : Optional.empty();
      }
      default ->
          read.matches() ? reading(read, scalar, findings) : notUnderstood(words, scalar, findings);
    };
  }

  private Optional<String> one(Named kind, String name, YamlNode.Scalar scalar, Findings findings) {
    return scope.names().isKnown(kind, scalar, name, findings)
        ? Optional.of(name)
        : Optional.empty();
  }

  private Optional<Upon> reading(Matcher read, YamlNode.Scalar scalar, Findings findings) {
    Optional<Gauge> gauge =
        one(Named.GAUGE, read.group(1), scalar, findings).flatMap(scope.ship()::gauge);
    YamlNode.Scalar figure =
        new YamlNode.Scalar(
            read.group(3),
            true,
            scalar.spotAt(scalar.text().lastIndexOf(read.group(3))),
            scalar.isOneLine(),
            scalar.spotAt(scalar.text().lastIndexOf(read.group(3))));
    boolean isUpper = read.group(2).equals(BoundReader.BELOW);
    return gauge.flatMap(
        g ->
            new ScaleBound(g)
                .read(figure, findings)
                .map(si -> new Upon.ReadingIs(g.id(), new Bound(isUpper, si))));
  }

  private static Optional<Upon> notUnderstood(
      List<String> words, YamlNode.Scalar scalar, Findings findings) {
    String form = FORMS.getOrDefault(words.get(0), "");
    String mend = form.isEmpty() ? Say.offer(words.get(0), FORMS.keySet()) : "";
    findings.add(
        FindingId.UPON_NOT_UNDERSTOOD,
        scalar.spot(),
        form.isEmpty()
            ? Say.quoted(scalar.text()) + " is nothing a witness can wait for"
            : Say.quoted(scalar.text()) + " stands here where `" + form + "` was expected",
        mend);
    return Optional.empty();
  }
}
