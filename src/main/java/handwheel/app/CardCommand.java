package handwheel.app;

import handwheel.debrief.Card;
import handwheel.debrief.CardHtml;
import handwheel.debrief.CardText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** {@code card SCRIPT}: prints the card of a drill that is walked in the real space. */
final class CardCommand implements Command {
  private final Drills drills;

  CardCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "card";
  }

  @Override
  public String summary() {
    return "SCRIPT [--html FILE]\n"
        + "      prints the drill card for the leader: cautions, brief, acts, marking, questions";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, List.of("--html"), List.of());
    Drills.Loaded loaded = drills.load(drills.file(args.only("script")));
    if (console.stops(loaded.findings()) || loaded.found().isEmpty()) {
      return Exit.NOT_UNDERSTOOD;
    }
    Card card = Card.of(loaded.found().get());
    Optional<String> html = args.value("--html");
    if (html.isPresent()) {
      Files.writeString(Path.of(html.get()), CardHtml.page(card));
      console.result("Card: " + html.get());
    } else {
      CardText.lines(card).forEach(console::result);
    }
    return Exit.YES;
  }
}
