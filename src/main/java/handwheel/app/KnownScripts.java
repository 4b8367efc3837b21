package handwheel.app;

import handwheel.debrief.Scripts;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Reads each script once, however many threads ask for it. */
final class KnownScripts implements Scripts {
  private final Scripts source;
  private final ConcurrentHashMap<String, Optional<Found>> known = new ConcurrentHashMap<>();

  KnownScripts(Scripts source) {
    this.source = source;
  }

  @Override
  public Optional<Found> find(String shipId, String scriptId) {
    return known.computeIfAbsent(shipId + "/" + scriptId, k -> source.find(shipId, scriptId));
  }
}
