package handwheel.debrief;

/**
 * What a run did to people, metal, water and steam. True values of the model, not of the gauges.
 *
 * @param hurt people hurt who stayed on their feet
 * @param down people down
 * @param superheaterMetalK hottest superheater metal, K
 * @param tubeMetalK hottest generating tubes, K
 * @param lowestLevelM lowest water in the drum, m from the middle of the glass
 * @param highestLevelM highest water in the drum, m from the middle of the glass
 * @param steamIntoRoomKg steam that came into the fire room, kg
 * @param withoutSteamTicks how long the main line held less than half of its pressure at the start
 * @param lengthTicks how long the drill lasted
 * @param points 0 to 100
 */
public record Outcome(
    int hurt,
    int down,
    double superheaterMetalK,
    double tubeMetalK,
    double lowestLevelM,
    double highestLevelM,
    double steamIntoRoomKg,
    long withoutSteamTicks,
    long lengthTicks,
    int points) {}
