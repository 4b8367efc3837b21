package handwheel.house;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Locale;

/** The lists of what is banned. Why each would break a replay is said beside it. */
final class Bans {
  /** CPU-specific in {@code Math}, the same everywhere in {@code StrictMath}. */
  private static final Ban MATH =
      Ban.members(
          "last bits differ between machines; use StrictMath or a table",
          "java.lang.Math.sin",
          "java.lang.Math.cos",
          "java.lang.Math.tan",
          "java.lang.Math.asin",
          "java.lang.Math.acos",
          "java.lang.Math.atan",
          "java.lang.Math.atan2",
          "java.lang.Math.sinh",
          "java.lang.Math.cosh",
          "java.lang.Math.tanh",
          "java.lang.Math.exp",
          "java.lang.Math.expm1",
          "java.lang.Math.log",
          "java.lang.Math.log10",
          "java.lang.Math.log1p",
          "java.lang.Math.pow",
          "java.lang.Math.cbrt",
          "java.lang.Math.hypot");

  private static final Ban HASH_TYPES =
      Ban.types(
          "no fixed order; use a list, an array, EnumMap, LinkedHashMap or TreeMap",
          "java.util.HashMap",
          "java.util.HashSet",
          "java.util.Hashtable",
          "java.util.IdentityHashMap",
          "java.util.WeakHashMap",
          "java.util.concurrent.ConcurrentHashMap");

  /** {@code Set.of} and {@code Map.of} iterate in an order that changes with every start. */
  private static final Ban HASH_MEMBERS =
      Ban.members(
          "no fixed order; use a list, EnumMap, LinkedHashMap or TreeMap",
          "java.util.Set.of",
          "java.util.Set.copyOf",
          "java.util.Map.of",
          "java.util.Map.ofEntries",
          "java.util.Map.copyOf",
          "java.util.stream.Collectors.toSet",
          "java.util.stream.Collectors.toUnmodifiableSet",
          "java.util.stream.Collectors.toUnmodifiableMap",
          "java.util.stream.Collectors.toConcurrentMap",
          "java.util.stream.Collectors.groupingByConcurrent",
          "java.lang.System.identityHashCode");

  private static final Ban TO_MAP =
      Ban.membersIf(
          Ban.unlessParameters(4),
          "give the map factory, such as TreeMap::new",
          "java.util.stream.Collectors.toMap");

  private static final Ban GROUPING_BY =
      Ban.membersIf(
          Ban.unlessParameters(3),
          "give the map factory, such as TreeMap::new",
          "java.util.stream.Collectors.groupingBy");

  private static final Ban PARALLEL =
      Ban.members(
          "order of evaluation is part of the result",
          "*.parallelStream",
          "java.util.stream.BaseStream.parallel",
          "java.util.stream.Stream.parallel",
          "java.util.stream.IntStream.parallel",
          "java.util.stream.LongStream.parallel",
          "java.util.stream.DoubleStream.parallel",
          "java.util.Arrays.parallelSort",
          "java.util.Arrays.parallelPrefix",
          "java.util.Arrays.parallelSetAll");

  private static final Ban MACHINE =
      Ban.members(
          "depends on the machine; let app read it and hand it in",
          "java.lang.System.getProperty",
          "java.lang.System.getProperties",
          "java.lang.System.getenv",
          "java.lang.Runtime.getRuntime");

  private static final Ban RANDOM_TYPES =
      Ban.types(
          "use the run's own seeded stream",
          "java.util.Random",
          "java.util.SplittableRandom",
          "java.util.concurrent.ThreadLocalRandom",
          "java.security.SecureRandom",
          "java.util.random.*");

  private static final Ban RANDOM_MEMBERS =
      Ban.members(
          "use the run's own seeded stream",
          "java.lang.Math.random",
          "java.lang.StrictMath.random",
          "java.util.UUID.randomUUID",
          "java.util.Collections.shuffle");

  private static final Ban CLOCK_TYPES =
      Ban.types(
          "only app reads a clock; hand the time in",
          "java.time.Clock",
          "java.time.InstantSource",
          "java.util.Date",
          "java.util.Calendar",
          "java.util.Timer");

  private static final Ban CLOCK_MEMBERS =
      Ban.members(
          "only app reads a clock; hand the time in",
          "java.lang.System.nanoTime",
          "java.lang.System.currentTimeMillis",
          "java.time.Instant.now",
          "java.time.LocalDate.now",
          "java.time.LocalTime.now",
          "java.time.LocalDateTime.now",
          "java.time.OffsetDateTime.now",
          "java.time.OffsetTime.now",
          "java.time.ZonedDateTime.now",
          "java.time.Year.now",
          "java.time.YearMonth.now",
          "java.time.MonthDay.now");

  private static final Ban THREAD_TYPES =
      Ban.types(
          "one run, one thread; threads belong to app, terminal and archive",
          "java.lang.Thread",
          "java.lang.ThreadLocal",
          "java.util.concurrent.*");

