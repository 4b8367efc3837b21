package handwheel.scoring;

import handwheel.casualty.StepTest;
import handwheel.units.Measure;

/** What a step asks for, in words. */
final class Wanted implements StepTest.Visitor<String> {
  @Override
  public String ordered(StepTest.Ordered test) {
    return "`" + test.order() + "` said";
  }

  @Override
  public String fittingIs(StepTest.FittingIs test) {
    return String.join(", ", test.fittings()) + (test.isOpen() ? " open" : " shut");
  }

  @Override
  public String readProof(StepTest.ReadProof test) {
    String bound = Measure.ofSi(test.bound().si(), test.unit()).text();
    return test.gauge() + " read " + (test.bound().isUpper() ? "below " : "above ") + bound;
  }

  @Override
  public String reported(StepTest.Reported test) {
    return test.message() + " passed to " + test.to();
  }

  @Override
  public String mustered(StepTest.Mustered test) {
    return "everyone counted by name";
  }
}
