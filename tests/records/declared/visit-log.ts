/*
 * What each field declares, a line each; "# " starts a block of the sheet, "## " a table with its title and key.
 * Limits, units, dropdown words and what is required when: common practice of those who keep such records, no source.
 * Names, headings and other headings: regression. They stand on sheets in use, so a sheet of last year must still be read.
 */
export const visitLogLines = `
## visit log | Visit log | unit_id, visit_id, set_no
# Visit
visit_id | Visit | text | required
set_no | Set | number | count in ones, whole | reject 1..999 | required | also set number, reading set
unit_id | Unit | text | required | also unit no
date_time | Date and time | dateTime | required | also date, when, visit date, date of visit, service date
technician_id | Technician | text | required
cert_type | Certificate | choice | required | of I, II, III, Universal
reason | Reason for the visit | choice | required | of no cool, weak cool, ice, trips, noise, leak, routine, warranty
stage | Stage | choice | required | of as found, after cleaning, after step, final | numbered after step
minutes_since_change | Minutes since change | number | minutes in min | reject 0..600 | warn 15.. | required
elevation | Elevation | number | altitude in ft | reject -1000..15000 | required
barometer | Barometer | number | absolutePressure in inHg | reject 15..32
customer_agrees | Customer agrees | yesNo
# Air
outdoor_db | Outdoor dry bulb | number | temperature in degF | reject -20..135 | warn 55.. | required
condenser_air | Outdoor coil air | number | temperature in degF | reject -20..190 | also air off the outdoor coil
return_db | Return dry bulb | number | temperature in degF | reject 40..110 | required
return_wb | Return wet bulb | number | temperature in degF | reject 35..90 | required
supply_db | Supply dry bulb | number | temperature in degF | reject 25..105 | required
supply_wb | Supply wet bulb | number | temperature in degF | reject 25..90
airflow | Airflow | number | airflow in cfm | reject 50..2000
airflow_how | Airflow from | choice | required when an airflow is given | of measured, chart, assumed
# Condition
filter | Filter | choice | required | of clean, dirty, blocked, not seen
evap_coil | Indoor coil | choice | required | of clean, dirty, blocked, not seen | also evaporator coil
cond_coil | Outdoor coil | choice | required | of clean, dirty, blocked, not seen | also condenser coil
vents | Vents and ducts | choice | required | of clean, dirty, blocked, not seen | also vents
fan | Fan | choice | required | of clean, dirty, blocked, not seen
frost | Frost | choice | required | of none, inlet only, part, full, not seen
compressor_state | Compressor | choice | required | of running, off, short cycling
# Pipes and pressures
suction_line | Suction line | number | temperature in degF | reject 0..120
liquid_line | Liquid line | number | temperature in degF | reject 40..170
discharge_line | Discharge line | number | temperature in degF | reject 60..320 | warn ..225
suction_pressure | Suction pressure | number | pressure in psig | reject -14.7..400 | also suction p, standing pressure
liquid_pressure | Liquid pressure | number | pressure in psig | reject 0..700 | also liquid p, discharge pressure
gauge_reference | Gauge reads | choice | required when a pressure was read | of gauge, absolute, gauge zeroed at site
standing_off | Minutes off | number | minutes in min | reject 30.. | required for a standing pressure | also standing off min
parts_spread | Spread of the parts | number | temperatureDifference in degF | reject 0..100 | warn ..5 | required for a standing pressure | also parts temp spread
# Electrical
source | Supply | choice | required | of shore 20 A, shore 30 A, shore 50 A, generator, inverter, house
volts_idle | Volts idle | number | voltage in V | reject 80..280 | required
volts_run | Volts running | number | voltage in V | reject 80..280 | required
volts_leg2 | Volts second leg | number | voltage in V | reject 80..280 | required on a 208 or 240 V supply
amps_total | Amps total | number | current in A | reject 0..60 | required
amps_comp | Amps compressor | number | current in A | reject 0..60 | required | also amps compressor only
amps_fan | Amps fan | number | current in A | reject 0..60 | required
watts | Watts | number | power in W | reject 0..6000
cap_measured | Run capacitor measured | number | capacitance in uF | reject 1..200 | also cap run uf measured
cap_label | Run capacitor label | number | capacitance in uF | reject 1..200
# Charge
gas_in_unit | Gas in unit | refrigerant | required
gas_added | Gas added | refrigerant | required when refrigerant was added
mass_basis | Mass known by | choice | required | of nameplate weighed in, residual weighed, unknown
found | Found by weight | number | mass in oz | reject 0.. | required when the residual was weighed
added | Added | number | mass in oz | reject 0.. | required | also added oz, refrigerant added
added_reason | Why added | choice | required when refrigerant was added | of leak, after repair, factory top-off, seasonal correction, new charge | also reason added
recovered | Recovered | number | mass in oz | reject 0.. | required | also recovered oz
hose | Lost in hoses | number | mass in oz | reject 0.. | required | also hose oz, hose loss
# Cylinder and scale
cyl_id | Cylinder | text | required when refrigerant was added or recovered
cyl_start | Cylinder before | number | cylinderMass in lb | reject 0..500 | required when refrigerant was added or recovered | also cyl start lb, cylinder start
cyl_end | Cylinder after | number | cylinderMass in lb | reject 0..500 | required when refrigerant was added or recovered | also cyl end lb, cylinder end
scale_id | Scale | text | required when refrigerant was added
scale_step | Scale step | number | mass in oz | reject 0..16 | warn ..0.1 | required when refrigerant was added
cal_date | Scale calibrated | date | required when refrigerant was added
# Leak
leak_found | Leak found | yesNo | required
leak_place | Leak place | choice | required when a leak was found | of line tap, process tube, brazed joint, evaporator, condenser, capillary, compressor, other
leak_method | Leak method | choice | required when a leak was found | of soap, electronic, dye, nitrogen, ultrasound
leak_fixed | Leak fixed | yesNo | required when a leak was found
verified_on | Repair verified | date | required when a leak was fixed
# Pressure test and vacuum
test_gas | Test gas | choice | required when the pressure was tested | of nitrogen
test_start_pressure | Test pressure start | number | pressure in psig | reject 0..700 | required when the pressure was tested | also test p1
test_start_temperature | Test temperature start | number | temperature in degF | reject -20..150 | required when the pressure was tested | also test t1
test_end_pressure | Test pressure end | number | pressure in psig | reject 0..700 | required when the pressure was tested | also test p2
test_end_temperature | Test temperature end | number | temperature in degF | reject -20..150 | required when the pressure was tested | also test t2
vacuum_start | Vacuum start | number | vacuum in micron | reject 0..760000 | required when the unit was evacuated | also vac start
vacuum_end | Vacuum end | number | vacuum in micron | reject 0..760000 | required when the unit was evacuated | also vac end
vacuum_minutes | Vacuum wait | number | minutes in min | reject 0..600 | required when the unit was evacuated | also vac min
vacuum_far_end | Vacuum gauge far from pump | yesNo | required when the unit was evacuated | also vac far end
# Line tap
tap_added | Taps fitted | number | count in ones, whole | reject 0..1 | required
tap_left | Taps left in place | number | count in ones, whole | reject 0..9 | warn ..1 | required
tap_od | Tap size | choice | required when a tap was fitted | of 1/4, 5/16, 3/8, 1/2, 5/8
# Verdict
ready | Ready | text | computed
suction_saturation | Suction saturation | number | temperature in degF | computed
superheat | Superheat | number | temperatureDifference in degF | computed
next_step | Next step | number | mass in oz | computed
verdict | Verdict | text | computed
verdict_blocked_by | Verdict blocked by | text | computed
# Papers
photo_label | Photo of the label | link | required
photo_gauge | Photo of the gauges | link
photo_scale | Photo of the scale | link
note | Note | text | up to 500
`;
