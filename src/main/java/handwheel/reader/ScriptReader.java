package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.casualty.CrewState;
import handwheel.casualty.Phase;
import handwheel.casualty.Start;
import handwheel.casualty.Step;
import handwheel.casualty.Variation;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads casualty scripts. */
public final class ScriptReader {
  private static final Shape START =
      Shape.of(
          "the start",
          Key.must("condition", Form.ID, "the ship's initial condition"),
          Key.must("crew", Form.WORD, "how well the watch is drilled")
              .with(List.of("green", "drilled", "drawn")));

  static final Shape SHAPE =
      Shape.of(
          "a script",
          Header.key("script"),
          Key.must("id", Form.ID, "the script's id"),
          Key.must("title", Form.TEXT, "a neutral title that does not give the answer away"),
          Key.must("family", Form.ID, "what casualties it belongs to"),
          Key.must("ship", Form.ID, "the ship's id"),
          Key.must("objective", Form.TEXT, "what the drill teaches"),
          Key.may("cautions", Form.LIST, "shown before the drill starts").with(CautionReader.SHAPE),
          Key.must("brief", Form.TEXT, "what the trainee is told"),
          Key.must("start", Form.MAPPING, "how it starts").with(START),
          Key.must("limit", Form.TIME, "the longest run"),
          Key.may("vary", Form.NAMED, "what is drawn for each run").with(VaryReader.SHAPES),
          Key.must("phases", Form.LIST, "the states of the casualty, the first is the start")
              .with(PhaseReader.SHAPE),
          Key.must("response", Form.LIST, "the graded steps").with(StepReader.SHAPES),
          Key.may("never", Form.LIST, "the forbidden acts").with(NeverReader.SHAPES),
          Key.may("outcome", Form.LIST, "what outcomes cost").with(OutcomeReader.SHAPES),
          Key.must("pass", Form.POINTS, "the points needed to pass"),
          Key.may("witness", Form.LIST, "a player that does it right").with(WitnessReader.SHAPE),
          Key.may("questions", Form.LIST, "asked after the drill, with model answers")
              .with(QuestionReader.SHAPE));

  private static final int ALL_POINTS = 100;
  private static final String POINTS = " points";

  private final String sha256;
  private final Ship ship;
  private final Findings findings;
  private final Names names;

  private ScriptReader(String sha256, Ship ship, Names names, Findings findings) {
    this.sha256 = sha256;
    this.ship = ship;
    this.names = names;
    this.findings = findings;
  }

  /**
   * Tells which ship a script is written for, before that ship is there.
   *
   * @param name what a person knows the script by
   * @param bytes the script
   * @return the ship, or what stands in the way
   */
  public static Read<NamedShip> shipOf(String name, byte[] bytes) {
    Findings findings = new Findings();
    Optional<NamedShip> ship =
        YamlText.compose(name, bytes, findings)
            .flatMap(root -> Header.root(root, SHAPE, "script", findings))
            .flatMap(
                map ->
                    map.get(
                        "ship", (n, f) -> Scalars.id(n, f).map(i -> new NamedShip(i, n.spot()))));
    return new Read<>(ship, ship.isPresent() ? List.of() : findings.byPlace());
  }

  /**
   * Reads a script.
   *
   * @param name what a person knows the script by; findings name it
   * @param bytes the script
   * @param ship the ship it is written for
   * @return the casualty if every part could be read, and everything that was found
   */
  public static Read<Casualty> read(String name, byte[] bytes, Ship ship) {
    Findings findings = new Findings();
    Optional<Casualty> casualty =
        YamlText.compose(name, bytes, findings)
            .flatMap(
                root ->
                    Header.root(root, SHAPE, "script", findings)
                        .map(
                            map ->
                                new ScriptReader(
                                        Sha256.of(bytes),
                                        ship,
                                        ScriptNames.of(root, ship, findings),
                                        findings)
                                    .casualty(map)));
    return Read.of(casualty, findings);
  }

