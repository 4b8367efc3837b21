package handwheel.board;

import handwheel.logbook.About;
import handwheel.logbook.Entry;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A list of runs in SQLite, so that a hundred thousand are filtered at once. It is a copy of what
 * the records say and no proof of anything; thrown away, it is made again from the files.
 */
public final class RunIndex implements AutoCloseable {
  /** Name of the index in the records folder. */
  public static final String FILE = "index.sqlite";

  private static final int VERSION = 1;
  private static final List<String> COLUMNS =
      List.of(
          "path",
          "stamp",
          "no",
          "before",
          "trainee",
          "started",
          "keyed",
          "attests",
          "key",
          "engine",
          "ship",
          "shipSha",
          "script",
          "scriptSha",
          "seed",
          "mode",
          "points",
          "verdict",
          "root",
          "standing",
          "coached",
          "signed",
          "v");

  private final Connection db;

  private RunIndex(Connection db) {
    this.db = db;
  }

  /**
   * Opens an index, or makes an empty one. One of another version is emptied.
   *
   * @param file path of the file; empty: in memory
   * @return the index
   * @throws BoardTrouble if it cannot be opened
   */
  public static RunIndex open(String file) throws BoardTrouble {
    try {
      RunIndex index = new RunIndex(DriverManager.getConnection("jdbc:sqlite:" + file));
      index.prepare();
      return index;
    } catch (SQLException e) {
      throw new BoardTrouble("The index `" + file + "` failed: " + e.getMessage(), e);
    }
  }

  private void prepare() throws SQLException {
    try (Statement s = db.createStatement()) {
      s.execute("pragma journal_mode = wal");
      s.execute("pragma busy_timeout = 5000");
      boolean isOurs;
      try (ResultSet r = s.executeQuery("pragma user_version")) {
        isOurs = r.next() && r.getInt(1) == VERSION;
      }
      if (!isOurs) {
        s.execute("drop table if exists run");
        s.execute("drop table if exists lost");
      }
      s.execute(
          "create table if not exists run ("
              + String.join(", ", COLUMNS)
              + ", primary key (path))");
      s.execute("create table if not exists lost (path, at, points, type, step, tick, why, basis)");
      s.execute("create index if not exists by_trainee on run (trainee, started, script, verdict)");
      s.execute("create index if not exists by_script on run (script, started, verdict, trainee)");
      s.execute("create index if not exists by_started on run (started, script, verdict, trainee)");
      s.execute("create index if not exists by_no on run (no)");
      s.execute("create index if not exists lost_of on lost (path, at)");
      s.execute("pragma user_version = " + VERSION);
    }
  }

  /**
   * A row and the file it was made from.
   *
   * @param stamp size and time of the file, by which a changed one is known
   * @param row the row
   */
  public record Stamped(String stamp, RunRow row) {}

  /**
   * Adds rows, or puts them in place of those of the same path, all or none.
   *
   * @param rows rows with the stamp of their file
   * @throws BoardTrouble if the index fails
   */
  public void put(List<Stamped> rows) throws BoardTrouble {
    asOne(() -> insert(rows));
  }

  private void insert(List<Stamped> rows) throws SQLException {
    String marks = "?, ".repeat(COLUMNS.size() - 1) + "?";
    try (PreparedStatement run =
            db.prepareStatement("insert or replace into run values (" + marks + ")");
        PreparedStatement old = db.prepareStatement("delete from lost where path = ?");
        PreparedStatement lost =
            db.prepareStatement("insert into lost values (?, ?, ?, ?, ?, ?, ?, ?)")) {
      for (Stamped e : rows) {
        fill(run, values(e));
        fill(old, List.of(e.row().path()));
        run.executeUpdate();
        old.executeUpdate();
        insertLost(lost, e.row());
      }
    }
  }

  private static void insertLost(PreparedStatement lost, RunRow row) throws SQLException {
    int at = 0;
    for (Entry.Loss l : row.score().lost()) {
      fill(
          lost,
          List.of(row.path(), at, l.points(), l.type(), l.step(), l.tick(), l.why(), l.basis()));
      lost.addBatch();
      at++;
    }
    lost.executeBatch();
  }

  private static List<Object> values(Stamped stamped) {
    RunRow row = stamped.row();
    About a = row.about();
    Entry.Run r = row.run();
    return List.of(
        row.path(),
        stamped.stamp(),
        a.no(),
        a.before(),
        a.trainee(),
        a.started(),
        a.keyed(),
        a.attests(),
        a.key(),
        r.engine(),
        r.ship(),
        r.shipSha(),
        r.script(),
        r.scriptSha(),
        r.seed(),
        r.mode(),
        row.score().points(),
        row.score().verdict(),
        row.root(),
        row.standing(),
        row.coached(),
        row.isSigned() ? 1 : 0,
        r.v());
  }

  private static void fill(PreparedStatement s, List<Object> values) throws SQLException {
    for (int i = 0; i < values.size(); i++) {
      s.setObject(i + 1, values.get(i));
    }
  }

