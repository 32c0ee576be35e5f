/**
 * Difference between dew and bubble temperature of a refrigerant at one pressure.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Pressure read on the gauge. In psig, in SI kPa.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Glide
 * @customfunction
 */
function OUNCE_GLIDE(refrigerant, pressure, elevation, units) {
  return Ouncewise.call('GLIDE', arguments);
}

/**
 * Global warming potential over 100 years, on a stated basis.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {string} basis Whose figures: rules differ, so none is assumed. One of: AR4, AR5, AR6, US exchange value, EU 2024/573.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Warming potential, carbon dioxide = 1
 * @customfunction
 */
function OUNCE_GWP(refrigerant, basis, units) {
  return Ouncewise.call('GWP', arguments);
}

/**
 * Heat taken up by boiling: enthalpy of the dew-point vapor less that of the bubble-point liquid.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} temperature Saturation temperature. In degF, in SI degC.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Enthalpy difference
 * @customfunction
 */
function OUNCE_LATENTHEAT(refrigerant, temperature, units) {
  return Ouncewise.call('LATENTHEAT', arguments);
}

/**
 * Which gases a standing pressure and temperature fit within the instruments, and whether air is suspected.
 *
 * @param {number|string} pressure Standing pressure, unit off and settled. In psig, in SI kPa.
 * @param {number|string} temperature Temperature of every part of the unit and of the air around it. In degF, in SI degC.
 * @param {number|string} [gauge_accuracy] Accuracy of the gauge, plus or minus. In psi, in SI kPa. Allowed more than 0 psi. 3.5001 psi if left out.
 * @param {number|string} [probe_accuracy] Accuracy of the thermometer, plus or minus. In degF, in SI K. Allowed more than 0 degF. 1.8 degF if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} Gases that fit, best first; then gases that would fit if air had come in
 * @customfunction
 */
function OUNCE_LIKELYREFRIGERANT(pressure, temperature, gauge_accuracy, probe_accuracy, elevation, units) {
  return Ouncewise.call('LIKELYREFRIGERANT', arguments);
}

/**
 * Density of the liquid: saturated at a temperature, or subcooled when a pressure is given.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} temperature Temperature of the liquid. In degF, in SI degC.
 * @param {number|string} [pressure] Pressure read on the gauge, for subcooled liquid. Left out: saturated liquid. In psig, in SI kPa. May be left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Density of the liquid
 * @customfunction
 */
function OUNCE_LIQUIDDENSITY(refrigerant, temperature, pressure, elevation, units) {
  return Ouncewise.call('LIQUIDDENSITY', arguments);
}

/**
 * One fact about a refrigerant, or where that fact comes from.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {string} fact Which fact. One of: safety class, composition, type, names, oil, molar mass, critical temperature, critical pressure, boiling point, glide, odp, flammability limit, cylinder, quality, doubt, model, range.
 * @param {boolean|string} [source] Yes gives the source of the fact instead of the fact. Yes or no. no if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number|string} The fact, or its source
 * @customfunction
 */
function OUNCE_REFRIGERANTFACT(refrigerant, fact, source, units) {
  return Ouncewise.call('REFRIGERANTFACT', arguments);
}

/**
 * Every refrigerant the functions know, with what a technician asks first.
 *
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row a refrigerant
 * @customfunction
 */
function OUNCE_REFRIGERANTLIST(units) {
  return Ouncewise.call('REFRIGERANTLIST', arguments);
}

/**
 * Gauge pressure at which a refrigerant boils or condenses at a temperature.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} temperature Temperature of the refrigerant. In degF, in SI degC.
 * @param {string} [curve] dew (vapor side, used if left out) or bubble (liquid side). One and the same for a pure gas. One of: dew, bubble. dew if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Saturation pressure on a gauge at that elevation
 * @customfunction
 */
function OUNCE_SATPRESSURE(refrigerant, temperature, curve, elevation, units) {
  return Ouncewise.call('SATPRESSURE', arguments);
}

/**
 * Saturation temperature of a refrigerant at a gauge pressure.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Pressure read on the gauge. In psig, in SI kPa.
 * @param {string} [curve] dew (vapor side, used if left out) or bubble (liquid side). One and the same for a pure gas. One of: dew, bubble. dew if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Saturation temperature
 * @customfunction
 */
function OUNCE_SATTEMP(refrigerant, pressure, curve, elevation, units) {
  return Ouncewise.call('SATTEMP', arguments);
}

/**
 * Density of the vapor: saturated at a temperature, or superheated when a pressure is given.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} temperature Temperature of the vapor. In degF, in SI degC.
 * @param {number|string} [pressure] Pressure read on the gauge, for superheated vapor. Left out: saturated vapor. In psig, in SI kPa. May be left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Density of the vapor
 * @customfunction
 */
function OUNCE_VAPORDENSITY(refrigerant, temperature, pressure, elevation, units) {
  return Ouncewise.call('VAPORDENSITY', arguments);
}

/**
 * Amps, corrected for the volts, against the rated load. No verdict without volts or outside their band.
 *
 * @param {number|string} amps Running amps; the whole unit against its nameplate, or the compressor against its own. In A. Allowed from 0 A to 100 A.
 * @param {number|string} rated_amps Rated load amps of the same part. In A. Allowed from 0 A more than 0 A to 100 A.
 * @param {number|string} [volts] Supply at the unit while it runs. In V. Allowed from 0 V to 600 V. May be left out.
 * @param {string} [rated_volts] Rated volts as on the nameplate, such as 115 or 208/230. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Normal, High, Low or Refused, then the share of the rated load.
 * @customfunction
 */
function OUNCE_AMPSCHECK(amps, rated_amps, volts, rated_volts, units) {
  return Ouncewise.call('AMPSCHECK', arguments);
}

/**
 * Capacitor against its label, from a meter or from running amps and volts. Discharge it before touching.
 *
 * @param {string} label What is printed on it, such as 35, 35 uF or 88-108. One section of a dual capacitor.
 * @param {number|string} [measured] Meter reading, capacitor off and discharged. In uF. Allowed from 0 uF to 1000 uF. May be left out.
 * @param {number|string} [amps] Through the wire from the capacitor to the start winding, running. In A. Allowed from 0 A to 100 A. May be left out.
 * @param {number|string} [volts] Across the capacitor, running. In V. Allowed more than 0 V to 1000 V. May be left out.
 * @param {number|string} [frequency] Frequency of the supply. 60 Hz if left out. In Hz. Allowed from 30 Hz to 90 Hz. 60 Hz if left out.
 * @param {number|string} [tolerance] Allowed either way of a single label value. 6 % if left out. In %. Allowed from 0 % to 25 %. 6 % if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Good, Weak, High or Refused, then the capacitance and what the label allows.
 * @customfunction
 */
function OUNCE_CAPACITORCHECK(label, measured, amps, volts, frequency, tolerance, units) {
  return Ouncewise.call('CAPACITORCHECK', arguments);
}

