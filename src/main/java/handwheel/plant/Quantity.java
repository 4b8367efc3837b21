package handwheel.plant;

import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A true value of the plant: what is, not what a gauge shows. Each has an SI unit; flags are 0 or
 * 1. Pressures of steam and water are absolute, those of air and oil are above the atmosphere; a
 * unit of either kind shows both.
 */
public enum Quantity {
  /** Steam pressure in the drum, absolute. */
  DRUM_PRESSURE("drum.pressure", Unit.PA, p -> p.drum.pressurePa),
  /** Saturation temperature in the drum. */
  DRUM_TEMPERATURE("drum.temperature", Unit.KELVIN, p -> p.drum.saturationTemperatureK.x),
  /** How fast the drum warms. */
  DRUM_HEATING_RATE(
      "drum.heating-rate", Unit.KELVIN_PER_SECOND, p -> p.drum.saturationTemperatureK.dx),
  /** Water level above the middle of the gauge glass. */
  DRUM_LEVEL("drum.level", Unit.METRE, p -> p.drum.levelM),
  /** Water in drum, risers and downcomers. */
  DRUM_WATER_MASS("drum.water-mass", Unit.KILOGRAM, p -> p.drum.waterKg()),
  /** Chloride in the boiler water, as a fraction. */
  DRUM_CHLORIDE("drum.chloride", Unit.PPM, p -> p.drum.chlorideFraction()),
  /** Share of the risers that has lost its water. */
  DRUM_UNCOVERED("drum.uncovered", Unit.ONE, p -> p.drum.dryFraction),
  /** All steam leaving the drum. */
  DRUM_STEAM_FLOW("drum.steam-flow", Unit.KG_PER_S, p -> p.drum.steamKgPerS),
  /** Surface and bottom blow. */
  DRUM_BLOW_FLOW("drum.blow-flow", Unit.KG_PER_S, p -> p.drum.blowKgPerS),
  /** Steam through the air cock or the eased valve. */
  DRUM_VENT_FLOW("drum.vent-flow", Unit.KG_PER_S, p -> p.drum.ventKgPerS),
  /** Steam share of the riser volume. */
  DRUM_RISER_VOID("drum.riser-void", Unit.ONE, p -> p.drum.riserVoid()),
  /** Metal of the most exposed generating tube. */
  TUBE_TEMPERATURE("tube.temperature", Unit.KELVIN, p -> p.tubes.metalK.x),
  /** Creep damage of the exposed tubes; 1 is failed. */
  TUBE_DAMAGE("tube.damage", Unit.ONE, p -> p.tubes.damage.x),
  /** Water through a ruptured generating tube. */
  TUBE_FLOW("tube.flow", Unit.KG_PER_S, p -> p.drum.tubeKgPerS),
  /** Steam through the superheater. */
  SUPERHEATER_FLOW("superheater.flow", Unit.KG_PER_S, p -> p.line.superheaterKgPerS),
  /** Pressure at the superheater outlet, absolute. */
  SUPERHEATER_OUTLET_PRESSURE(
      "superheater.outlet.pressure", Unit.PA, p -> p.line.superheaterOutletPa),
  /** Steam at the outlet, as the thermometer pocket has it. */
  SUPERHEATER_OUTLET_TEMPERATURE(
      "superheater.outlet.temperature", Unit.KELVIN, p -> p.superheater.outletK.x),
  /** Superheater tube metal. */
  SUPERHEATER_METAL_TEMPERATURE(
      "superheater.metal.temperature", Unit.KELVIN, p -> p.superheater.metalK.x),
  /** Creep damage of the superheater; 1 is failed. */
  SUPERHEATER_DAMAGE("superheater.damage", Unit.ONE, p -> p.superheater.damage.x),
  /** Heat taken up by the steam in the superheater. */
  SUPERHEATER_HEAT("superheater.heat", Unit.WATT, p -> p.superheater.steamHeatW),
  /** Opening of the main steam stop. */
  MAIN_STOP_POSITION("main-stop.position", Unit.ONE, p -> p.position(Port.MAIN_STOP)),
  /** Steam through the main stop. */
  MAIN_STOP_FLOW("main-stop.flow", Unit.KG_PER_S, p -> p.line.mainStopKgPerS),
  /** Pressure in the main line after the stop, absolute. */
  MAIN_LINE_PRESSURE("main-line.pressure", Unit.PA, p -> p.line.pressurePa.x),
  /** Steam in the main line. */
  MAIN_LINE_TEMPERATURE("main-line.temperature", Unit.KELVIN, p -> p.line.temperatureK),
  /** Steam the engine and generator take. */
  MAIN_LINE_FLOW("main-line.flow", Unit.KG_PER_S, p -> p.line.engineKgPerS),
  /** Opening of the bulkhead stop. */
  BULKHEAD_STOP_POSITION("bulkhead-stop.position", Unit.ONE, p -> p.position(Port.BULKHEAD_STOP)),
  /** Steam fed back by the other fire room. */
  BULKHEAD_STOP_FLOW("bulkhead-stop.flow", Unit.KG_PER_S, p -> p.line.otherRoomKgPerS),
  /** Opening of the engine throttle. */
  THROTTLE_OPENING("throttle.opening", Unit.ONE, p -> p.line.throttle.x),
  /** Auxiliary steam taken from the drum. */
  AUXILIARY_FLOW("auxiliary.flow", Unit.KG_PER_S, p -> p.auxiliary.flowKgPerS),
  /** Auxiliary steam pressure as a share of 600 psig. */
  AUXILIARY_SHARE("auxiliary.share", Unit.ONE, p -> p.auxiliary.share),
  /** Steam leak between superheater and main stop. */
  LEAK_BEFORE_STOP_FLOW("leak.before-stop.flow", Unit.KG_PER_S, p -> p.line.leakBeforeStopKgPerS),
  /** Steam leak from the main line after the stop. */
  LEAK_MAIN_RUN_FLOW("leak.main-run.flow", Unit.KG_PER_S, p -> p.line.leakMainRunKgPerS),
  /** Saturated steam leak. */
  LEAK_SATURATED_FLOW("leak.saturated.flow", Unit.KG_PER_S, p -> p.line.leakSaturatedKgPerS),
  /** All steam blowing into the fire room. */
  LEAK_ROOM_FLOW("leak.room.flow", Unit.KG_PER_S, p -> p.space.leakKgPerS),
  /** 1 while the superheater safety valve is lifted. */
  SAFETY_SUPERHEATER_LIFTED(
      "safety.superheater.lifted", Unit.ONE, p -> p.safeties.lifted(Safety.SUPERHEATER)),
  /** 1 while the drum 1 safety valve is lifted. */
  SAFETY_DRUM_1_LIFTED("safety.drum-1.lifted", Unit.ONE, p -> p.safeties.lifted(Safety.DRUM_1)),
  /** 1 while the drum 2 safety valve is lifted. */
  SAFETY_DRUM_2_LIFTED("safety.drum-2.lifted", Unit.ONE, p -> p.safeties.lifted(Safety.DRUM_2)),
  /** Steam through the safety valves. */
  SAFETY_FLOW("safety.flow", Unit.KG_PER_S, p -> p.line.safetyKgPerS()),
  /** Feed into the boiler. */
  FEED_FLOW("feed.flow", Unit.KG_PER_S, p -> p.feed.flowKgPerS),
  /** Feed before the economizer. */
  FEED_TEMPERATURE("feed.temperature", Unit.KELVIN, p -> p.feed.temperatureK),
  /** Higher of the two feed pump heads, absolute. */
  FEED_PRESSURE("feed.pressure", Unit.PA, p -> p.feed.pressurePa()),
  /** Feed through the main feed pump. */
  FEED_MAIN_PUMP_FLOW("feed.main-pump.flow", Unit.KG_PER_S, p -> p.feed.mainKgPerS),
  /** Speed of the main feed pump. */
  FEED_MAIN_PUMP_SPEED("feed.main-pump.speed", Unit.ONE, p -> p.feed.mainSpeed.x),
  /** Feed through the emergency feed pump. */
  FEED_EMERGENCY_PUMP_FLOW("feed.emergency-pump.flow", Unit.KG_PER_S, p -> p.feed.emergencyKgPerS),
  /** Speed of the emergency feed pump. */
  FEED_EMERGENCY_PUMP_SPEED("feed.emergency-pump.speed", Unit.ONE, p -> p.feed.emergencySpeed.x),
  /** Opening of the feed check. */
  FEED_CHECK_POSITION("feed-check.position", Unit.ONE, p -> p.position(Port.FEED_CHECK)),
  /** Water in the deaerating tank. */
  DEAERATING_TANK_MASS("deaerating-tank.mass", Unit.KILOGRAM, p -> p.feed.deaeratingTankKg.x),
  /** Water in the deaerating tank. */
  DEAERATING_TANK_TEMPERATURE(
      "deaerating-tank.temperature", Unit.KELVIN, p -> p.feed.deaeratingTankK.x),
  /** Water in the reserve feed tank. */
  RESERVE_TANK_MASS("reserve-tank.mass", Unit.KILOGRAM, p -> p.feed.reserveTankKg.x),
  /** Condensate coming back. */
  CONDENSATE_FLOW("condensate.flow", Unit.KG_PER_S, p -> p.feed.condensateKgPerS.x),
  /** Fuel header, upstream of both trips. */
  FUEL_HEADER_PRESSURE("fuel.header.pressure", Unit.PA_GAUGE, p -> p.fuel.headerPa.x),
  /** Set pressure of the fuel pump's governor. */
  FUEL_GOVERNOR_PRESSURE(
      "fuel.governor.pressure", Unit.PA_GAUGE, p -> p.position(Port.FUEL_GOVERNOR)),
  /** Burner line of the saturated furnace, after its trip. */
  FUEL_BURNER_LINE_SATURATED_PRESSURE(
      "fuel.burner-line.saturated.pressure",
      Unit.PA_GAUGE,
      p -> p.fuel.burnerLinePa(Side.SATURATED)),
  /** Burner line of the superheater furnace, after its trip. */
  FUEL_BURNER_LINE_SUPERHEATER_PRESSURE(
      "fuel.burner-line.superheater.pressure",
      Unit.PA_GAUGE,
      p -> p.fuel.burnerLinePa(Side.SUPERHEATER)),
  /** The higher of the two burner lines. */
  FUEL_BURNER_LINE_PRESSURE(
      "fuel.burner-line.pressure", Unit.PA_GAUGE, p -> p.fuel.higherBurnerLinePa()),
  /** Fuel to all burners. */
  FUEL_FLOW("fuel.flow", Unit.KG_PER_S, p -> p.fuel.burnersKgPerS),
  /** Fuel after the heater. */
  FUEL_TEMPERATURE("fuel.temperature", Unit.KELVIN, p -> p.fuel.temperatureK.x),
  /** Air share at the fuel pump suction. */
  FUEL_AIR_IN_SUCTION("fuel.air-in-suction", Unit.ONE, p -> p.fuel.airInSuction.x),
  /** Water share of the oil at the burners. */
  FUEL_WATER_AT_BURNERS("fuel.water-at-burners", Unit.ONE, p -> p.fuel.waterHeader.x),
  /** Oil in service tank 1. */
  FUEL_TANK_1_MASS("fuel.tank.1.mass", Unit.KILOGRAM, p -> p.fuel.tank1Kg.x),
  /** Oil in service tank 2. */
  FUEL_TANK_2_MASS("fuel.tank.2.mass", Unit.KILOGRAM, p -> p.fuel.tank2Kg.x),
  /** Fuel oil spraying into the fire room. */
  OIL_SPRAY_FLOW("oil-spray.flow", Unit.KG_PER_S, p -> p.fuel.sprayKgPerS),
  /** 1 while burner S1 burns. */
  BURNER_S1_LIT("burner.s1.lit", Unit.ONE, p -> p.front.isLit(Burner.S1) ? 1 : 0),
  /** 1 while burner S2 burns. */
  BURNER_S2_LIT("burner.s2.lit", Unit.ONE, p -> p.front.isLit(Burner.S2) ? 1 : 0),
  /** 1 while burner S3 burns. */
  BURNER_S3_LIT("burner.s3.lit", Unit.ONE, p -> p.front.isLit(Burner.S3) ? 1 : 0),
  /** 1 while burner S4 burns. */
  BURNER_S4_LIT("burner.s4.lit", Unit.ONE, p -> p.front.isLit(Burner.S4) ? 1 : 0),
  /** 1 while burner S5 burns. */
  BURNER_S5_LIT("burner.s5.lit", Unit.ONE, p -> p.front.isLit(Burner.S5) ? 1 : 0),
  /** 1 while burner H1 burns. */
  BURNER_H1_LIT("burner.h1.lit", Unit.ONE, p -> p.front.isLit(Burner.H1) ? 1 : 0),
  /** 1 while burner H2 burns. */
  BURNER_H2_LIT("burner.h2.lit", Unit.ONE, p -> p.front.isLit(Burner.H2) ? 1 : 0),
  /** 1 while burner H3 burns. */
  BURNER_H3_LIT("burner.h3.lit", Unit.ONE, p -> p.front.isLit(Burner.H3) ? 1 : 0),
  /** Fuel through burner S1. */
  BURNER_S1_FUEL_FLOW("burner.s1.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.S1)),
  /** Fuel through burner S2. */
  BURNER_S2_FUEL_FLOW("burner.s2.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.S2)),
  /** Fuel through burner S3. */
  BURNER_S3_FUEL_FLOW("burner.s3.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.S3)),
  /** Fuel through burner S4. */
  BURNER_S4_FUEL_FLOW("burner.s4.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.S4)),
  /** Fuel through burner S5. */
  BURNER_S5_FUEL_FLOW("burner.s5.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.S5)),
  /** Fuel through burner H1. */
  BURNER_H1_FUEL_FLOW("burner.h1.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.H1)),
  /** Fuel through burner H2. */
  BURNER_H2_FUEL_FLOW("burner.h2.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.H2)),
  /** Fuel through burner H3. */
  BURNER_H3_FUEL_FLOW("burner.h3.fuel.flow", Unit.KG_PER_S, p -> p.front.fuelKgPerS(Burner.H3)),
  /** Air of burner S1 over what its oil needs. */
  BURNER_S1_AIR_RATIO("burner.s1.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.S1)),
  /** Air of burner S2 over what its oil needs. */
  BURNER_S2_AIR_RATIO("burner.s2.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.S2)),
  /** Air of burner S3 over what its oil needs. */
  BURNER_S3_AIR_RATIO("burner.s3.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.S3)),
  /** Air of burner S4 over what its oil needs. */
  BURNER_S4_AIR_RATIO("burner.s4.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.S4)),
  /** Air of burner S5 over what its oil needs. */
  BURNER_S5_AIR_RATIO("burner.s5.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.S5)),
  /** Air of burner H1 over what its oil needs. */
  BURNER_H1_AIR_RATIO("burner.h1.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.H1)),
  /** Air of burner H2 over what its oil needs. */
  BURNER_H2_AIR_RATIO("burner.h2.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.H2)),
  /** Air of burner H3 over what its oil needs. */
  BURNER_H3_AIR_RATIO("burner.h3.air-ratio", Unit.ONE, p -> p.front.airRatio(Burner.H3)),
  /** 1 while any burner burns. */
  FURNACE_ANY_LIT("furnace.any.lit", Unit.ONE, p -> p.front.litCount() > 0 ? 1 : 0),
  /** 1 while a burner of the saturated furnace burns. */
  FURNACE_SATURATED_LIT(
      "furnace.saturated.lit", Unit.ONE, p -> p.front.litCount(Side.SATURATED) > 0 ? 1 : 0),
  /** Burners lit in the saturated furnace. */
  FURNACE_SATURATED_BURNERS_LIT(
      "furnace.saturated.burners-lit", Unit.ONE, p -> p.front.litCount(Side.SATURATED)),
  /** Gas in the saturated furnace. */
  FURNACE_SATURATED_GAS_TEMPERATURE(
      "furnace.saturated.gas.temperature", Unit.KELVIN, p -> p.saturated.gasK.x),
  /** Brick face of the saturated furnace. */
  FURNACE_SATURATED_BRICK_TEMPERATURE(
      "furnace.saturated.brick.temperature", Unit.KELVIN, p -> p.saturated.brickFaceK.x),
  /** Brick damage of the saturated furnace. */
  FURNACE_SATURATED_BRICK_DAMAGE(
      "furnace.saturated.brick.damage", Unit.ONE, p -> p.saturated.brickDamage.x),
  /** Unburned oil vapour in the saturated furnace. */
  FURNACE_SATURATED_VAPOUR_MASS(
      "furnace.saturated.vapour.mass", Unit.KILOGRAM, p -> p.saturated.vapourKg.x),
  /** Oil on the floor of the saturated furnace. */
  FURNACE_SATURATED_POOL_MASS(
      "furnace.saturated.pool.mass", Unit.KILOGRAM, p -> p.saturated.poolKg.x),
  /** Share of unused air in the gas of the saturated furnace. */
  FURNACE_SATURATED_UNUSED_AIR(
      "furnace.saturated.unused-air", Unit.ONE, p -> p.saturated.unusedAir.x),
  /** Air over what the burning oil of the saturated furnace needs; 9 without fire. */
  FURNACE_SATURATED_AIR_RATIO(
      "furnace.saturated.air-ratio", Unit.ONE, p -> p.front.sideAirRatio(Side.SATURATED)),
  /** Air through the registers of the saturated furnace. */
  FURNACE_SATURATED_AIR_FLOW(
      "furnace.saturated.air.flow", Unit.KG_PER_S, p -> p.air.sideKgPerS(Side.SATURATED)),
  /** Sea water reaching the saturated furnace. */
  FURNACE_SATURATED_WATER_FLOW(
      "furnace.saturated.water.flow", Unit.KG_PER_S, p -> p.front.sideWaterKgPerS(Side.SATURATED)),
  /** 1 while vapour burns as it forms, with no burner lit. */
  FURNACE_SATURATED_BURNS_AS_FORMED(
      "furnace.saturated.burns-as-formed", Unit.ONE, p -> p.saturated.burnsAsFormed() ? 1 : 0),
  /**
   * Air changes of furnace and uptakes since the last oil root of the saturated furnace was shut.
   */
  FURNACE_SATURATED_PURGE("furnace.saturated.purge", Unit.ONE, p -> p.saturated.purgeChanges.x),
  /** How fast the brick face of the saturated furnace warms. */
  FURNACE_SATURATED_BRICK_HEATING_RATE(
      "furnace.saturated.brick.heating-rate",
      Unit.KELVIN_PER_SECOND,
      p -> p.saturated.brickFaceK.dx),
  /** 1 while a burner of the superheater furnace burns. */
  FURNACE_SUPERHEATER_LIT(
      "furnace.superheater.lit", Unit.ONE, p -> p.front.litCount(Side.SUPERHEATER) > 0 ? 1 : 0),
  /** Burners lit in the superheater furnace. */
  FURNACE_SUPERHEATER_BURNERS_LIT(
      "furnace.superheater.burners-lit", Unit.ONE, p -> p.front.litCount(Side.SUPERHEATER)),
  /** Gas in the superheater furnace. */
  FURNACE_SUPERHEATER_GAS_TEMPERATURE(
      "furnace.superheater.gas.temperature", Unit.KELVIN, p -> p.superheated.gasK.x),
  /** Brick face of the superheater furnace. */
  FURNACE_SUPERHEATER_BRICK_TEMPERATURE(
      "furnace.superheater.brick.temperature", Unit.KELVIN, p -> p.superheated.brickFaceK.x),
  /** Brick damage of the superheater furnace. */
  FURNACE_SUPERHEATER_BRICK_DAMAGE(
      "furnace.superheater.brick.damage", Unit.ONE, p -> p.superheated.brickDamage.x),
  /** Unburned oil vapour in the superheater furnace. */
  FURNACE_SUPERHEATER_VAPOUR_MASS(
      "furnace.superheater.vapour.mass", Unit.KILOGRAM, p -> p.superheated.vapourKg.x),
  /** Oil on the floor of the superheater furnace. */
  FURNACE_SUPERHEATER_POOL_MASS(
      "furnace.superheater.pool.mass", Unit.KILOGRAM, p -> p.superheated.poolKg.x),
  /** Share of unused air in the gas of the superheater furnace. */
  FURNACE_SUPERHEATER_UNUSED_AIR(
      "furnace.superheater.unused-air", Unit.ONE, p -> p.superheated.unusedAir.x),
  /** Air over what the burning oil of the superheater furnace needs; 9 without fire. */
  FURNACE_SUPERHEATER_AIR_RATIO(
      "furnace.superheater.air-ratio", Unit.ONE, p -> p.front.sideAirRatio(Side.SUPERHEATER)),
  /** Air through the registers of the superheater furnace. */
  FURNACE_SUPERHEATER_AIR_FLOW(
      "furnace.superheater.air.flow", Unit.KG_PER_S, p -> p.air.sideKgPerS(Side.SUPERHEATER)),
  /** Sea water reaching the superheater furnace. */
  FURNACE_SUPERHEATER_WATER_FLOW(
      "furnace.superheater.water.flow",
      Unit.KG_PER_S,
      p -> p.front.sideWaterKgPerS(Side.SUPERHEATER)),
  /** 1 while vapour burns as it forms, with no burner lit. */
  FURNACE_SUPERHEATER_BURNS_AS_FORMED(
      "furnace.superheater.burns-as-formed", Unit.ONE, p -> p.superheated.burnsAsFormed() ? 1 : 0),
  /**
   * Air changes of furnace and uptakes since the last oil root of the superheater furnace was shut.
   */
  FURNACE_SUPERHEATER_PURGE(
      "furnace.superheater.purge", Unit.ONE, p -> p.superheated.purgeChanges.x),
  /** How fast the brick face of the superheater furnace warms. */
  FURNACE_SUPERHEATER_BRICK_HEATING_RATE(
      "furnace.superheater.brick.heating-rate",
      Unit.KELVIN_PER_SECOND,
      p -> p.superheated.brickFaceK.dx),
  /** 1 while a tube rupture drowns the saturated furnace in steam. */
  FURNACE_STEAM_WET("furnace.steam-wet", Unit.ONE, p -> p.front.isSteamWet() ? 1 : 0),
  /** Pressure in the furnaces. */
  FURNACE_PRESSURE("furnace.pressure", Unit.PA_GAUGE, p -> p.air.furnacePa),
  /** Speed of blower 1; 1 is rated. */
  BLOWER_1_SPEED("blower.1.speed", Unit.ONE, p -> p.blower1.speed.x),
  /** Air delivered by blower 1; negative blows back. */
  BLOWER_1_AIR_FLOW("blower.1.air.flow", Unit.KG_PER_S, p -> p.blower1.airKgPerS),
  /** Water in the scroll of blower 1. */
  BLOWER_1_WATER_MASS("blower.1.water.mass", Unit.KILOGRAM, p -> p.blower1.scrollWaterKg.x),
  /** 1 while blower 1 is open to steam and not tripped. */
  BLOWER_1_RUNNING("blower.1.running", Unit.ONE, p -> p.blower1.isRunning() ? 1 : 0),
  /** 1 while blower 1 is tripped. */
  BLOWER_1_TRIPPED("blower.1.tripped", Unit.ONE, p -> p.blower1.isTripped() ? 1 : 0),
  /** Opening of the steam valve of blower 1. */
  BLOWER_1_STEAM_VALVE_POSITION(
      "blower.1.steam-valve.position", Unit.ONE, p -> p.position(Port.BLOWER_1_STEAM)),
  /** Speed of blower 2; 1 is rated. */
  BLOWER_2_SPEED("blower.2.speed", Unit.ONE, p -> p.blower2.speed.x),
  /** Air delivered by blower 2; negative blows back. */
  BLOWER_2_AIR_FLOW("blower.2.air.flow", Unit.KG_PER_S, p -> p.blower2.airKgPerS),
  /** Water in the scroll of blower 2. */
  BLOWER_2_WATER_MASS("blower.2.water.mass", Unit.KILOGRAM, p -> p.blower2.scrollWaterKg.x),
  /** 1 while blower 2 is open to steam and not tripped. */
  BLOWER_2_RUNNING("blower.2.running", Unit.ONE, p -> p.blower2.isRunning() ? 1 : 0),
  /** 1 while blower 2 is tripped. */
  BLOWER_2_TRIPPED("blower.2.tripped", Unit.ONE, p -> p.blower2.isTripped() ? 1 : 0),
  /** Opening of the steam valve of blower 2. */
  BLOWER_2_STEAM_VALVE_POSITION(
      "blower.2.steam-valve.position", Unit.ONE, p -> p.position(Port.BLOWER_2_STEAM)),
  /** Air box before the registers. */
  AIR_BOX_PRESSURE("air-box.pressure", Unit.PA_GAUGE, p -> p.air.boxPa.x),
  /** Air through all registers. */
  AIR_FLOW("air.flow", Unit.KG_PER_S, p -> p.air.totalKgPerS),
  /** Sea water carried through the registers. */
  WATER_TO_FURNACES_FLOW("water-to-furnaces.flow", Unit.KG_PER_S, p -> p.air.waterToFurnacesKgPerS),
  /** Black smoke index. */
  STACK_BLACK("stack.black", Unit.ONE, p -> p.smoke.black.x),
  /** White smoke index. */
  STACK_WHITE("stack.white", Unit.ONE, p -> p.smoke.white.x),
  /** Gas after the economizer. */
  STACK_TEMPERATURE("stack.temperature", Unit.KELVIN, p -> p.gas.stackK),
  /** Draft of the stack. */
  STACK_DRAFT("stack.draft", Unit.PA_GAUGE, p -> p.air.draftPa.x),
  /** Heat into the generating tubes. */
  BOILER_EVAPORATION_HEAT("boiler.evaporation-heat", Unit.WATT, p -> p.gas.evaporationW),
  /** Heat into the feed in the economizer. */
  ECONOMIZER_HEAT("economizer.heat", Unit.WATT, p -> p.gas.economizerW),
  /** Feed lost through a hole in the economizer. */
  ECONOMIZER_LEAK_FLOW("economizer-leak.flow", Unit.KG_PER_S, p -> p.feed.economizerLeakKgPerS),
  /** Soot burning in the uptake. */
  UPTAKE_FIRE_FLOW("uptake-fire.flow", Unit.KG_PER_S, p -> p.gas.sootKgPerS()),
  /** Air of the upper level. */
  SPACE_UPPER_TEMPERATURE("space.upper.temperature", Unit.KELVIN, p -> p.space.upper.airK.x),
  /** Steam in the air of the upper level, mole fraction. */
  SPACE_UPPER_VAPOUR("space.upper.vapour", Unit.ONE, p -> p.space.upper.vapourMoleFraction()),
  /** Heat dose of a person who has stood on the upper level all the time. */
  SPACE_UPPER_DOSE("space.upper.dose", Unit.ONE, p -> p.space.upper.dose.x),
  /** Heat dose a second on the upper level. */
  SPACE_UPPER_DOSE_RATE("space.upper.dose-rate", Unit.PER_SECOND, p -> p.space.upper.dose.dx),
  /** Steel around the upper level. */
  SPACE_UPPER_WALL_TEMPERATURE(
      "space.upper.wall.temperature", Unit.KELVIN, p -> p.space.upper.wallK.x),
  /** Soot in the air of the upper level. */
  SPACE_UPPER_SOOT("space.upper.soot", Unit.KG_PER_M3, p -> p.space.upper.sootKgPerM3.x),
  /** How far one sees on the upper level, at most 100 m. */
  SPACE_UPPER_VISIBILITY("space.upper.visibility", Unit.METRE, p -> p.space.upper.visibilityM()),
  /** Air of the lower level. */
  SPACE_LOWER_TEMPERATURE("space.lower.temperature", Unit.KELVIN, p -> p.space.lower.airK.x),
  /** Steam in the air of the lower level, mole fraction. */
  SPACE_LOWER_VAPOUR("space.lower.vapour", Unit.ONE, p -> p.space.lower.vapourMoleFraction()),
  /** Heat dose of a person who has stood on the lower level all the time. */
  SPACE_LOWER_DOSE("space.lower.dose", Unit.ONE, p -> p.space.lower.dose.x),
  /** Heat dose a second on the lower level. */
  SPACE_LOWER_DOSE_RATE("space.lower.dose-rate", Unit.PER_SECOND, p -> p.space.lower.dose.dx),
  /** Steel around the lower level. */
  SPACE_LOWER_WALL_TEMPERATURE(
      "space.lower.wall.temperature", Unit.KELVIN, p -> p.space.lower.wallK.x),
  /** Soot in the air of the lower level. */
  SPACE_LOWER_SOOT("space.lower.soot", Unit.KG_PER_M3, p -> p.space.lower.sootKgPerM3.x),
  /** How far one sees on the lower level, at most 100 m. */
  SPACE_LOWER_VISIBILITY("space.lower.visibility", Unit.METRE, p -> p.space.lower.visibilityM()),
  /** Oxygen in the air of the upper level, mass fraction. */
  SPACE_UPPER_OXYGEN("space.upper.oxygen", Unit.ONE, p -> p.space.oxygen.x),
  /** Carbon monoxide in the air of the upper level, mole fraction. */
  SPACE_UPPER_CARBON_MONOXIDE("space.upper.carbon-monoxide", Unit.PPM, p -> p.gases.upperMonoxide),
  /** Carbon dioxide of a fire in the air of the upper level, mole fraction. */
  SPACE_UPPER_CARBON_DIOXIDE("space.upper.carbon-dioxide", Unit.ONE, p -> p.gases.upperDioxide),
  /** Asphyxiant dose of a person who has stood on the upper level all the time. */
  SPACE_UPPER_GAS_DOSE("space.upper.gas-dose", Unit.ONE, p -> p.gases.upperDose.x),
  /** Asphyxiant dose a second on the upper level. */
  SPACE_UPPER_GAS_DOSE_RATE(
      "space.upper.gas-dose-rate", Unit.PER_SECOND, p -> p.gases.upperDose.dx),
  /** Oxygen in the air of the lower level, mass fraction. */
  SPACE_LOWER_OXYGEN("space.lower.oxygen", Unit.ONE, p -> p.gases.lowerOxygen),
  /** Carbon monoxide in the air of the lower level, mole fraction. */
  SPACE_LOWER_CARBON_MONOXIDE("space.lower.carbon-monoxide", Unit.PPM, p -> p.gases.lowerMonoxide),
  /** Carbon dioxide of a fire in the air of the lower level, mole fraction. */
  SPACE_LOWER_CARBON_DIOXIDE("space.lower.carbon-dioxide", Unit.ONE, p -> p.gases.lowerDioxide),
  /** Asphyxiant dose of a person who has stood on the lower level all the time. */
  SPACE_LOWER_GAS_DOSE("space.lower.gas-dose", Unit.ONE, p -> p.gases.lowerDose.x),
  /** Asphyxiant dose a second on the lower level. */
  SPACE_LOWER_GAS_DOSE_RATE(
      "space.lower.gas-dose-rate", Unit.PER_SECOND, p -> p.gases.lowerDose.dx),
  /** 1 while oil burns on the deck plates. */
  FIRE_BURNING("fire.burning", Unit.ONE, p -> p.fire.isBurning() ? 1 : 0),
  /** Heat release of the oil fire. */
  FIRE_HEAT("fire.heat", Unit.WATT, p -> p.fire.heatW.x),
  /** Oil on the deck plates. */
  FIRE_OIL_MASS("fire.oil.mass", Unit.KILOGRAM, p -> p.fire.deckOilKg.x),
  /** Water in the bilge. */
  BILGE_VOLUME("bilge.volume", Unit.CUBIC_METRE, p -> p.bilge.waterM3.x),
  /** Depth of water in the bilge. */
  BILGE_DEPTH("bilge.depth", Unit.METRE, p -> p.bilge.depthM());

  private final String id;
  private final Unit unit;

  @SuppressWarnings("ImmutableEnumChecker") // a lambda without state
  private final ToDoubleFunction<Plant> reading;

  Quantity(String id, Unit unit, ToDoubleFunction<Plant> reading) {
    this.id = id;
    this.unit = unit;
    this.reading = reading;
  }

  /** Index of this one in arrays inside the package; never leaves it. */
  @SuppressWarnings("EnumOrdinal")
  int index() {
    return ordinal();
  }

  /**
   * Returns the quantity's name in scripts and ship files.
   *
   * @return lower-kebab words joined by dots, such as {@code drum.pressure}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the unit of the true value.
   *
   * @return a unit whose factor is 1, or {@link Unit#PPM} whose value is a fraction
   */
  public Unit unit() {
    return unit;
  }

  /**
   * Tells whether a figure in a unit can be compared with this quantity.
   *
   * @param shown the unit of a gauge or of a script
   * @return true if the dimensions agree, gauge and absolute pressure counting as one
   */
  public boolean shows(Unit shown) {
    return shown.dimension() == unit.dimension() || PressureUnits.areBoth(shown, unit);
  }

  /**
   * Converts a true value to a unit.
   *
   * @param si true value of this quantity
   * @param shown a unit this quantity {@link #shows}
   * @return the figure in that unit
   */
  public double in(Unit shown, double si) {
    return shown.fromSi(si + PressureUnits.atmosphereBetween(unit, shown));
  }

  /**
   * Converts a measure to a true value of this quantity.
   *
   * @param measure such as {@code 600 psig}
   * @return the SI value, or empty if the unit does not fit
   */
  public OptionalDouble si(Measure measure) {
    return shows(measure.unit())
        ? OptionalDouble.of(measure.si() + PressureUnits.atmosphereBetween(measure.unit(), unit))
        : OptionalDouble.empty();
  }

  double read(Plant plant) {
    return reading.applyAsDouble(plant);
  }

  /**
   * Finds a quantity by its name.
   *
   * @param id such as {@code drum.level}
   * @return the quantity, or empty
   */
  public static Optional<Quantity> ofId(String id) {
    return Arrays.stream(values()).filter(q -> q.id.equals(id)).findFirst();
  }
}
