package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.casualty.Caution;
import handwheel.casualty.CrewState;
import handwheel.casualty.Start;
import handwheel.casualty.Variation;
import handwheel.ship.Condition;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads a casualty script. */
public final class ScriptReader {
  private static final Shape CAUTION =
      Shape.of(
          "a caution",
          Key.must("id", Form.ID, "its id"),
          Key.must("signal", Form.WORD, "the signal word")
              .with(List.of("DANGER", "WARNING", "CAUTION")),
          Key.must("hazard", Form.TEXT, "what it is"),
          Key.must("consequence", Form.TEXT, "what it does"),
          Key.must("avoid", Form.TEXT, "how to stay clear of it"),
          Key.may("before", Form.IDS, "steps it belongs to"));

  private static final Shape START =
      Shape.of(
          "the start",
          Key.must("condition", Form.ID, "the ship's initial condition"),
          Key.must("crew", Form.WORD, "how well drilled").with(List.of("green", "drilled")));

  private static final Shape VARIATION =
      Shape.of(
          "a variation",
          Key.must("from", Form.QUANTITY, "lower end"),
          Key.must("to", Form.QUANTITY, "upper end"));

  private static final Shape SCRIPT =
      Shape.of(
          "a script",
          Header.key(),
          Key.must("id", Form.ID, "its id"),
          Key.must("title", Form.TEXT, "a neutral title"),
          Key.must("family", Form.ID, "what casualties it belongs to"),
          Key.must("ship", Form.ID, "the ship"),
          Key.must("objective", Form.TEXT, "what the drill teaches"),
          Key.may("cautions", Form.LIST, "shown before the drill").with(CAUTION),
          Key.must("brief", Form.TEXT, "what the trainee is told"),
          Key.must("start", Form.MAPPING, "how it starts").with(START),
          Key.must("limit", Form.TIME, "longest run"),
          Key.may("vary", Form.NAMED, "what is drawn for each run").with(VARIATION),
          Key.must("phases", Form.LIST, "states of the casualty").with(PhaseReader.PHASE),
          Key.must("response", Form.LIST, "the graded steps").with(StepReader.STEP),
          Key.may("never", Form.LIST, "forbidden acts").with(NeverReader.NEVER),
          Key.may("outcome", Form.LIST, "what outcomes cost").with(NeverReader.OUTCOME),
          Key.must("pass", Form.POINTS, "points needed to pass"),
          Key.must("witness", Form.LIST, "a player that does it right").with(WitnessReader.LINE));

  private final Ship ship;
  private final String sha256;
  private final Findings findings;

  private ScriptReader(Ship ship, String sha256, Findings findings) {
    this.ship = ship;
    this.sha256 = sha256;
    this.findings = findings;
  }

  /**
   * Tells which ship a script is for, before the ship is read.
   *
   * @param bytes the script
   * @return id of the ship, or empty if the script does not say
   */
  public static Optional<String> shipOf(byte[] bytes) {
    return YamlText.compose("", bytes, new Findings())
        .flatMap(n -> n.scalarAt("ship"))
        .map(YamlNode.Scalar::text);
  }

  /**
   * Reads a script.
   *
   * @param name its name for people
   * @param bytes its content
   * @param ship the ship it is for
   * @return the script, if no part of it is missing, and everything that is wrong
   */
  public static Read<Casualty> read(String name, byte[] bytes, Ship ship) {
    Findings findings = new Findings();
    ScriptReader reader = new ScriptReader(ship, Sha256.of(bytes), findings);
    Optional<Casualty> casualty =
        YamlText.compose(name, bytes, findings)
            .flatMap(n -> MapNode.of(n, SCRIPT, findings))
            .flatMap(reader::script)
            .filter(c -> findings.lost() == 0);
    return new Read<>(casualty, findings.byPlace());
  }