/**
 * Ranked causes from whatever was measured, with evidence, what was not measured and the reading to take next. Works without gauges.
 *
 * @param {number|string} [return_temperature] Air that goes into the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {number|string} [supply_temperature] Air that comes out of the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {number|string} [return_wet_bulb] Air that goes into the indoor coil, wet bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {string} [filter] Air filter: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [indoor_coil] Indoor coil: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [outdoor_coil] Outdoor coil: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [vents] Vents and ducts, or the grilles of a unit without ducts: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [fan] Fans: clean, dirty, blocked (does not turn freely) or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [frost] Frost on the indoor coil: none, inlet only, part, full or not seen. One of: none, inlet only, part, full, not seen. May be left out.
 * @param {number|string} [minutes_since_change] Minutes since the start or the last change, cleaning or charge step. In min. Allowed from 0 min to 600 min. May be left out.
 * @param {number|string} [volts] Supply at the unit while it runs. In V. Allowed from 0 V to 600 V. May be left out.
 * @param {string} [rated_volts] Rated volts as on the nameplate, such as 115 or 208/230. May be left out.
 * @param {number|string} [outdoor_temperature] Air that goes into the outdoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {number|string} [suction_line] Suction line at the compressor. In degF, in SI degC. Allowed from -40 degF to 350 degF. May be left out.
 * @param {number|string} [liquid_line] Liquid line before the capillary tube. In degF, in SI degC. Allowed from -40 degF to 350 degF. May be left out.
 * @param {number|string} [discharge_line] Discharge line about 6 in from the compressor. In degF, in SI degC. Allowed from -40 degF to 350 degF. May be left out.
 * @param {number|string} [condenser_air] Air that leaves the outdoor coil. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {number|string} [amps] Running amps. In A. Allowed from 0 A to 100 A. May be left out.
 * @param {number|string} [rated_amps] Rated load amps of the same part. In A. Allowed from 0 A more than 0 A to 100 A. May be left out.
 * @param {string} [refrigerant] Refrigerant on the nameplate, such as R-410A, 410a or propane. May be left out.
 * @param {number|string} [suction_pressure] Suction pressure, compressor running. In psig, in SI kPa. May be left out.
 * @param {number|string} [liquid_pressure] Liquid or discharge side, compressor running. In psig, in SI kPa. May be left out.
 * @param {string} [standing] The verdict of STANDINGCHECK. May be left out.
 * @param {string} [metering] capillary (used if left out), orifice or valve. One of: capillary, orifice, valve. capillary if left out.
 * @param {number|string} [gauge_accuracy] What the gauge may be wrong by, plus or minus. 3.5 psi if left out. In psi, in SI kPa. Allowed from 0 psi to 29.008 psi. 3.5 psi if left out.
 * @param {number|string} [liquid_gauge_accuracy] What the liquid-side gauge may be wrong by, plus or minus. 7 psi if left out. In psi, in SI kPa. Allowed from 0 psi to 29.008 psi. 7 psi if left out.
 * @param {number|string} [probe_accuracy] What a temperature probe may be wrong by, plus or minus. 1.8 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1.8 degF if left out.
 * @param {number|string} [air_accuracy] What each air thermometer may be wrong by, plus or minus. 1 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1 degF if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} Likeliest cause first. Confidence: seen, likely, possible, unlikely; unproven behind a gate nobody looked at; not judged behind a closed one.
 * @customfunction
 */
function OUNCE_CAUSES(return_temperature, supply_temperature, return_wet_bulb, filter, indoor_coil, outdoor_coil, vents, fan, frost, minutes_since_change, volts, rated_volts, outdoor_temperature, suction_line, liquid_line, discharge_line, condenser_air, amps, rated_amps, refrigerant, suction_pressure, liquid_pressure, standing, metering, gauge_accuracy, liquid_gauge_accuracy, probe_accuracy, air_accuracy, elevation, units) {
  return Ouncewise.call('CAUSES', arguments);
}

/**
 * Compression ratio: discharge over suction, both counted from vacuum.
 *
 * @param {number|string} suction_pressure Suction pressure, compressor running. In psig, in SI kPa.
 * @param {number|string} discharge_pressure High side, compressor running. In psig, in SI kPa.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Compression ratio
 * @customfunction
 */
function OUNCE_COMPRESSIONRATIO(suction_pressure, discharge_pressure, elevation, units) {
  return Ouncewise.call('COMPRESSIONRATIO', arguments);
}

/**
 * Volts lost in a two-wire copper cord, there and back.
 *
 * @param {number|string} amps Running amps of the unit. In A. Allowed from 0 A to 100 A.
 * @param {number|string} length Length of the cord, one way. In ft, in SI m. Allowed from 0 ft to 3280.8 ft.
 * @param {number|string} wire_gauge American wire gauge of the conductors: 6, 8, 10, 12, 14, 16 or 18. Allowed from 6 to 18.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Volts lost
 * @customfunction
 */
function OUNCE_CORDDROP(amps, length, wire_gauge, units) {
  return Ouncewise.call('CORDDROP', arguments);
}

/**
 * Whether the discharge line is too hot for the oil.
 *
 * @param {number|string} line_temperature Discharge line about 6 in from the compressor. In degF, in SI degC. Allowed from -40 degF to 350 degF.
 * @param {number|string} [probe_accuracy] What a temperature probe may be wrong by, plus or minus. 1.8 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1.8 degF if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Normal, Too hot or Within doubt, then the limit.
 * @customfunction
 */
function OUNCE_DISCHARGECHECK(line_temperature, probe_accuracy, units) {
  return Ouncewise.call('DISCHARGECHECK', arguments);
}

/**
 * By how much a superheat or subcooling may be wrong because of gauge and probe.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Pressure read on the gauge. In psig, in SI kPa.
 * @param {string} [curve] dew for superheat (used if left out), bubble for subcooling. One of: dew, bubble. dew if left out.
 * @param {number|string} [gauge_accuracy] What the gauge may be wrong by, plus or minus. 3.5 psi if left out. In psi, in SI kPa. Allowed from 0 psi to 29.008 psi. 3.5 psi if left out.
 * @param {number|string} [probe_accuracy] What a temperature probe may be wrong by, plus or minus. 1.8 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1.8 degF if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Half-width: 2.4 means plus or minus 2.4.
 * @customfunction
 */
function OUNCE_DOUBT(refrigerant, pressure, curve, gauge_accuracy, probe_accuracy, elevation, units) {
  return Ouncewise.call('DOUBT', arguments);
}

/**
 * Whether the evaporator runs too cold (ice), low, in range or high for the air it gets.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Suction pressure, compressor running. In psig, in SI kPa.
 * @param {number|string} return_temperature Air that goes into the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {string} [ready] The verdict of READYCHECK for the same readings. Refused unless it begins with "Ready"; without it nothing is said about charge. May be left out.
 * @param {number|string} [gauge_accuracy] What the gauge may be wrong by, plus or minus. 3.5 psi if left out. In psi, in SI kPa. Allowed from 0 psi to 29.008 psi. 3.5 psi if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Too cold, Low, In range, High, Within doubt or Refused, then coil and aim.
 * @customfunction
 */
function OUNCE_EVAPCHECK(refrigerant, pressure, return_temperature, ready, gauge_accuracy, elevation, units) {
  return Ouncewise.call('EVAPCHECK', arguments);
}

/**
 * Running amps of a single-phase unit from capacity and efficiency on its label, when rated amps cannot be read.
 *
 * @param {number|string} capacity Cooling capacity. In Btu/h, in SI W. Allowed more than 0 Btu/h to 341210 Btu/h.
 * @param {number|string} efficiency EER: Btu/h of cooling for each watt. In Btu/Wh, in SI W/W. Allowed more than 0 Btu/Wh to 68.243 Btu/Wh.
 * @param {number|string} volts Supply at the unit. In V. Allowed more than 0 V to 600 V.
 * @param {number|string} [power_factor] Power factor. 0.97 if left out. Allowed more than 0 to 1. 0.97 if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Running amps at the rated load
 * @customfunction
 */
function OUNCE_EXPECTEDAMPS(capacity, efficiency, volts, power_factor, units) {
  return Ouncewise.call('EXPECTEDAMPS', arguments);
}

/**
 * Condensing saturation temperature to expect for the outdoor air.
 *
 * @param {number|string} outdoor_temperature Air that goes into the outdoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} [difference] Saturation less outdoor air. 25 degF if left out; 20 for efficient units, 30 for old ones. In degF, in SI K. Allowed more than 0 degF to 60 degF. 25 degF if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Expected condensing saturation
 * @customfunction
 */
function OUNCE_EXPECTEDCONDENSING(outdoor_temperature, difference, units) {
  return Ouncewise.call('EXPECTEDCONDENSING', arguments);
}

/**
 * Discharge temperature of the ideal cycle for the suction gas and the pressures measured.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} suction_pressure Suction pressure, compressor running. In psig, in SI kPa.
 * @param {number|string} suction_line Suction line at the compressor. In degF, in SI degC. Allowed from -40 degF to 350 degF.
 * @param {number|string} discharge_pressure High side, compressor running. In psig, in SI kPa.
 * @param {number|string} [efficiency] Isentropic efficiency of the compressor. 70 % if left out. In %. Allowed more than 0 % to 100 %. 70 % if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Without heat lost from the shell: a pipe outside reads lower.
 * @customfunction
 */
function OUNCE_EXPECTEDDISCHARGE(refrigerant, suction_pressure, suction_line, discharge_pressure, efficiency, elevation, units) {
  return Ouncewise.call('EXPECTEDDISCHARGE', arguments);
}

/**
 * Evaporator saturation temperature to expect for the air that goes in.
 *
 * @param {number|string} return_temperature Air that goes into the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} [difference] Return air less saturation. 35 degF if left out; a healthy unit lies within 5 of it. In degF, in SI K. Allowed more than 0 degF to 60 degF. 35 degF if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Expected evaporator saturation
 * @customfunction
 */
function OUNCE_EXPECTEDEVAP(return_temperature, difference, units) {
  return Ouncewise.call('EXPECTEDEVAP', arguments);
}

