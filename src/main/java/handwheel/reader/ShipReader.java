package handwheel.reader;

import handwheel.plant.PlantNumbers;
import handwheel.plant.Port;
import handwheel.plant.Zone;
import handwheel.ship.Condition;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Place;
import handwheel.ship.Ship;
import handwheel.ship.StandingAct;
import handwheel.ship.Watchstander;
import handwheel.ship.Way;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads a ship from her folder: {@code ship.yaml} and the files it names. */
public final class ShipReader {
  /** Name of the file that describes the ship. */
  public static final String FILE = "ship.yaml";

  private static final List<String> ZONES =
      Arrays.stream(Zone.values()).map(z -> z.name().toLowerCase(Locale.ROOT)).toList();
  private static final List<String> PORTS = Arrays.stream(Port.values()).map(Port::id).toList();

  private static final Shape PLANT =
      Shape.of(
          "the plant",
          Key.must("design", Form.WORD, "what kind of plant").with(List.of("two-furnace")),
          Key.must("numbers", Form.FILE, "the file of its sizes"));

  private static final Shape PLACE =
      Shape.of(
          "a place",
          Key.must("id", Form.ID, "its id"),
          Key.must("name", Form.TEXT, "what people call it"),
          Key.must("zone", Form.WORD, "whose air is breathed there").with(ZONES),
          Key.must("height", Form.QUANTITY, "height above the floor plates"),
          Key.may("near", Form.IDS, "places whose jet reaches it"),
          Key.may("leak", Form.DOTTED_ID, "the plant's hole if something can break there"));

  private static final Shape WAY =
      Shape.of(
          "a way",
          Key.must("from", Form.ID, "one end"),
          Key.must("to", Form.ID, "the other end"),
          Key.must("flat", Form.QUANTITY, "level length"),
          Key.may("ladder", Form.QUANTITY, "length along the ladder"));

  private static final Shape CONDITION =
      Shape.of(
          "a condition",
          Key.must("id", Form.ID, "its id"),
          Key.must("file", Form.FILE, "its file"));

  private static final Shape SHIP =
      Shape.of(
          "a ship",
          Header.key(),
          Key.must("id", Form.ID, "her id"),
          Key.must("name", Form.TEXT, "her name"),
          Key.must("plant", Form.MAPPING, "her plant").with(PLANT),
          Key.must("places", Form.LIST, "where people can stand").with(PLACE),
          Key.must("ways", Form.LIST, "how they get about").with(WAY),
          Key.must("fittings", Form.LIST, "what can be worked").with(FittingReader.FITTING),
          Key.must("gauges", Form.LIST, "what can be read").with(CrewPartsReader.GAUGE),
          Key.must("watch", Form.LIST, "who is on watch").with(CrewPartsReader.WATCHSTANDER),
          Key.may("standing", Form.LIST, "what drilled men do").with(CrewPartsReader.STANDING),
          Key.must("conditions", Form.LIST, "initial conditions").with(CONDITION));

  private final ShipFiles files;
  private final Findings findings = new Findings();
  private final Sha256 sha256 = new Sha256();

  private ShipReader(ShipFiles files) {
    this.files = files;
  }

  /**
   * Reads a ship.
   *
   * @param files her folder
   * @return the ship, if no part of her is missing, and everything that is wrong
   */
  public static Read<Ship> read(ShipFiles files) {
    ShipReader reader = new ShipReader(files);
    Optional<Ship> ship =
        reader
            .tree(FILE)
            .flatMap(n -> MapNode.of(n, SHIP, reader.findings))
            .flatMap(reader::ship)
            .filter(s -> reader.findings.lost() == 0);
    return new Read<>(ship, reader.findings.byPlace());
  }

  private Optional<YamlNode> tree(String file) {
    Optional<byte[]> bytes = files.read(file);
    bytes.ifPresent(b -> sha256.file(file, b));
    return bytes.flatMap(b -> YamlText.compose(file, b, findings));
  }