  private Casualty casualty(MapNode map) {
    List<Variation> vary = map.get("vary", VaryReader::read).orElse(List.of());
    AmountReader amounts = new AmountReader(vary, names);
    long limitTicks = map.get("limit", Measures.ticks(1)).orElse(Long.MAX_VALUE);
    OrderText orders = new OrderText(ship, names.ids(Named.REPORT));
    Scope scope = new Scope(ship, names, orders, amounts, limitTicks);
    ScriptChecks checks = new ScriptChecks(map, names);
    int lostBefore = findings.lost();
    List<Phase> phases = map.list("phases", Limits.SCRIPT_ITEMS, new PhaseReader(scope)::read);
    checks.phases(phases, findings.lost() == lostBefore);
    lostBefore = findings.lost();
    List<Step> steps = map.list("response", Limits.SCRIPT_ITEMS, new StepReader(scope)::read);
    checks.steps(steps, vary, findings.lost() == lostBefore);
    Casualty casualty = assembled(map, scope, new Parts(vary, phases, steps));
    checks.whole(casualty, amounts);
    return casualty;
  }

  private Casualty assembled(MapNode map, Scope scope, Parts parts) {
    NodeReader<String> text = Scalars.text(Limits.TEXT_CHARS);
    NeverReader nevers = new NeverReader(scope);
    return new Casualty(
        map.get("id", Scalars::id).orElse(""),
        map.get("title", Scalars.text(Limits.NAME_CHARS)).orElse(""),
        map.get("family", Scalars::id).orElse(""),
        map.get("ship", this::ship).orElse(""),
        map.get("objective", text).orElse(""),
        sha256,
        map.list("cautions", Limits.SCRIPT_ITEMS, new CautionReader(names)::read),
        map.get("brief", text).orElse(""),
        map.get("start", MapNode.reader(START, this::start)).orElse(new Start("", CrewState.GREEN)),
        scope.limitTicks(),
        parts.vary(),
        parts.phases(),
        parts.steps(),
        map.list("never", Limits.SCRIPT_ITEMS, nevers::read),
        map.list("outcome", Limits.SCRIPT_ITEMS, new OutcomeReader(scope)::read),
        map.get("pass", ScriptReader::points).orElse(ALL_POINTS),
        map.list("witness", Limits.SCRIPT_ITEMS, new WitnessReader(scope)::read),
        map.list("questions", Limits.SCRIPT_ITEMS, QuestionReader::read),
        List.of());
  }

  private Optional<String> ship(YamlNode node, Findings sink) {
    Optional<String> id = Scalars.id(node, sink);
    if (id.filter(i -> !i.equals(ship.id())).isPresent()) {
      sink.add(
          FindingId.OTHER_SHIP,
          node.spot(),
          "the script is written for "
              + Say.quoted(id.orElseThrow())
              + " and is read with "
              + Say.quoted(ship.id()),
          "");
      return Optional.empty();
    }
    return id;
  }

  private Optional<Start> start(MapNode map) {
    Optional<String> condition = map.get("condition", names.one(Named.CONDITION));
    Optional<CrewState> crew =
        map.word("crew").map(w -> CrewState.valueOf(w.toUpperCase(Locale.ROOT)));
    return condition.flatMap(c -> crew.map(k -> new Start(c, k)));
  }

  private static Optional<Integer> points(YamlNode node, Findings sink) {
    return Scalars.scalar(node, "a text such as `80 points`", sink).flatMap(s -> points(s, sink));
  }

  private static Optional<Integer> points(YamlNode.Scalar scalar, Findings sink) {
    String text = scalar.text();
    if (!text.endsWith(POINTS)) {
      sink.add(
          FindingId.NOT_POINTS,
          scalar.spot(),
          Say.quoted(text) + " stands here where points were expected",
          "Write such as `80 points`.");
      return Optional.empty();
    }
    String figure = text.substring(0, text.length() - POINTS.length());
    return Scalars.whole(scalar, figure, 1, ALL_POINTS, sink);
  }

  /** Parts of a script that are read before the others. */
  private record Parts(List<Variation> vary, List<Phase> phases, List<Step> steps) {}

  /**
   * Returns the words a script has for what fails.
   *
   * @return every word behind {@code fault:}, in the order in which they are offered
   */
  public static List<String> faultWords() {
    return List.copyOf(FaultReader.SHAPES.keySet());
  }
}