/**
 * Whether the readings may be judged, or what to do first: supply, ice, dirt, weather, settling time.
 *
 * @param {string} [filter] Air filter: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [indoor_coil] Indoor coil: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [outdoor_coil] Outdoor coil: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [vents] Vents and ducts, or the grilles of a unit without ducts: clean, dirty, blocked or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [fan] Fans: clean, dirty, blocked (does not turn freely) or not seen. One of: clean, dirty, blocked, not seen. May be left out.
 * @param {string} [frost] Frost on the indoor coil: none, inlet only, part, full or not seen. One of: none, inlet only, part, full, not seen. May be left out.
 * @param {number|string} [minutes_since_change] Minutes since the start or the last change, cleaning or charge step. In min. Allowed from 0 min to 600 min. May be left out.
 * @param {number|string} [volts] Supply at the unit while it runs. In V. Allowed from 0 V to 600 V. May be left out.
 * @param {string} [rated_volts] Rated volts as on the nameplate, such as 115 or 208/230. May be left out.
 * @param {number|string} [outdoor_temperature] Air that goes into the outdoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Ready, Fix supply, Thaw first, Clean first, Cold outdoors, Look first or Wait, then the reason.
 * @customfunction
 */
function OUNCE_READYCHECK(filter, indoor_coil, outdoor_coil, vents, fan, frost, minutes_since_change, volts, rated_volts, outdoor_temperature, units) {
  return Ouncewise.call('READYCHECK', arguments);
}

/**
 * Temperature split with its doubt against the published target, or a rough band without a wet bulb.
 *
 * @param {number|string} return_temperature Air that goes into the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} supply_temperature Air that comes out of the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} [return_wet_bulb] Air that goes into the indoor coil, wet bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {string} [ready] The verdict of READYCHECK for the same readings. Refused unless it begins with "Ready"; without it nothing is said about charge. May be left out.
 * @param {string} [role] Whose tolerance applies: installer (used if left out) or verifier. One of: installer, verifier. installer if left out.
 * @param {number|string} [probe_accuracy] What each air thermometer may be wrong by, plus or minus. 1 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1 degF if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Normal, High (little air), Low (capacity), Within doubt or Refused, then split and target.
 * @customfunction
 */
function OUNCE_SPLITCHECK(return_temperature, supply_temperature, return_wet_bulb, ready, role, probe_accuracy, units) {
  return Ouncewise.call('SPLITCHECK', arguments);
}

/**
 * What gas a standing pressure says is inside, never how much: compared with the bubble point at ambient.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Pressure with the compressor off, all parts at one temperature. In psig, in SI kPa.
 * @param {number|string} ambient_temperature Temperature of the parts of the unit and the air around them. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} [off_minutes] Minutes since the compressor stopped. Refused when blank or under 30. In min. Allowed from 0 min to 525600 min. May be left out.
 * @param {number|string} [parts_spread] Warmest less coldest part of the circuit. Warned about above 5 degF. In degF, in SI K. Allowed from 0 degF to 150 degF. May be left out.
 * @param {number|string} [gauge_accuracy] What the gauge may be wrong by, plus or minus. 3.5 psi if left out. In psi, in SI kPa. Allowed from 0 psi to 29.008 psi. 3.5 psi if left out.
 * @param {number|string} [probe_accuracy] What a temperature probe may be wrong by, plus or minus. 1.8 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1.8 degF if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Matches, Non-condensables, Mismatch, Empty, Within doubt or Refused, then the reason. More than 5 % off: add nothing.
 * @customfunction
 */
function OUNCE_STANDINGCHECK(refrigerant, pressure, ambient_temperature, off_minutes, parts_spread, gauge_accuracy, probe_accuracy, elevation, units) {
  return Ouncewise.call('STANDINGCHECK', arguments);
}

/**
 * Subcooling of the liquid line: bubble point at the liquid pressure less the line temperature.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Liquid-side pressure, running. In psig, in SI kPa.
 * @param {number|string} line_temperature Liquid line where the pressure is read. In degF, in SI degC. Allowed from -40 degF to 350 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Subcooling. Negative when the line reads warmer than the bubble point.
 * @customfunction
 */
function OUNCE_SUBCOOLING(refrigerant, pressure, line_temperature, elevation, units) {
  return Ouncewise.call('SUBCOOLING', arguments);
}

/**
 * Superheat of the suction line: line temperature less the dew point at the suction pressure.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Suction pressure, compressor running. In psig, in SI kPa.
 * @param {number|string} line_temperature Suction line where the pressure is read. In degF, in SI degC. Allowed from -40 degF to 350 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Superheat. Negative when the line reads colder than the dew point.
 * @customfunction
 */
function OUNCE_SUPERHEAT(refrigerant, pressure, line_temperature, elevation, units) {
  return Ouncewise.call('SUPERHEAT', arguments);
}

/**
 * Superheat with its doubt against the target for this weather.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} pressure Suction pressure, compressor running. In psig, in SI kPa.
 * @param {number|string} line_temperature Suction line where the pressure is read. In degF, in SI degC. Allowed from -40 degF to 350 degF.
 * @param {string} [ready] The verdict of READYCHECK for the same readings. Refused unless it begins with "Ready"; without it nothing is said about charge. May be left out.
 * @param {number|string} [return_wet_bulb] Air that goes into the indoor coil, wet bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {number|string} [outdoor_temperature] Air that goes into the outdoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF. May be left out.
 * @param {string} [metering] capillary (used if left out), orifice or valve. One of: capillary, orifice, valve. capillary if left out.
 * @param {string} [role] Whose tolerance applies: installer (used if left out) or verifier. One of: installer, verifier. installer if left out.
 * @param {number|string} [gauge_accuracy] What the gauge may be wrong by, plus or minus. 3.5 psi if left out. In psi, in SI kPa. Allowed from 0 psi to 29.008 psi. 3.5 psi if left out.
 * @param {number|string} [probe_accuracy] What a temperature probe may be wrong by, plus or minus. 1.8 degF if left out. In degF, in SI K. Allowed from 0 degF to 20 degF. 1.8 degF if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} On target, High, Low, Within doubt or Refused, then superheat and target.
 * @customfunction
 */
function OUNCE_SUPERHEATCHECK(refrigerant, pressure, line_temperature, ready, return_wet_bulb, outdoor_temperature, metering, role, gauge_accuracy, probe_accuracy, elevation, units) {
  return Ouncewise.call('SUPERHEATCHECK', arguments);
}

/**
 * Temperature split that the right airflow gives, for 70 to 84 degF return air (published table, from memory).
 *
 * @param {number|string} return_temperature Air that goes into the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} return_wet_bulb Air that goes into the indoor coil, wet bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Target split; a measured one passes within 3 degF (verifier 4).
 * @customfunction
 */
function OUNCE_TARGETSPLIT(return_temperature, return_wet_bulb, units) {
  return Ouncewise.call('TARGETSPLIT', arguments);
}

/**
 * Superheat that a right charge gives a capillary-tube or orifice unit in this weather.
 *
 * @param {number|string} return_wet_bulb Air that goes into the indoor coil, wet bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} outdoor_temperature Air that goes into the outdoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {string} [metering] capillary (used if left out), orifice or valve. One of: capillary, orifice, valve. capillary if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Target superheat, good to about ± 3 degF. Refused below 5 degF, below 55 degF outdoors and for a valve.
 * @customfunction
 */
function OUNCE_TARGETSUPERHEAT(return_wet_bulb, outdoor_temperature, metering, units) {
  return Ouncewise.call('TARGETSUPERHEAT', arguments);
}

/**
 * Temperature split: return air less supply air, dry bulb.
 *
 * @param {number|string} return_temperature Air that goes into the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {number|string} supply_temperature Air that comes out of the indoor coil, dry bulb. In degF, in SI degC. Allowed from -20 degF to 140 degF.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Split. Negative when supply is warmer.
 * @customfunction
 */
function OUNCE_TEMPSPLIT(return_temperature, supply_temperature, units) {
  return Ouncewise.call('TEMPSPLIT', arguments);
}

/**
 * Whether the supply may run the unit: band, frequency, legs, and drop from idle to running.
 *
 * @param {number|string} volts Supply at the unit while it runs. In V. Allowed from 0 V to 600 V.
 * @param {string} rated_volts Rated volts as on the nameplate, such as 115 or 208/230.
 * @param {number|string} [idle_volts] The same before the unit starts. In V. Allowed from 0 V more than 0 V to 600 V. May be left out.
 * @param {number|string} [second_leg] Second leg, measured like volts. In V. Allowed from 0 V to 600 V. May be left out.
 * @param {number|string} [third_leg] Third leg of a three-phase supply. In V. Allowed from 0 V to 600 V. May be left out.
 * @param {number|string} [frequency] Measured frequency, for a generator or inverter. In Hz. Allowed from 30 Hz to 90 Hz. May be left out.
 * @param {number|string} [rated_frequency] Frequency of the supply. 60 Hz if left out. In Hz. Allowed from 30 Hz to 90 Hz. 60 Hz if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} In band, Low, High, Frequency, Unbalanced or Drop, then the figures.
 * @customfunction
 */
