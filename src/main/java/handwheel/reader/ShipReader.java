package handwheel.reader;

import handwheel.plant.PlantNumbers;
import handwheel.plant.StateNames;
import handwheel.ship.Ship;
import handwheel.ship.StandingAct;
import handwheel.ship.SteamingWatch;
import java.util.List;
import java.util.Optional;

/** Reads a ship: her own file, the sizes of her plant and her initial conditions. */
public final class ShipReader {
  private static final Shape PLANT =
      Shape.of(
          "the plant",
          Key.must("design", Form.WORD, "the design").with(List.of("two-furnace")),
          Key.must("numbers", Form.FILE, "the file with its sizes"));

  static final Shape SHAPE =
      Shape.of(
          "a ship",
          Header.key("ship"),
          Key.must("id", Form.ID, "the ship's id"),
          Key.must("name", Form.TEXT, "her name"),
          Key.must("plant", Form.MAPPING, "her plant").with(PLANT),
          Key.must("places", Form.LIST, "the places people can stand at").with(PlaceReader.SHAPE),
          Key.must("ways", Form.LIST, "the ways between them").with(PlaceReader.WAY),
          Key.must("fittings", Form.LIST, "what can be worked").with(FittingReader.SHAPE),
          Key.must("gauges", Form.LIST, "what can be read").with(GaugeReader.SHAPE),
          Key.must("watch", Form.LIST, "the people in roster order").with(WatchReader.SHAPE),
          Key.may("standing", Form.LIST, "what drilled people do unordered")
              .with(WatchReader.STANDING),
          Key.must("conditions", Form.LIST, "the initial conditions").with(ConditionFile.ENTRY),
          Key.may("steaming", Form.MAPPING, "what an ordinary watch is like")
              .with(SteamingReader.SHAPE));

  private final Folder folder;
  private final StateNames states;
  private final Findings findings = new Findings();
  private final Names names = new Names();

  private ShipReader(Folder folder, StateNames states) {
    this.folder = folder;
    this.states = states;
  }

  /**
   * Reads a ship.
   *
   * @param files the files of her folder
   * @return the ship if every part could be read, and everything that was found
   */
  public static Read<Ship> read(ShipFiles files) {
    return read(files, StateNames.ofPlant());
  }

  /** Reads a ship whose plant has these states. */
  static Read<Ship> read(ShipFiles files, StateNames states) {
    ShipReader reader = new ShipReader(new Folder(files), states);
    Findings findings = reader.findings;
    Optional<Ship> ship =
        reader
            .folder
            .ship(findings)
            .flatMap(
                root -> Header.root(root, SHAPE, "ship", findings).map(m -> reader.ship(root, m)));
    return Read.of(ship, findings);
  }

  private Ship ship(YamlNode root, MapNode map) {
    gatherNames(root);
    PlaceReader places = new PlaceReader(names);
    Ship ship =
        new Ship(
            map.get("id", Scalars::id).orElse(""),
            map.get("name", Scalars.text(Limits.NAME_CHARS)).orElse(""),
            "",
            map.get("plant", MapNode.reader(PLANT, this::numbers)).orElseGet(PlantNumbers::usual),
            map.list("places", Limits.SHIP_ITEMS, places::place),
            map.list("ways", Limits.SHIP_ITEMS, places::way),
            map.list("fittings", Limits.SHIP_ITEMS, new FittingReader(names)::read),
            map.list("gauges", Limits.SHIP_ITEMS, new GaugeReader(names)::read),
            map.list("watch", Limits.SHIP_ITEMS, new WatchReader(names)::read),
            List.of(),
            map.list("conditions", Limits.SHIP_ITEMS, new ConditionFile(folder, states)::read));
    if (findings.lost() == 0) {
      new ShipChecks(map, names).check(ship);
    }
    StandingReader standing = new StandingReader(ship, names, findings.lost() == 0);
    List<StandingAct> acts = map.list("standing", Limits.SHIP_ITEMS, standing::read);
    return complete(
        ship, acts, map.get("steaming", SteamingReader::read).orElse(SteamingWatch.NONE));
  }

  private Ship complete(Ship ship, List<StandingAct> standing, SteamingWatch steaming) {
    return new Ship(
        ship.id(),
        ship.name(),
        folder.sha256(),
        ship.numbers(),
        ship.places(),
        ship.ways(),
        ship.fittings(),
        ship.gauges(),
        ship.watch(),
        standing,
        ship.conditions(),
        steaming);
  }

  private Optional<PlantNumbers> numbers(MapNode plant) {
    plant.word("design");
    return plant.get("numbers", folder::named).flatMap(node -> NumbersFile.read(node, findings));
  }

  private void gatherNames(YamlNode root) {
    names.declareAll(Named.PLACE, root.at("places"), findings);
    names.declareAll(Named.FITTING, root.at("fittings"), findings);
    names.declareAll(Named.GAUGE, root.at("gauges"), findings);
    names.declareAll(Named.WATCHSTANDER, root.at("watch"), findings);
    names.declareAll(Named.CONDITION, root.at("conditions"), findings);
  }
}
