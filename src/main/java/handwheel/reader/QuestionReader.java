package handwheel.reader;

import handwheel.casualty.Question;
import java.util.Optional;

/** Reads the questions to be asked after a drill. */
final class QuestionReader {
  static final Shape SHAPE =
      Shape.of(
          "a question",
          Key.must("ask", Form.TEXT, "the question"),
          Key.must("answer", Form.TEXT, "what a good answer says"));

  private QuestionReader() {}

  static Optional<Question> read(YamlNode node, Findings findings) {
    return MapNode.of(node, SHAPE, findings).flatMap(QuestionReader::question);
  }

  private static Optional<Question> question(MapNode map) {
    NodeReader<String> text = Scalars.text(Limits.TEXT_CHARS);
    Optional<String> ask = map.get("ask", text);
    Optional<String> answer = map.get("answer", text);
    return All.there(ask, answer)
        ? Optional.of(new Question(ask.orElseThrow(), answer.orElseThrow(), map.spot()))
        : Optional.empty();
  }
}