function OUNCE_VOLTAGECHECK(volts, rated_volts, idle_volts, second_leg, third_leg, frequency, rated_frequency, units) {
  return Ouncewise.call('VOLTAGECHECK', arguments);
}

/**
 * What had been left in a unit that was topped up, by weight, to a right charge.
 *
 * @param {number|string} nameplate Full charge printed on the unit, by weight. Fluid ounces are refused. In oz, in SI g. Allowed more than 0 oz to 1763.7 oz.
 * @param {number|string} added Weighed in until the charge was right. Leave hose losses out. In oz, in SI g. Allowed from 0 oz.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Charge found before topping up.
 * @customfunction
 */
function OUNCE_CHARGEFOUND(nameplate, added, units) {
  return Ouncewise.call('CHARGEFOUND', arguments);
}

/**
 * Every step from here to the stop, with what to watch at each: the most that may be needed.
 *
 * @param {number|string} nameplate Full charge printed on the unit, by weight. Fluid ounces are refused. In oz, in SI g. Allowed more than 0 oz to 1763.7 oz.
 * @param {string} mass_basis How it is known what the unit holds: "nameplate weighed in" for a unit emptied before, "residual weighed" when what was left has been weighed, or "unknown". One of: nameplate weighed in, residual weighed, unknown.
 * @param {number|string} added Weighed into the unit so far. Type 0 before the first step; a blank is not zero. In oz, in SI g. Allowed from 0 oz to 1763.7 oz.
 * @param {number|string} [found] In the unit before this charging, as weighed. Needed for "residual weighed". In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {number|string} [suction_saturation] Saturation temperature of the suction pressure now, from SATTEMP; for a blend with glide the middle between dew and bubble. In degF, in SI degC. Allowed from -60 degF to 150 degF. May be left out.
 * @param {number|string} [aim] Saturation temperature to come to, from EXPECTEDEVAP. 40 degF if left out. In degF, in SI degC. Allowed from 20 degF to 75 degF. May be left out.
 * @param {number|string} [minutes_since_change] Since the start or the last change. Less than 15 minutes is refused. In min. Allowed from 0 min. May be left out.
 * @param {string} [ready] The answer of READYCHECK. Anything that does not begin with "Ready" is refused. May be left out.
 * @param {number|string} [scale_step] Smallest step the scale shows. 0.1 oz if left out. In oz, in SI g. Allowed more than 0 oz to 35.274 oz. 0.1 oz if left out.
 * @param {number|string} [hose] Held in the hoses and still able to run into the unit; counted as if it were inside. See HOSECONTENT. In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {number|string} [margin] For a slow leak: what is still to be added once the reading has come to the aim. Never goes beyond the nameplate. A capillary-tube unit suffers from overcharge. In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {string} [refrigerant] Refrigerant on the nameplate, such as R-410A, 410a or propane. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row per step, then the stop.
 * @customfunction
 */
function OUNCE_CHARGEPLAN(nameplate, mass_basis, added, found, suction_saturation, aim, minutes_since_change, ready, scale_step, hose, margin, refrigerant, units) {
  return Ouncewise.call('CHARGEPLAN', arguments);
}

/**
 * What may still go in before the nameplate charge is reached; refused when the starting mass is unknown.
 *
 * @param {number|string} nameplate Full charge printed on the unit, by weight. Fluid ounces are refused. In oz, in SI g. Allowed more than 0 oz to 1763.7 oz.
 * @param {string} mass_basis How it is known what the unit holds: "nameplate weighed in" for a unit emptied before, "residual weighed" when what was left has been weighed, or "unknown". One of: nameplate weighed in, residual weighed, unknown.
 * @param {number|string} added Weighed into the unit so far. Type 0 before the first step; a blank is not zero. In oz, in SI g. Allowed from 0 oz to 1763.7 oz.
 * @param {number|string} [found] In the unit before this charging, as weighed. Needed for "residual weighed". In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {number|string} [hose] Held in the hoses and still able to run into the unit; counted as if it were inside. See HOSECONTENT. In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Room up to the nameplate charge.
 * @customfunction
 */
function OUNCE_CHARGEROOM(nameplate, mass_basis, added, found, hose, units) {
  return Ouncewise.call('CHARGEROOM', arguments);
}

/**
 * How far a recovery cylinder may be filled; refused for another gas inside, an overdue test, a weak or a disposable cylinder.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} water_capacity Stamped WC on the collar. In lb, in SI kg. Allowed more than 0 lb to 4409.2 lb.
 * @param {string} [give] net: most refrigerant; gross: what the scale may show; room: what may still go in; regulation: the listed filling density alone; liquid full: temperature at which the fill has no vapor space left. One of: net, gross, room, regulation, liquid full. net if left out.
 * @param {number|string} [tare] Empty weight; needed for gross and room. In lb, in SI kg. Allowed more than 0 lb to 4409.2 lb. May be left out.
 * @param {number|string} [gross] On the scale now; needed for room. For "liquid full" the net limit is taken if left out. In lb, in SI kg. Allowed more than 0 lb to 4409.2 lb. May be left out.
 * @param {string} [contains] Gas that is in the cylinder already. May be left out.
 * @param {string} [kind] virgin, reclaimed, recovery or nitrogen. Only a recovery cylinder is filled. One of: virgin, reclaimed, recovery, nitrogen. May be left out.
 * @param {number|string} [service_pressure] The figure in the specification mark, such as 260 or 400. In psi, in SI kPa. Allowed more than 0 psi. May be left out.
 * @param {Date|string} [test_due] Day on which the next pressure test is due. A date. May be left out.
 * @param {Date|string} [on_date] Day of the fill; needed with test_due. A date. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number|string} A weight, or a temperature for "liquid full".
 * @customfunction
 */
function OUNCE_CYLINDERLIMIT(refrigerant, water_capacity, give, tare, gross, contains, kind, service_pressure, test_due, on_date, units) {
  return Ouncewise.call('CYLINDERLIMIT', arguments);
}

/**
 * What a cylinder holds, from its gross weight and its tare; a gross weight below the tare is an error.
 *
 * @param {number|string} gross Weight on the scale. In lb, in SI kg. Allowed from 0 lb.
 * @param {number|string} tare Weight of the empty cylinder, stamped on the collar. In lb, in SI kg. Allowed more than 0 lb.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Net contents.
 * @customfunction
 */
function OUNCE_CYLINDERNET(gross, tare, units) {
  return Ouncewise.call('CYLINDERNET', arguments);
}

/**
 * Refrigerant held in a hose or tube, as liquid or as vapor.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} length Of the hose. In ft, in SI m. Allowed more than 0 ft to 1640.4 ft.
 * @param {number|string} inside_diameter Measure yours: 1/4 in hoses are about 0.16 to 0.20 in inside. In in, in SI mm. Allowed more than 0 in to 3.937 in.
 * @param {string} state What is in the hose: liquid (from the liquid valve or a high side) or vapor. One of: liquid, vapor.
 * @param {number|string} [temperature] Of the hose. 75 degF if left out. In degF, in SI degC. 75 degF if left out.
 * @param {number|string} [pressure] Of the vapor; saturated at the temperature if left out. Leave out for a liquid. In psig, in SI kPa. May be left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Held in the hose.
 * @customfunction
 */
function OUNCE_HOSECONTENT(refrigerant, length, inside_diameter, state, temperature, pressure, elevation, units) {
  return Ouncewise.call('HOSECONTENT', arguments);
}

