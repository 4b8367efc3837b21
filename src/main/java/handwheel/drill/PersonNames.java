package handwheel.drill;

/** What a person's states are called; made once, since they are walked every second. */
record PersonNames(
    String dose,
    String gasDose,
    String hurt,
    String down,
    String hearing,
    OfLegs legs,
    String queued,
    OfJob job) {
  /** Of where he is. */
  record OfLegs(String place, String leg, String left, String gone) {}

  /** Of what he does. */
  record OfJob(String n, String stage, String until, String fitting) {}

  static PersonNames of(String person) {
    String job = person + ".job";
    return new PersonNames(
        person + ".dose",
        person + ".gas-dose",
        person + ".hurt",
        person + ".down",
        person + ".hearing",
        new OfLegs(person + ".place", person + ".leg", person + ".left", person + ".gone"),
        person + ".queued",
        new OfJob(job + ".n", job + ".stage", job + ".until", job + ".fitting"));
  }
}
