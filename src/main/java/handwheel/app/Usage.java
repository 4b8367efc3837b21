package handwheel.app;

/** A command line that was not understood; carries the sentence for the person. */
final class Usage extends Exception {
  private static final long serialVersionUID = 1L;

  Usage(String message) {
    super(message, null, false, false);
  }

  /** Returns the sentence. */
  String sentence() {
    String message = getMessage();
    return message == null ? "" : message;
  }
}