/**
 * The next amount to weigh in: never past the nameplate, 0 at the stop, refused while a gate is closed or the mass is unknown.
 *
 * @param {number|string} nameplate Full charge printed on the unit, by weight. Fluid ounces are refused. In oz, in SI g. Allowed more than 0 oz to 1763.7 oz.
 * @param {string} mass_basis How it is known what the unit holds: "nameplate weighed in" for a unit emptied before, "residual weighed" when what was left has been weighed, or "unknown". One of: nameplate weighed in, residual weighed, unknown.
 * @param {number|string} added Weighed into the unit so far. Type 0 before the first step; a blank is not zero. In oz, in SI g. Allowed from 0 oz to 1763.7 oz.
 * @param {number|string} [found] In the unit before this charging, as weighed. Needed for "residual weighed". In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {number|string} [suction_saturation] Saturation temperature of the suction pressure now, from SATTEMP; for a blend with glide the middle between dew and bubble. In degF, in SI degC. Allowed from -60 degF to 150 degF. May be left out.
 * @param {number|string} [aim] Saturation temperature to come to, from EXPECTEDEVAP. 40 degF if left out. In degF, in SI degC. Allowed from 20 degF to 75 degF. May be left out.
 * @param {number|string} [minutes_since_change] Since the start or the last change. Less than 15 minutes is refused. In min. Allowed from 0 min. May be left out.
 * @param {string} [ready] The answer of READYCHECK. Anything that does not begin with "Ready" is refused. May be left out.
 * @param {number|string} [scale_step] Smallest step the scale shows. 0.1 oz if left out. In oz, in SI g. Allowed more than 0 oz to 35.274 oz. 0.1 oz if left out.
 * @param {number|string} [hose] Held in the hoses and still able to run into the unit; counted as if it were inside. See HOSECONTENT. In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {number|string} [margin] For a slow leak: what is still to be added once the reading has come to the aim. Never goes beyond the nameplate. A capillary-tube unit suffers from overcharge. In oz, in SI g. Allowed from 0 oz to 1763.7 oz. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Weigh this in, then wait 15 minutes. 0: stop, the nameplate or the aim is reached.
 * @customfunction
 */
function OUNCE_NEXTSTEP(nameplate, mass_basis, added, found, suction_saturation, aim, minutes_since_change, ready, scale_step, hose, margin, units) {
  return Ouncewise.call('NEXTSTEP', arguments);
}

/**
 * Reads a weight as people write it, such as "1 lb 4 oz" or "340 g", into one number.
 *
 * @param {number|string} text The weight: a number, or text with lb, oz, kg or g, added together. Fluid ounces are refused: they measure volume. In oz, in SI g. Allowed from 0 oz.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} The weight.
 * @customfunction
 */
function OUNCE_READMASS(text, units) {
  return Ouncewise.call('READMASS', arguments);
}

/**
 * What must leave the cylinder to charge an emptied unit, with a connecting line and hoses if there are any.
 *
 * @param {number|string} nameplate Full charge printed on the unit, by weight. Fluid ounces are refused. In oz, in SI g. Allowed more than 0 oz to 1763.7 oz.
 * @param {number|string} [hose] Held in the hoses when the cylinder is closed and not reaching the unit. See HOSECONTENT. In oz, in SI g. Allowed from 0 oz. 0 oz if left out.
 * @param {number|string} [line_length] Connecting line. Leave out for a self-contained unit: it has none. In ft, in SI m. Allowed from 0 ft. May be left out.
 * @param {number|string} [included_length] Line that the nameplate charge covers. In ft, in SI m. Allowed from 0 ft. May be left out.
 * @param {number|string} [adder] Allowance of the maker for the rest of the line; a shorter line is deducted. In oz/ft, in SI g/m. Allowed from 0 oz/ft. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Weigh this out of the cylinder.
 * @customfunction
 */
function OUNCE_WEIGHIN(nameplate, hose, line_length, included_length, adder, units) {
  return Ouncewise.call('WEIGHIN', arguments);
}

/**
 * What the whole charge would do in a room, in plain words; a check before work, not a proof of compliance.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} charge Nameplate charge. In oz, in SI g. Allowed more than 0 oz.
 * @param {number|string} floor_area Floor of the room. In ft2, in SI m2. Allowed more than 0 ft2.
 * @param {number|string} ceiling_height Height of the room. In ft, in SI m. Allowed more than 0 ft.
 * @param {string} mounting Where the unit sits: gas from a low unit spreads over the floor. One of: floor, window, wall, ceiling.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Not flammable, Small charge, Large enough, Too small or Refused
 * @customfunction
 */
function OUNCE_ROOMCHECK(refrigerant, charge, floor_area, ceiling_height, mounting, units) {
  return Ouncewise.call('ROOMCHECK', arguments);
}

/**
 * Which clamp-on line tap fits a tube, with its reducer, or why no tap may go there.
 *
 * @param {number|string} tube Outside diameter of the tube by caliper: 5/16, 0.3125 or "8 mm". In in, in SI mm. Allowed more than 0 in.
 * @param {string} line Which tube it is. One of: suction, liquid, process stub, discharge, capillary.
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} [taps_fitted] Line taps already on this unit, capped or not. None if left out. Allowed from 0. 0 if left out.
 * @param {number|string} [tap_body] Largest tube the tap at hand takes, when it comes with reducers: 3/8. In in, in SI mm. Allowed more than 0 in. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} The tap size, or Refused with the reason
 * @customfunction
 */
function OUNCE_TAPSIZE(tube, line, refrigerant, taps_fitted, tap_body, units) {
  return Ouncewise.call('TAPSIZE', arguments);
}

/**
 * Whether a nitrogen pressure test held, with the pressure corrected for temperature.
 *
 * @param {number|string} start_pressure Gauge pressure when the nitrogen cylinder was shut. In psig, in SI kPa.
 * @param {number|string} start_temperature Temperature of the unit then. In degF, in SI degC.
 * @param {number|string} end_pressure Gauge pressure at the second reading, on the same gauge. In psig, in SI kPa.
 * @param {number|string} end_temperature Temperature of the unit at the second reading. In degF, in SI degC.
 * @param {number|string} low_side Low-side design pressure on the nameplate. A test above it is refused. In psig, in SI kPa.
 * @param {string} [gas] What the unit is filled with. Anything but nitrogen is refused.
 * @param {number|string} [gauge_doubt] How far two readings of this gauge may differ by themselves. 1 psi if left out. In psi, in SI kPa. Allowed from 0 psi. 1 psi if left out.
 * @param {number|string} [probe_doubt] How far two readings of this probe may differ by themselves. 1 degF if left out. In degF, in SI K. Allowed from 0 degF. 1 degF if left out.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Holds, Leak, Read again or Refused
 * @customfunction
 */
function OUNCE_TESTCHECK(start_pressure, start_temperature, end_pressure, end_temperature, low_side, gas, gauge_doubt, probe_doubt, elevation, units) {
  return Ouncewise.call('TESTCHECK', arguments);
}

/**
 * Gauge pressure a tight unit filled with nitrogen shows after its temperature has changed.
 *
 * @param {number|string} start_pressure Gauge pressure when the nitrogen cylinder was shut. In psig, in SI kPa.
 * @param {number|string} start_temperature Temperature of the unit then. In degF, in SI degC.
 * @param {number|string} end_temperature Temperature of the unit at the second reading. In degF, in SI degC.
 * @param {number|string} low_side Low-side design pressure on the nameplate. A test above it is refused. In psig, in SI kPa.
 * @param {string} [gas] What the unit is filled with. Anything but nitrogen is refused.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Expected gauge pressure
 * @customfunction
 */
function OUNCE_TESTPRESSURE(start_pressure, start_temperature, end_temperature, low_side, gas, elevation, units) {
  return Ouncewise.call('TESTPRESSURE', arguments);
}

/**
 * What an isolated vacuum says: dry and tight, moisture, a leak, or wait.
 *
 * @param {number|string} vacuum_start Level when the pump was isolated. In micron, in SI Pa. Allowed more than 0 micron.
 * @param {number|string} vacuum_end Level at the end of the wait, pump still isolated. In micron, in SI Pa. Allowed more than 0 micron.
 * @param {number|string} minutes How long it was isolated. In min. Allowed more than 0 min.
 * @param {boolean|string} far_end Yes when the gauge sits on the unit, away from the pump. A gauge at the pump is refused. Yes or no.
 * @param {number|string} [vacuum_halfway] Level in the middle of the wait: it tells moisture from a leak. In micron, in SI Pa. Allowed more than 0 micron. May be left out.
 * @param {number|string} [coldest_part] Temperature of the coldest part of the unit: water cannot make more than its pressure there. In degF, in SI degC. Allowed from -112 degF to 176 degF. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Dry and tight, Moisture, Leak, Moisture or leak, Keep pumping, Wait or Refused
 * @customfunction
 */
function OUNCE_VACUUMCHECK(vacuum_start, vacuum_end, minutes, far_end, vacuum_halfway, coldest_part, units) {
  return Ouncewise.call('VACUUMCHECK', arguments);
}

