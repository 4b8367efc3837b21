package handwheel.plant;

/** Listener that ignores everything. */
final class NoPlantEvents implements PlantEvents {
  @Override
  public void burnerOut(Burner burner) {}

  @Override
  public void burnerLit(Burner burner, LitBy by) {}

  @Override
  public void safetyLifts(Safety valve) {}

  @Override
  public void safetyReseats(Safety valve) {}

  @Override
  public void blowerTrips(int blower) {}

  @Override
  public void furnaceExplosion(FurnaceExplosion explosion) {}

  @Override
  public void waterOutOfSightLow() {}

  @Override
  public void waterOutOfSightHigh() {}

  @Override
  public void limitReached(Limit limit) {}

  @Override
  public void oilFireStarts() {}

  @Override
  public void oilFireOut() {}

  @Override
  public void leftRange(ModelRange range, double si) {}
}