  /**
   * Returns what files are in the index.
   *
   * @return stamp by path
   * @throws BoardTrouble if the index fails
   */
  public SortedMap<String, String> stamps() throws BoardTrouble {
    SortedMap<String, String> stamps = new TreeMap<>();
    query(
        "select path, stamp from run", List.of(), r -> stamps.put(r.getString(1), r.getString(2)));
    return stamps;
  }

  /**
   * Takes rows out.
   *
   * @param paths files that are gone
   * @throws BoardTrouble if the index fails
   */
  public void remove(List<String> paths) throws BoardTrouble {
    asOne(
        () -> {
          for (String table : List.of("run", "lost")) {
            try (PreparedStatement s =
                db.prepareStatement("delete from " + table + " where path = ?")) {
              for (String path : paths) {
                s.setString(1, path);
                s.executeUpdate();
              }
            }
          }
        });
  }

  /**
   * Lists runs with what they lost.
   *
   * @param filter which
   * @return rows in the order of their start
   * @throws BoardTrouble if the index fails
   */
  public List<RunRow> listWithLost(RunFilter filter) throws BoardTrouble {
    List<RunRow> rows = new ArrayList<>();
    for (RunRow row : list(filter)) {
      List<Entry.Loss> lost = new ArrayList<>();
      query(
          "select * from lost where path = ? order by at",
          List.of(row.path()),
          r -> lost.add(loss(r)));
      rows.add(row.withLost(lost));
    }
    return rows;
  }

  /**
   * Lists the runs of one number: more than one where folders of several machines were merged.
   *
   * @param no number of a run
   * @return rows in the order of their start
   * @throws BoardTrouble if the index fails
   */
  public List<RunRow> numbered(int no) throws BoardTrouble {
    List<RunRow> rows = new ArrayList<>();
    query(
        "select * from run where no = cast(? as integer) order by started, path",
        List.of(String.valueOf(no)),
        r -> rows.add(row(r)));
    return rows;
  }

  /**
   * Lists runs; what they lost is left out, which keeps long lists quick.
   *
   * @param filter which
   * @return rows in the order of their start, without charges
   * @throws BoardTrouble if the index fails
   */
  public List<RunRow> list(RunFilter filter) throws BoardTrouble {
    List<RunRow> rows = new ArrayList<>();
    query(
        "select * from run where "
            + filter.where()
            + " order by started, path limit "
            + filter.atMost(),
        filter.values(),
        r -> rows.add(row(r)));
    return rows;
  }

  /**
   * Counts runs.
   *
   * @param filter which; its limit is left out
   * @return how many
   * @throws BoardTrouble if the index fails
   */
  public int count(RunFilter filter) throws BoardTrouble {
    int[] count = new int[1];
    query(
        "select count(*) from run where " + filter.where(),
        filter.values(),
        r -> count[0] = r.getInt(1));
    return count[0];
  }

  private static RunRow row(ResultSet r) throws SQLException {
    About about =
        new About(
            r.getInt("no"),
            r.getString("before"),
            r.getString("trainee"),
            r.getString("started"),
            r.getString("keyed"),
            r.getString("attests"),
            r.getString("key"));
    Entry.Run run =
        new Entry.Run(
            r.getInt("v"),
            r.getString("engine"),
            r.getString("ship"),
            r.getString("shipSha"),
            r.getString("script"),
            r.getString("scriptSha"),
            r.getLong("seed"),
            r.getString("mode"));
    Entry.Score score = new Entry.Score(r.getInt("points"), r.getString("verdict"), List.of());
    return new RunRow(
        r.getString("path"),
        about,
        run,
        score,
        r.getString("root"),
        r.getString("standing"),
        r.getString("coached"),
        r.getInt("signed") == 1);
  }

  private static Entry.Loss loss(ResultSet r) throws SQLException {
    return new Entry.Loss(
        r.getInt("points"),
        r.getString("type"),
        r.getString("step"),
        r.getLong("tick"),
        r.getString("why"),
        r.getString("basis"));
  }

  private interface Work {
    void run() throws SQLException;
  }

  private interface Row {
    void take(ResultSet r) throws SQLException;
  }

  private void asOne(Work work) throws BoardTrouble {
    try {
      db.setAutoCommit(false);
      try {
        work.run();
        db.commit();
      } finally {
        db.rollback();
        db.setAutoCommit(true);
      }
    } catch (SQLException e) {
      throw new BoardTrouble("The index failed: " + e.getMessage(), e);
    }
  }

  private void query(String sql, List<String> values, Row row) throws BoardTrouble {
    try (PreparedStatement s = db.prepareStatement(sql)) {
      for (int i = 0; i < values.size(); i++) {
        s.setString(i + 1, values.get(i));
      }
      try (ResultSet r = s.executeQuery()) {
        while (r.next()) {
          row.take(r);
        }
      }
    } catch (SQLException e) {
      throw new BoardTrouble("The index failed: " + e.getMessage(), e);
    }
  }

  @Override
  public void close() throws BoardTrouble {
    try {
      db.close();
    } catch (SQLException e) {
      throw new BoardTrouble("The index failed: " + e.getMessage(), e);
    }
  }
}