/**
 * Temperature at which water boils under a vacuum; below the triple point, at which ice turns to vapor.
 *
 * @param {number|string} vacuum Vacuum counted from absolute zero, in microns. Elevation does not matter. In micron, in SI Pa. Allowed from 0.010756 micron to 11640000 micron.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Boiling or sublimation temperature of water
 * @customfunction
 */
function OUNCE_WATERBOILS(vacuum, units) {
  return Ouncewise.call('WATERBOILS', arguments);
}

/**
 * Dew point of air from dry bulb and wet bulb: surfaces colder than this drip.
 *
 * @param {number|string} dry_bulb Air temperature on a dry, shaded probe. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} wet_bulb Wet-bulb temperature of the same air, never above the dry bulb. Not the reading of a humidity sensor. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Dew point of the air
 * @customfunction
 */
function OUNCE_AIRDEWPOINT(dry_bulb, wet_bulb, elevation, units) {
  return Ouncewise.call('AIRDEWPOINT', arguments);
}

/**
 * Heat content of moist air per mass of dry air, from dry bulb and wet bulb.
 *
 * @param {number|string} dry_bulb Air temperature on a dry, shaded probe. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} wet_bulb Wet-bulb temperature of the same air, never above the dry bulb. Not the reading of a humidity sensor. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Enthalpy: Btu/lb from dry air at 0 degF, kJ/kg from dry air at 0 degC
 * @customfunction
 */
function OUNCE_AIRENTHALPY(dry_bulb, wet_bulb, elevation, units) {
  return Ouncewise.call('AIRENTHALPY', arguments);
}

/**
 * Airflow over the indoor coil from the electric heat put in and the temperature rise it makes.
 *
 * @param {number|string} heat_power Electric power that heats the air: volts times amps of the heater strip and the indoor fan, in watts. In W. Allowed more than 0 W.
 * @param {number|string} temperature_rise Supply air less return air with the heater on, compressor off. In degF, in SI K. Allowed more than 0 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Airflow
 * @customfunction
 */
function OUNCE_AIRFLOW(heat_power, temperature_rise, elevation, units) {
  return Ouncewise.call('AIRFLOW', arguments);
}

/**
 * Air pressure of the standard atmosphere at an elevation: what a gauge counts from.
 *
 * @param {number|string} elevation Elevation of the site above sea level. In ft, in SI m. Allowed from -1000 ft to 15000 ft.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Absolute pressure of the air
 * @customfunction
 */
function OUNCE_AIRPRESSURE(elevation, units) {
  return Ouncewise.call('AIRPRESSURE', arguments);
}

/**
 * Water in the air by mass, over dry air, from dry bulb and wet bulb; units "gr/lb" gives grains.
 *
 * @param {number|string} dry_bulb Air temperature on a dry, shaded probe. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} wet_bulb Wet-bulb temperature of the same air, never above the dry bulb. Not the reading of a humidity sensor. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Mass of water over mass of dry air
 * @customfunction
 */
function OUNCE_HUMIDITYRATIO(dry_bulb, wet_bulb, elevation, units) {
  return Ouncewise.call('HUMIDITYRATIO', arguments);
}

/**
 * Relative humidity of air from dry bulb and wet bulb.
 *
 * @param {number|string} dry_bulb Air temperature on a dry, shaded probe. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} wet_bulb Wet-bulb temperature of the same air, never above the dry bulb. Not the reading of a humidity sensor. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Relative humidity
 * @customfunction
 */
function OUNCE_RELHUMIDITY(dry_bulb, wet_bulb, elevation, units) {
  return Ouncewise.call('RELHUMIDITY', arguments);
}

/**
 * Cooling that shows as temperature: 1.08 times airflow times temperature drop at sea level, less above it.
 *
 * @param {number|string} airflow Air over the indoor coil. In cfm, in SI m3/h. Allowed more than 0 cfm.
 * @param {number|string} return_dry_bulb Dry bulb of the return air. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} supply_dry_bulb Dry bulb of the supply air. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Sensible cooling
 * @customfunction
 */
function OUNCE_SENSIBLECAPACITY(airflow, return_dry_bulb, supply_dry_bulb, elevation, units) {
  return Ouncewise.call('SENSIBLECAPACITY', arguments);
}

/**
 * Whole cooling, temperature and moisture: 4.5 times airflow times enthalpy drop at sea level, less above it.
 *
 * @param {number|string} airflow Air over the indoor coil. In cfm, in SI m3/h. Allowed more than 0 cfm.
 * @param {number|string} return_dry_bulb Dry bulb of the return air. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} return_wet_bulb Wet bulb of the return air. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} supply_dry_bulb Dry bulb of the supply air. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} supply_wet_bulb Wet bulb of the supply air. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Total cooling
 * @customfunction
 */
function OUNCE_TOTALCAPACITY(airflow, return_dry_bulb, return_wet_bulb, supply_dry_bulb, supply_wet_bulb, elevation, units) {
  return Ouncewise.call('TOTALCAPACITY', arguments);
}

/**
 * Wet-bulb temperature of air from its temperature and relative humidity.
 *
 * @param {number|string} dry_bulb Air temperature on a dry, shaded probe. In degF, in SI degC. Allowed from -40 degF to 140 degF.
 * @param {number|string} relative_humidity Relative humidity of the same air, in percent. In %. Allowed from 0 % to 100 %.
 * @param {number|string} [elevation] Elevation of the site above sea level. A gauge reads from the local atmosphere. Sea level if left out. In ft, in SI m. Allowed from -1000 ft to 15000 ft. 0 ft if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Wet-bulb temperature
 * @customfunction
 */
function OUNCE_WETBULB(dry_bulb, relative_humidity, elevation, units) {
  return Ouncewise.call('WETBULB', arguments);
}

/**
 * Carbon dioxide that warms as much as this weight of refrigerant, on a stated basis.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} mass Weight of refrigerant. In oz, in SI g. Allowed from 0 oz.
 * @param {string} [basis] Edition of the GWP: AR4, AR5 or AR6 of the climate panel, US exchange value, EU 2024/573. Say which with every figure. One of: AR4, AR5, AR6, US exchange value, EU 2024/573. AR4 if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} CO2-equivalent in kilograms.
 * @customfunction
 */
function OUNCE_CO2E(refrigerant, mass, basis, units) {
  return Ouncewise.call('CO2E', arguments);
}

/**
 * Which refrigerant rules bind this unit, which do not and why, each with its source and the day it was checked.
 *
 * @param {string} refrigerant Refrigerant on the nameplate, such as R-410A, 410a or propane.
 * @param {number|string} full_charge Full charge of the unit: the nameplate. In oz, in SI g. Allowed more than 0 oz to 176370 oz.
 * @param {string} [region] US or EU. One of: US, EU. US if left out.
 * @param {boolean|string} [sealed] Charged and hermetically sealed at the factory. Yes if left out. Yes or no. yes if left out.
 * @param {string} [use] comfort cooling, commercial refrigeration or industrial process. One of: comfort cooling, commercial refrigeration, industrial process. comfort cooling if left out.
 * @param {boolean|string} [residential] In a residential building, or light-commercial comfort cooling. Yes if left out. Yes or no. yes if left out.
 * @param {Date|string} [on_date] Day of the question. Left out, every rule counts as in force. A date. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row per rule. No legal advice: look the rule up before you rely on it.
 * @customfunction
 */
function OUNCE_DUTYCHECK(refrigerant, full_charge, region, sealed, use, residential, on_date, units) {
  return Ouncewise.call('DUTYCHECK', arguments);
}

/**
 * The leak intervals of one unit from the visit log, with loss a year, both leak rates and a growth flag.
 *
 * @param {range} ledger Visit log with its heading row; unit, date and added are needed. A range with its heading row.
 * @param {string} unit_id The unit.
 * @param {number|string} [full_charge] Full charge of the unit: the nameplate. In oz, in SI g. Allowed more than 0 oz to 176370 oz. May be left out.
 * @param {Date|string} [since] Day on which the charge was known to be right first, such as the installation. A date. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row per interval, oldest first; a last row tells how many additions were left out.
 * @customfunction
 */
function OUNCE_LEAKHISTORY(ledger, unit_id, full_charge, since, units) {
  return Ouncewise.call('LEAKHISTORY', arguments);
}