  private Optional<Ship> ship(MapNode map) {
    Header.check(map, "ship");
    for (String list : List.of("places", "fittings", "gauges", "watch", "conditions")) {
      Names.distinct(map, list, "id");
    }
    List<String> placeIds = Names.declared(map, "places", "id");
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<PlantNumbers> numbers = map.get("plant", MapNode.reader(PLANT, this::numbers));
    List<Place> places =
        map.list("places", Limits.SHIP_ITEMS, MapNode.reader(PLACE, m -> place(m, placeIds)));
    List<Way> ways =
        map.list("ways", Limits.SHIP_ITEMS, MapNode.reader(WAY, m -> way(m, placeIds)));
    FittingReader fitting = new FittingReader(placeIds);
    List<Fitting> fittings =
        map.list(
            "fittings", Limits.SHIP_ITEMS, MapNode.reader(FittingReader.FITTING, fitting::read));
    CrewPartsReader crew = new CrewPartsReader(placeIds, Names.declared(map, "gauges", "id"));
    List<Gauge> gauges = crew.gauges(map);
    List<Watchstander> watch = crew.watch(map);
    List<Condition> conditions =
        map.list("conditions", Limits.SCRIPT_ITEMS, MapNode.reader(CONDITION, this::condition));
    if (id.isEmpty() || name.isEmpty() || numbers.isEmpty() || !hasSupervisor(map, watch)) {
      return Optional.empty();
    }
    Ship bare =
        new Ship(
            id.get(),
            name.get(),
            "",
            numbers.get(),
            places,
            ways,
            fittings,
            gauges,
            watch,
            List.of(),
            conditions);
    return Optional.of(with(bare, crew.standing(map, bare)));
  }

  private Ship with(Ship s, List<StandingAct> standing) {
    return new Ship(
        s.id(),
        s.name(),
        sha256.hex(),
        s.numbers(),
        s.places(),
        s.ways(),
        s.fittings(),
        s.gauges(),
        s.watch(),
        standing,
        s.conditions());
  }

  private boolean hasSupervisor(MapNode map, List<Watchstander> watch) {
    boolean isThere = watch.stream().anyMatch(w -> w.id().equals(Ship.SUPERVISOR));
    if (!isThere) {
      findings.add(
          FindingId.UNKNOWN_NAME,
          map.spot(),
          "no `" + Ship.SUPERVISOR + "` is on watch",
          "The trainee is the watchstander with that id.");
    }
    return isThere;
  }

  private Optional<PlantNumbers> numbers(MapNode map) {
    map.word("design");
    return file(map, "numbers")
        .flatMap(this::tree)
        .flatMap(n -> new PlantFileReader(findings).read(n));
  }

  private Optional<String> file(MapNode map, String key) {
    Optional<YamlNode.Scalar> name = map.get(key, (n, f) -> Scalars.scalar(n, "a file name", f));
    if (name.isPresent() && files.read(name.get().text()).isEmpty()) {
      findings.add(
          FindingId.MISSING_FILE,
          name.get().spot(),
          "the ship's folder has no file " + Say.quoted(name.get().text()),
          "Name a file beside " + FILE + ".");
      findings.lose();
      return Optional.empty();
    }
    return name.map(YamlNode.Scalar::text);
  }

  private Optional<Place> place(MapNode map, List<String> places) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<String> name = map.get("name", Scalars.text(Limits.NAME_CHARS));
    Optional<Zone> zone = map.word("zone").map(z -> Zone.valueOf(z.toUpperCase(Locale.ROOT)));
    Optional<Double> heightM = map.get("height", Measures.si(Wanted.LENGTH, -50, 50));
    List<String> near = map.get("near", Scalars.ids(Names.of("a place", places))).orElse(List.of());
    Optional<Port> leak =
        map.get("leak", Names.of("a port of the plant", PORTS)).flatMap(Port::ofId);
    if (id.isEmpty() || name.isEmpty() || zone.isEmpty() || heightM.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Place(id.get(), name.get(), zone.get(), heightM.get(), near, leak));
  }

  private Optional<Way> way(MapNode map, List<String> places) {
    NodeReader<String> place = Names.of("a place", places);
    Optional<String> from = map.get("from", place);
    Optional<String> to = map.get("to", place);
    Optional<Double> flatM = map.get("flat", Measures.si(Wanted.LENGTH, 0, 500));
    double ladderM = map.get("ladder", Measures.si(Wanted.LENGTH, 0, 100)).orElse(0.0);
    if (from.isEmpty() || to.isEmpty() || flatM.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Way(from.get(), to.get(), flatM.get(), ladderM));
  }

  private Optional<Condition> condition(MapNode map) {
    Optional<String> id = map.get("id", Scalars::id);
    Optional<YamlNode> tree = file(map, "file").flatMap(this::tree);
    return id.flatMap(i -> tree.flatMap(t -> new ConditionFileReader(findings).read(t, i)));
  }
}
