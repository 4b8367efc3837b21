package handwheel.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import handwheel.screen.Frame;
import java.io.IOException;
import java.util.List;

/** Puts frames on a screen: only the rows that changed are touched, only changed cells are sent. */
final class Brush {
  private final Screen screen;
  private List<Frame.Row> drawn = List.of();
  private int cursor = -1;

  Brush(Screen screen) {
    this.screen = screen;
  }

  /** Takes note of a new size; returns the size now. */
  TerminalSize size() {
    if (screen.doResizeIfNecessary() != null) {
      forget();
    }
    return screen.getTerminalSize();
  }

  /** Forgets what stands on the screen, so that all of it is sent again. */
  void forget() {
    drawn = List.of();
    cursor = -1;
  }

  void draw(Frame frame) throws IOException {
    boolean isSame = frame.rows().equals(drawn) && frame.cursorColumn() == cursor;
    if (isSame) {
      return;
    }
    for (int row = 0; row < frame.rows().size(); row++) {
      if (row >= drawn.size() || !drawn.get(row).equals(frame.rows().get(row))) {
        put(row, frame.rows().get(row));
      }
    }
    boolean isAll = drawn.isEmpty();
    drawn = frame.rows();
    cursor = frame.cursorColumn();
    screen.setCursorPosition(new TerminalPosition(cursor, frame.rows().size() - 1));
    screen.refresh(isAll ? Screen.RefreshType.COMPLETE : Screen.RefreshType.AUTOMATIC);
  }

  private void put(int row, Frame.Row text) {
    int column = 0;
    for (Frame.Span span : text.spans()) {
      SGR[] style = style(span.style());
      for (int i = 0; i < span.text().length(); i++) {
        char c = span.text().charAt(i);
        screen.setCharacter(column++, row, cell(c, style));
      }
    }
  }

  private static TextCharacter cell(char c, SGR[] style) {
    return TextCharacter.fromCharacter(c, TextColor.ANSI.DEFAULT, TextColor.ANSI.DEFAULT, style)[0];
  }

  private static SGR[] style(Frame.Style style) {
    return switch (style) {
      case PLAIN -> new SGR[0];
      case BOLD -> new SGR[] {SGR.BOLD};
      case REVERSE -> new SGR[] {SGR.REVERSE};
    };
  }
}
