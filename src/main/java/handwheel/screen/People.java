package handwheel.screen;

import handwheel.screen.Frame.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The people in sight as rows: who does something has his own cell, those who stand by share a
 * line.
 *
 * @param seen who is in sight
 * @param width columns of the screen
 */
record People(List<Sighting.Seen> seen, int width) {
  private static final int GAP = 2;

  People {
    seen = List.copyOf(seen);
  }

  List<Row> rows() {
    if (seen.isEmpty()) {
      return List.of(Row.plain("Nobody is in sight."));
    }
    List<Row> rows = new ArrayList<>(busy());
    String idle =
        seen.stream()
            .filter(Sighting.Seen::isIdle)
            .map(Sighting.Seen::title)
            .collect(Collectors.joining(", "));
    if (!idle.isEmpty()) {
      Text.wrapped("Standing by: " + idle, width, 2).forEach(r -> rows.add(Row.plain(r)));
    }
    return rows;
  }

  private List<Row> busy() {
    int cell = (width - GAP) / 2;
    List<String> busy =
        seen.stream().filter(s -> !s.isIdle()).map(Sighting.Seen::sentence).toList();
    List<Row> rows = new ArrayList<>();
    int i = 0;
    while (i < busy.size()) {
      String first = busy.get(i++);
      boolean isPair = i < busy.size() && first.length() <= cell && busy.get(i).length() <= cell;
      rows.add(Row.plain(isPair ? Text.left(first, cell + GAP) + busy.get(i++) : first));
    }
    return rows;
  }
}
