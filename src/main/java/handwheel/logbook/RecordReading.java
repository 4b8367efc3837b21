package handwheel.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One reading of one record, line by line. */
final class RecordReading {
  private final FileLines file;
  private final ProblemList problems = new ProblemList();
  private final ChainCheck chain = new ChainCheck(problems);
  private final List<ChainedLine> lines = new ArrayList<>();
  private Stage stage = Stage.RUN;
  private @Nullable About about;
  private @Nullable String aboutH;
  private Closing closing = Closing.NONE;
  private boolean chainHolds = true;
  private int unused;

  RecordReading(FileLines file) {
    this.file = file;
  }

  RunRecord read() {
    List<byte[]> whole = file.whole();
    for (int i = readAbout(); i < whole.size(); i++) {
      take(i + 1, whole.get(i));
    }
    file.reportTorn(problems);
    reportOpen();
    return new RunRecord(about, lines, closing, unused, problems.kept());
  }

  private void reportOpen() {
    if (stage == Stage.OVER && about != null && !about.key().isEmpty()) {
      problems.add(
          0,
          Problem.Kind.SIGNATURE_MISSING,
          "the about line names a key, but there is no signature behind the end.");
    } else if (stage != Stage.OVER && stage != Stage.SIGNED) {
      problems.add(0, Problem.Kind.UNFINISHED, "there is no end line: the run is not finished.");
    }
  }

  /** Returns the index of the line where the chain starts. */
  private int readAbout() {
    if (file.whole().isEmpty()) {
      return 0;
    }
    LineRead<HashedLine> read = HashedLine.of(file.whole().get(0));
    if (read.value()
        .map(HashedLine::text)
        .filter(t -> t.startsWith("{\"k\":\"run\""))
        .isPresent()) {
      problems.add(1, Problem.Kind.ABOUT_MISSING, "the record does not begin with its about line.");
      return 0;
    }
    read.trouble().ifPresent(t -> problems.add(1, t));
    read.value().ifPresent(this::readAbout);
    return 1;
  }

  private void readAbout(HashedLine line) {
    aboutH = line.h();
    LineRead<About> read = About.read(line.bare());
    read.trouble().ifPresent(t -> problems.add(1, t));
    if (line.followsOn(Chain.START)) {
      about = read.value().orElse(null);
    } else {
      problems.add(
          1, Problem.Kind.ABOUT_CHANGED, "the about line was changed: its h is not its own.");
    }
  }

  private void take(int number, byte[] bytes) {
    int before = problems.count();
    Optional<HashedLine> line = chain.next(number, bytes);
    chainHolds &= problems.count() == before;
    line.ifPresent(l -> place(number, l));
    chainHolds &= problems.count() == before;
    if (!chainHolds) {
      unused++;
    }
  }

  private void place(int number, HashedLine line) {
    if (line.text().startsWith(End.PREFIX)) {
      LineRead<End> read = End.read(line.bare());
      read.trouble().ifPresent(t -> problems.add(number, t));
      read.value().ifPresent(e -> placeEnd(number, e, line.h()));
    } else if (line.text().startsWith(Signed.PREFIX)) {
      LineRead<Signed> read = Signed.read(line.bare());
      read.trouble().ifPresent(t -> problems.add(number, t));
      read.value().ifPresent(s -> placeSigned(number, s));
    } else {
      LineRead<Entry> read = EntryLine.read(line.bare());
      read.trouble().ifPresent(t -> problems.add(number, t));
      read.value().ifPresent(e -> placeEntry(number, e, line));
    }
  }

  private void placeEntry(int number, Entry entry, HashedLine line) {
    if (!stage.admits(entry)) {
      reportOutOfPlace(number);
      return;
    }
    stage = Stage.after(entry);
    if (chainHolds) {
      lines.add(new ChainedLine(number, entry, line.text(), line.h()));
    }
  }

  private void reportOutOfPlace(int number) {
    switch (stage) {
      case RUN, RUNNING ->
          problems.add(
              number,
              Problem.Kind.RUN_OUT_OF_PLACE,
              "`run` must be the first entry, and only that.");
      case SCORED ->
          problems.add(number, Problem.Kind.AFTER_SCORE, "an entry stands after the score.");
      case OVER, SIGNED ->
          problems.add(number, Problem.Kind.AFTER_END, "an entry stands after the end.");
    }
  }

  private void placeEnd(int number, End found, String h) {
    switch (stage) {
      case RUN, RUNNING ->
          problems.add(
              number,
              Problem.Kind.END_WITHOUT_SCORE,
              "the end stands where there is no score yet.");
      case OVER, SIGNED ->
          problems.add(number, Problem.Kind.SECOND_END, "the record has a second end.");
      case SCORED -> checkAbout(number, found, h);
    }
    stage = Stage.OVER;
  }

  private void checkAbout(int number, End found, String h) {
    if (!found.about().equals(aboutH)) {
      problems.add(
          number,
          Problem.Kind.ABOUT_NOT_OF_END,
          "this end belongs to another about line than the one above.");
    } else if (chainHolds) {
      closing = new Closing(found, h, null);
    }
  }

  private void placeSigned(int number, Signed found) {
    String key = about == null ? "" : about.key();
    String endH = closing.endH();
    if (stage != Stage.OVER) {
      problems.add(
          number, Problem.Kind.SIGNATURE_WRONG, "a signature stands only once, behind the end.");
    } else if (endH == null || !PublicKeys.verifies(key, Signed.message(endH), found.sig())) {
      problems.add(number, Problem.Kind.SIGNATURE_WRONG, wrongSignature(key));
    } else if (chainHolds) {
      closing = closing.with(found);
    }
    stage = Stage.SIGNED;
  }

  private String wrongSignature(String key) {
    if (about == null || closing.endH() == null) {
      return "the signature cannot be checked: the about or the end line does not hold.";
    }
    return key.isEmpty()
        ? "the record is signed, but its about line names no key."
        : "the signature is not that of the key in the about line over this record.";
  }
}