/**
 * Leak rate in percent of the full charge a year, by either regulatory method.
 *
 * @param {number|string} full_charge Full charge of the unit: the nameplate. In oz, in SI g. Allowed more than 0 oz to 176370 oz.
 * @param {range} added What was added, one cell or a range of one unit. What stayed in hoses does not belong here. Additions of one day are added together. A range. In oz, in SI g. Allowed from 0 oz.
 * @param {number|string} [days] Days since the charge was right last, when there are no dates. In days. Allowed from 0 days to 20000 days. May be left out.
 * @param {range} [dates] Day of each addition, a range as long as added. A range. A date. May be left out.
 * @param {range} [reasons] Why each was added. Factory top-off, seasonal correction and new charge are left out; a blank counts as a leak. A range. One of: leak, after repair, factory top-off, seasonal correction, new charge. May be left out.
 * @param {Date|string} [since] Day on which the charge was known to be right first: installation or a weighed-in charge. A date. May be left out.
 * @param {Date|string} [verified_on] Day on which a repair was found to hold; only later additions tell what leaks now. A date. May be left out.
 * @param {string} [method] annualizing: the last addition, scaled by 365 over the days before it, at most 365; rolling average: everything of the last 365 days, or since the verified repair. One of: annualizing, rolling average. annualizing if left out.
 * @param {Date|string} [as_of] Last day of the rolling average. The last addition if left out. A date. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Leak rate.
 * @customfunction
 */
function OUNCE_LEAKRATE(full_charge, added, days, dates, reasons, since, verified_on, method, as_of, units) {
  return Ouncewise.call('LEAKRATE', arguments);
}

/**
 * Whether a leak is steady, growing or slowing, with the confidence that the number of intervals allows.
 *
 * @param {range} added What was added, one cell or a range of one unit. What stayed in hoses does not belong here. Additions of one day are added together. A range. In oz, in SI g. Allowed from 0 oz.
 * @param {number|string} [days] Days since the charge was right last, when there are no dates. In days. Allowed from 0 days to 20000 days. May be left out.
 * @param {range} [dates] Day of each addition, a range as long as added. A range. A date. May be left out.
 * @param {range} [reasons] Why each was added. Factory top-off, seasonal correction and new charge are left out; a blank counts as a leak. A range. One of: leak, after repair, factory top-off, seasonal correction, new charge. May be left out.
 * @param {Date|string} [since] Day on which the charge was known to be right first: installation or a weighed-in charge. A date. May be left out.
 * @param {Date|string} [verified_on] Day on which a repair was found to hold; only later additions tell what leaks now. A date. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} No loss, One interval, Steady, Growing or Slowing, then the rates and the confidence.
 * @customfunction
 */
function OUNCE_LEAKTREND(added, days, dates, reasons, since, verified_on, units) {
  return Ouncewise.call('LEAKTREND', arguments);
}

/**
 * Average loss of a unit in weight a year, over all intervals since the last verified repair.
 *
 * @param {range} added What was added, one cell or a range of one unit. What stayed in hoses does not belong here. Additions of one day are added together. A range. In oz, in SI g. Allowed from 0 oz.
 * @param {number|string} [days] Days since the charge was right last, when there are no dates. In days. Allowed from 0 days to 20000 days. May be left out.
 * @param {range} [dates] Day of each addition, a range as long as added. A range. A date. May be left out.
 * @param {range} [reasons] Why each was added. Factory top-off, seasonal correction and new charge are left out; a blank counts as a leak. A range. One of: leak, after repair, factory top-off, seasonal correction, new charge. May be left out.
 * @param {Date|string} [since] Day on which the charge was known to be right first: installation or a weighed-in charge. A date. May be left out.
 * @param {Date|string} [verified_on] Day on which a repair was found to hold; only later additions tell what leaks now. A date. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Loss a year of 365 days.
 * @customfunction
 */
function OUNCE_LOSSPERYEAR(added, days, dates, reasons, since, verified_on, units) {
  return Ouncewise.call('LOSSPERYEAR', arguments);
}

/**
 * Day on which the charge will have fallen to a limit, going by what the unit has lost so far.
 *
 * @param {number|string} full_charge Full charge of the unit: the nameplate. In oz, in SI g. Allowed more than 0 oz to 176370 oz.
 * @param {range} added What was added, one cell or a range of one unit. What stayed in hoses does not belong here. Additions of one day are added together. A range. In oz, in SI g. Allowed from 0 oz.
 * @param {number|string} [days] Days since the charge was right last, when there are no dates. In days. Allowed from 0 days to 20000 days. May be left out.
 * @param {range} [dates] Day of each addition, a range as long as added. A range. A date. May be left out.
 * @param {range} [reasons] Why each was added. Factory top-off, seasonal correction and new charge are left out; a blank counts as a leak. A range. One of: leak, after repair, factory top-off, seasonal correction, new charge. May be left out.
 * @param {Date|string} [since] Day on which the charge was known to be right first: installation or a weighed-in charge. A date. May be left out.
 * @param {Date|string} [verified_on] Day on which a repair was found to hold; only later additions tell what leaks now. A date. May be left out.
 * @param {Date|string} [filled_on] Day on which the charge was full last. The last addition if left out; needed with days. A date. May be left out.
 * @param {number|string} [limit] Share of the full charge at which a visit is due. 85 % if left out. In %. Allowed more than 0 % to 99.9 %. 85 % if left out.
 * @param {string} [model] linear: the same weight every day; exponential: the same share of what is left every day. One of: linear, exponential. linear if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {Date} Day, rounded down. See LEAKTREND for how far to trust it.
 * @customfunction
 */
function OUNCE_NEXTDUE(full_charge, added, days, dates, reasons, since, verified_on, filled_on, limit, model, units) {
  return Ouncewise.call('NEXTDUE', arguments);
}

/**
 * How much of what a row must have is filled in. Zero counts as filled, blank does not.
 *
 * @param {range} headings The heading row. Names as declared, in any order; a unit in brackets wins over units: "Added (g)". A range with its heading row.
 * @param {range} row The row, as wide as the headings. A blank is not zero. A range with its heading row.
 * @param {string} [record] Kind of record: visit log, unit register, cylinder register, cylinder movements, staff, instruments, price list, thresholds. One of: visit log, unit register, cylinder register, cylinder movements, staff, instruments, price list, thresholds. visit log if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Filled of the required fields.
 * @customfunction
 */
function OUNCE_COMPLETENESS(headings, row, record, units) {
  return Ouncewise.call('COMPLETENESS', arguments);
}

/**
 * The account of every cylinder: opening, in, out, closing, what is unexplained against the scale, drift.
 *
 * @param {range} cylinders Cylinder register with its heading row; cylinder and opening gross are needed. A range with its heading row.
 * @param {range} [ledger] Visit log: what was added, lost in hoses and recovered, by cylinder. A range with its heading row. May be left out.
 * @param {range} [movements] Other movements with gross before and after: purchase, transfer, return, reclaim. A range with its heading row. May be left out.
 * @param {number|string} [scale_step] Smallest step of the scale. 0.1 oz if left out. In oz, in SI g. Allowed more than 0 oz to 35.274 oz. 0.1 oz if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row per cylinder. Unexplained is positive when refrigerant is missing.
 * @customfunction
 */
function OUNCE_CYLINDERBALANCE(cylinders, ledger, movements, scale_step, units) {
  return Ouncewise.call('CYLINDERBALANCE', arguments);
}

/**
 * One row per unit from the visit log and the unit register: last visit, loss, trend, next due, taps, completeness, cost.
 *
 * @param {range} ledger Visit log of all units with its heading row. Columns are found by name; unit, date and added are needed. A range with its heading row.
 * @param {range} register Unit register with its heading row. A range with its heading row.
 * @param {string} [unit_id] One unit only. All units if left out. May be left out.
 * @param {Date|string} [as_of] Rows after this day are left out. The last day of the log if left out. A date. May be left out.
 * @param {number|string} [limit] Share of the full charge at which a visit is due. 85 % if left out. In %. Allowed more than 0 % to 99.9 %. 85 % if left out.
 * @param {string} [model] linear: the same weight every day; exponential: the same share every day. One of: linear, exponential. linear if left out.
 * @param {number|string} [visit_price] What a visit costs, refrigerant apart. Cost is blank without prices. Allowed from 0. May be left out.
 * @param {number|string} [refrigerant_price] Of refrigerant that reached a unit; hose losses are not charged. In /oz, in SI /kg. Allowed from 0 /oz. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} Units in the order of the register, then units that only the log knows. As an array formula over a fixed range it works without spilling.
 * @customfunction
 */
function OUNCE_FLEETSUMMARY(ledger, register, unit_id, as_of, limit, model, visit_price, refrigerant_price, units) {
  return Ouncewise.call('FLEETSUMMARY', arguments);
}