  private Optional<Casualty> script(MapNode map) {
    Header.check(map, "script");
    for (String list : List.of("cautions", "phases", "response", "never")) {
      Names.distinct(map, list, "id");
    }
    Lexicon lexicon = Lexicon.of(map, ship);
    map.get("ship", Names.of("the ship's id", List.of(ship.id())));
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> title = map.get("title", Scalars.text(Limits.NAME_CHARS));
    Optional<String> family = map.get("family", Scalars::id);
    Optional<String> objective = map.get("objective", Scalars.text(Limits.TEXT_CHARS));
    Optional<String> brief = map.get("brief", Scalars.text(Limits.TEXT_CHARS));
    Optional<Start> start = map.get("start", MapNode.reader(START, this::start));
    Optional<Long> limit = map.get("limit", Measures.ticks(1));
    Optional<Integer> pass = map.get("pass", ScriptReader::points);
    Parts parts = new Parts(map, lexicon);
    Casualty c =
        new Casualty(
            id.orElse(""),
            title.orElse(""),
            family.orElse(""),
            ship.id(),
            objective.orElse(""),
            sha256,
            parts.cautions(),
            brief.orElse(""),
            start.orElse(new Start("", CrewState.GREEN)),
            limit.orElse(0L),
            map.get("vary", this::variations).orElse(List.of()),
            parts.phases(),
            parts.response(),
            parts.nevers(),
            parts.outcomes(),
            pass.orElse(0),
            parts.witness());
    new ScriptChecks(c, map, findings).run();
    return Optional.of(c);
  }

  private Optional<Start> start(MapNode map) {
    List<String> conditions = ship.conditions().stream().map(Condition::id).toList();
    Optional<String> condition = map.get("condition", Names.of("a condition", conditions));
    Optional<CrewState> crew =
        map.word("crew").map(w -> CrewState.valueOf(w.toUpperCase(Locale.ROOT)));
    return condition.flatMap(c -> crew.map(w -> new Start(c, w)));
  }

  private Optional<List<Variation>> variations(YamlNode node, Findings f) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of names and ranges", f);
      return Optional.empty();
    }
    List<Variation> variations = new ArrayList<>();
    for (YamlNode.Entry e : mapping.entries()) {
      Optional<Variation> v =
          Scalars.isId(e.key(), f)
              ? MapNode.of(e.value(), VARIATION, f).flatMap(m -> Variations.read(e.key().text(), m))
              : Optional.empty();
      v.ifPresentOrElse(variations::add, f::lose);
    }
    return Optional.of(variations);
  }

  private static Optional<Integer> points(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> scalar = Scalars.scalar(node, "such as `80 points`", findings);
    return scalar.flatMap(
        s -> Scalars.whole(s, s.text().replaceFirst(" points$", ""), 1, 100, findings));
  }

  /** The lists of a script. */
  private record Parts(MapNode map, Lexicon lexicon) {
    List<Caution> cautions() {
      return map.list("cautions", Limits.SCRIPT_ITEMS, MapNode.reader(CAUTION, this::caution));
    }

    private Optional<Caution> caution(MapNode m) {
      Optional<String> id = m.get("id", Scalars::id);
      Optional<String> signal = m.word("signal");
      Optional<String> hazard = m.get("hazard", Scalars.text(Limits.TEXT_CHARS));
      Optional<String> consequence = m.get("consequence", Scalars.text(Limits.TEXT_CHARS));
      Optional<String> avoid = m.get("avoid", Scalars.text(Limits.TEXT_CHARS));
      List<String> before =
          m.get("before", Scalars.ids(Names.of("a step of the response", lexicon.steps())))
              .orElse(List.of());
      boolean isWhole = id.isPresent() && signal.isPresent() && hazard.isPresent();
      if (!isWhole || consequence.isEmpty() || avoid.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new Caution(
              id.get(),
              signal.get(),
              hazard.get(),
              consequence.get(),
              avoid.get(),
              before,
              m.spot()));
    }

    List<handwheel.casualty.Phase> phases() {
      PhaseReader reader = new PhaseReader(lexicon);
      return list("phases", PhaseReader.PHASE, reader::read);
    }

    List<handwheel.casualty.Step> response() {
      return list("response", StepReader.STEP, new StepReader(lexicon)::read);
    }

    List<handwheel.casualty.Never> nevers() {
      return list("never", NeverReader.NEVER, new NeverReader(lexicon)::never);
    }

    List<handwheel.casualty.OutcomeRule> outcomes() {
      return list("outcome", NeverReader.OUTCOME, NeverReader::outcome);
    }

    List<handwheel.casualty.WitnessLine> witness() {
      return list("witness", WitnessReader.LINE, new WitnessReader(lexicon)::read);
    }

    private <T> List<T> list(String key, Shape shape, MapNode.MapReader<T> reader) {
      return map.list(key, Limits.SCRIPT_ITEMS, MapNode.reader(shape, reader));
    }
  }
}