  private static final Ban FILE_TYPES =
      Ban.types(
          "take text or a stream that app opened",
          "java.io.File",
          "java.io.FileInputStream",
          "java.io.FileOutputStream",
          "java.io.FileReader",
          "java.io.FileWriter",
          "java.io.RandomAccessFile",
          "java.nio.file.*",
          "java.nio.channels.*",
          "java.net.*");

  private static final Ban LOCALE_CALLS =
      Ban.membersIf(
          Ban.without(Locale.class),
          "give Locale.ROOT",
          "java.lang.String.format",
          "java.lang.String.formatted",
          "java.lang.String.toLowerCase",
          "java.lang.String.toUpperCase",
          "java.io.PrintStream.printf",
          "java.io.PrintStream.format",
          "java.io.PrintWriter.printf",
          "java.io.PrintWriter.format",
          "java.util.Formatter.<init>",
          "java.text.NumberFormat.getInstance",
          "java.text.NumberFormat.getNumberInstance",
          "java.text.DecimalFormat.<init>",
          "java.text.SimpleDateFormat.<init>",
          "java.time.format.DateTimeFormatter.ofPattern");

  private static final Ban DEFAULTS =
      Ban.members(
          "differs between machines; name the locale, zone or charset",
          "java.util.Locale.getDefault",
          "java.util.TimeZone.getDefault",
          "java.time.ZoneId.systemDefault",
          "java.nio.charset.Charset.defaultCharset");

  private static final Ban CHARSET_CALLS =
      Ban.membersIf(
          Ban.without(Charset.class),
          "give StandardCharsets.UTF_8",
          "java.lang.String.getBytes",
          "java.io.InputStreamReader.<init>",
          "java.io.OutputStreamWriter.<init>");

  private static final Ban BYTES_TO_TEXT =
      Ban.membersIf(
          Ban.with(byte[].class).and(Ban.without(Charset.class)),
          "give StandardCharsets.UTF_8",
          "java.lang.String.<init>");

  /** {@code Double.toString} changed in JDK 19; string concatenation compiles to append here. */
  private static final Ban FIGURES_AS_TEXT =
      Ban.membersIf(
          Ban.with(double.class, float.class),
          "its text changed between JDK versions; write a scaled integer",
          "java.lang.Double.toString",
          "java.lang.Float.toString",
          "java.lang.String.valueOf",
          "java.lang.StringBuilder.append",
          "java.lang.StringBuilder.insert",
          "java.math.BigDecimal.valueOf");

  private static final Ban BOXED_FIGURES_AS_TEXT =
      Ban.members(
          "its text changed between JDK versions; write a scaled integer",
          "java.lang.Double.toString",
          "java.lang.Float.toString");

  private static final Ban POW =
      Ban.membersIf(
          Ban.inMethods(),
          "too slow for the tick; use square roots, the fifth root or a table",
          "java.lang.StrictMath.pow");

  private static final Ban STREAMS =
      Ban.members(
          "app and terminal talk to the person; return the text",
          "java.lang.System.out",
          "java.lang.System.err",
          "java.lang.System.in",
          "java.lang.System.console");

  private static final Ban STACK_TRACE =
      Ban.membersIf(Ban.unlessParameters(1), "say what went wrong", "*.printStackTrace");

  private static final Ban EXIT =
      Ban.members("only app ends the program", "java.lang.System.exit", "java.lang.Runtime.halt");

  /** Same inputs, same bytes, on any machine. */
  static final List<Ban> DETERMINISM =
      List.of(MATH, HASH_TYPES, HASH_MEMBERS, TO_MAP, GROUPING_BY, PARALLEL, MACHINE);

  static final List<Ban> RANDOM = List.of(RANDOM_TYPES, RANDOM_MEMBERS);
  static final List<Ban> CLOCK = List.of(CLOCK_TYPES, CLOCK_MEMBERS);
  static final List<Ban> THREADS = List.of(THREAD_TYPES);
  static final List<Ban> FILES = List.of(FILE_TYPES);
  static final List<Ban> LOCALE = List.of(LOCALE_CALLS, DEFAULTS, CHARSET_CALLS, BYTES_TO_TEXT);
  static final List<Ban> FIGURES = List.of(FIGURES_AS_TEXT, BOXED_FIGURES_AS_TEXT);
  static final List<Ban> TICK = List.of(POW);
  static final List<Ban> SPEECH = List.of(STREAMS, STACK_TRACE);
  static final List<Ban> END = List.of(EXIT);

  private Bans() {}

  /** Returns every ban, for the test that each name exists. */
  static List<Ban> all() {
    return List.of(DETERMINISM, RANDOM, CLOCK, THREADS, FILES, LOCALE, FIGURES, TICK, SPEECH, END)
        .stream()
        .flatMap(List::stream)
        .toList();
  }
}