/**
 * What is impossible, missing or unusual in one row of a record, worst first.
 *
 * @param {range} headings The heading row. Names as declared, in any order; a unit in brackets wins over units: "Added (g)". A range with its heading row.
 * @param {range} row The row, as wide as the headings. A blank is not zero. A range with its heading row.
 * @param {string} [record] Kind of record: visit log, unit register, cylinder register, cylinder movements, staff, instruments, price list, thresholds. One of: visit log, unit register, cylinder register, cylinder movements, staff, instruments, price list, thresholds. visit log if left out.
 * @param {number|string} [nameplate] Full charge of the unit; additions above it are rejected. In oz, in SI g. Allowed more than 0 oz. May be left out.
 * @param {Date|string} [today] Later dates are rejected. A date. May be left out.
 * @param {Date|string} [installed_on] Earlier dates are rejected. A date. May be left out.
 * @param {string} [refrigerant] Of the unit; a line tap on a flammable gas is rejected. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Fine, Look again, Gaps or Reject, then the first findings. Blank for an empty row.
 * @customfunction
 */
function OUNCE_ROWCHECK(headings, row, record, nameplate, today, installed_on, refrigerant, units) {
  return Ouncewise.call('ROWCHECK', arguments);
}

/**
 * Repair, replace, keep topping up or do nothing, side by side: the cost a year of each, with its range.
 *
 * @param {range} assumptions Assumptions with a heading row: Input, Likely, and if wished Low, High and Unit; one row for each input, named as COSTINPUTS names it. Other columns are passed over. Blank Low or High: known exactly. A range with its heading row.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row a choice. Cost a year: all costs over the years the present unit has left, as an equal yearly amount; a new unit is paid for by the year. Net present value and payback: against the choice in the note. Lowest and highest: every input at its best or worst end.
 * @customfunction
 */
function OUNCE_ANNUALCOST(assumptions, units) {
  return Ouncewise.call('ANNUALCOST', arguments);
}

/**
 * Highest repair price worth paying: above it another choice costs less.
 *
 * @param {range} assumptions Assumptions with a heading row: Input, Likely, and if wished Low, High and Unit; one row for each input, named as COSTINPUTS names it. Other columns are passed over. Blank Low or High: known exactly. A range with its heading row.
 * @param {number|string} [hours] Full-load running hours a year. Stands in for the row of the assumptions; a range makes a sensitivity grid in one formula. In h. Allowed from 0 h. May be left out.
 * @param {number|string} [power_price] Price of electricity. Stands in for the row of the assumptions; a range makes a sensitivity grid in one formula. In /kWh. Allowed from 0 /kWh. May be left out.
 * @param {string} [against] The choice the repair must beat. The cheapest one if left out. One of: cheapest, replace, top up, do nothing. cheapest if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Repair price at which both cost the same; an error with the reason when no price is worth paying.
 * @customfunction
 */
function OUNCE_BREAKEVENREPAIR(assumptions, hours, power_price, against, units) {
  return Ouncewise.call('BREAKEVENREPAIR', arguments);
}

/**
 * Money paid out under each choice by the end of each year: the figures behind a chart.
 *
 * @param {range} assumptions Assumptions with a heading row: Input, Likely, and if wished Low, High and Unit; one row for each input, named as COSTINPUTS names it. Other columns are passed over. Blank Low or High: known exactly. A range with its heading row.
 * @param {number|string} [years] How many years. 10 if left out. Allowed from 1 to 60. 10 if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} Year 0 is today. Not discounted, at the likely values. A new unit is paid in full on the day it is bought, so the lines jump where ANNUALCOST spreads the price over the years. Blank for a choice that cannot be worked out.
 * @customfunction
 */
function OUNCE_COSTBYYEAR(assumptions, years, units) {
  return Ouncewise.call('COSTBYYEAR', arguments);
}

/**
 * The inputs that move the answer most: each alone from its low to its high end, the largest first.
 *
 * @param {range} assumptions Assumptions with a heading row: Input, Likely, and if wished Low, High and Unit; one row for each input, named as COSTINPUTS names it. Other columns are passed over. Blank Low or High: known exactly. A range with its heading row.
 * @param {number|string} [count] How many inputs to show. 3 if left out. Allowed from 1. 3 if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} Lead: how much less a year the best choice costs than the next one while this input alone is moved; below zero the next one wins.
 * @customfunction
 */
function OUNCE_COSTDRIVERS(assumptions, count, units) {
  return Ouncewise.call('COSTDRIVERS', arguments);
}

/**
 * The assumption sheet to start from: every input by name, with published ranges and their sources.
 *
 * @param {string} [kind] Kind of unit; the life of a new one depends on it. A roof unit if left out. One of: roof, window, through-wall, portable, other. roof if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {range} One row for each input. Paste it as values, fill in the blanks, and give the range to REPAIRORREPLACE.
 * @customfunction
 */
function OUNCE_COSTINPUTS(kind, units) {
  return Ouncewise.call('COSTINPUTS', arguments);
}

/**
 * Years until yearly savings have paid a price back, with interest when a discount rate is given.
 *
 * @param {number|string} price Money paid now, or paid more now. Allowed from 0.
 * @param {number|string} saving Money saved a year.
 * @param {number|string} [discount_rate] Yearly cost of money in percent: 8 for 8 %. Simple payback if left out. In %. Allowed from 0 % to 100 %. 0 % if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Years
 * @customfunction
 */
function OUNCE_PAYBACK(price, saving, discount_rate, units) {
  return Ouncewise.call('PAYBACK', arguments);
}

/**
 * Repair, replace, keep topping up or do nothing; or too close to call, and which input would decide.
 *
 * @param {range} assumptions Assumptions with a heading row: Input, Likely, and if wished Low, High and Unit; one row for each input, named as COSTINPUTS names it. Other columns are passed over. Blank Low or High: known exactly. A range with its heading row.
 * @param {number|string} [hours] Full-load running hours a year. Stands in for the row of the assumptions; a range makes a sensitivity grid in one formula. In h. Allowed from 0 h. May be left out.
 * @param {number|string} [power_price] Price of electricity. Stands in for the row of the assumptions; a range makes a sensitivity grid in one formula. In /kWh. Allowed from 0 /kWh. May be left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {string} Repair, Replace, Top up, Do nothing or Too close to call
 * @customfunction
 */
function OUNCE_REPAIRORREPLACE(assumptions, hours, power_price, units) {
  return Ouncewise.call('REPAIRORREPLACE', arguments);
}

/**
 * Electricity a year for a unit, more when its charge is low.
 *
 * @param {number|string} capacity Cooling of the unit, from the nameplate. In Btu/h, in SI W. Allowed more than 0 Btu/h.
 * @param {number|string} efficiency Efficiency at full charge: EER, Btu/h of cooling for each watt. In Btu/Wh, in SI W/W. Allowed more than 0 Btu/Wh.
 * @param {number|string} hours Full-load running hours a year. In h. Allowed from 0 h.
 * @param {number|string} power_price Price of electricity. In /kWh. Allowed from 0 /kWh.
 * @param {number|string} [charge] Charge in the unit as a share of the nameplate. 100 if left out. In %. Allowed from 30 % to 100 %. 100 % if left out.
 * @param {number|string} [efficiency_loss] Efficiency lost when 15 % of the charge is missing: 4 to 6 published for capillary units. 5 if left out. In %. Allowed from 0 % to 20 %. 5 % if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Money a year
 * @customfunction
 */
function OUNCE_RUNCOST(capacity, efficiency, hours, power_price, charge, efficiency_loss, units) {
  return Ouncewise.call('RUNCOST', arguments);
}

/**
 * What it costs a year to top up a leaking unit again and again: calls and ounces.
 *
 * @param {number|string} leak_rate Share of the nameplate lost a year, in percent. In %/year. Allowed from 0 %/year.
 * @param {number|string} nameplate Full charge on the nameplate. In oz, in SI g. Allowed more than 0 oz.
 * @param {number|string} visit_price One call: trip and labor. Allowed from 0.
 * @param {number|string} refrigerant_price Price of refrigerant by weight. In /oz, in SI /kg. Allowed from 0 /oz.
 * @param {number|string} [refill_at] Share of the nameplate left when the customer calls. 85 if left out. In %. Allowed from 30 % to 99 %. 85 % if left out.
 * @param {string} [units] US (psig, degF, oz, ft; used if left out), SI (kPa gauge, degC, g, m), or units that override, such as "bar degC". A reading typed with its own unit, like "62 psig", needs none.
 * @return {number} Money a year
 * @customfunction
 */
function OUNCE_TOPUPCOST(leak_rate, nameplate, visit_price, refrigerant_price, refill_at, units) {
  return Ouncewise.call('TOPUPCOST', arguments);
}
