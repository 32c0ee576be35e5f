/*
 * What each field declares, a line each; "# " starts a block of the sheet, "## " a table with its title and key.
 * Limits, units, dropdown words and what is required when: common practice of those who keep such records, no source.
 * Names, headings and other headings: regression. They stand on sheets in use, so a sheet of last year must still be read.
 */
export const registerLines = `
## unit register | Units | unit_id
# Unit
unit_id | Unit | text | required
owner | Owner | text | required
site | Site | text | required
kind | Kind | choice | required | of roof, window, through-wall, portable, other
elevation | Elevation | number | altitude in ft | reject -1000..15000 | required
critical | Critical use | choice | of none, medical, livestock, server
# Nameplate
serial_photo | Photo of the nameplate | link
refrigerant | Refrigerant | refrigerant | required
nameplate | Nameplate charge | number | mass in oz | reject 0.5..1600 | warn 5..80 | required | also nameplate oz, nameplate, full charge
nameplate_from | Nameplate read from | text | required
capacity | Cooling capacity | number | heatRate in Btu/h | reject 1000..65000
efficiency | Efficiency | number | coolingEfficiency in Btu/Wh | reject 4..25 | also eer
rated_volts | Rated volts | text | required | also volts
phase | Phase | number | count in ones, whole | reject 1..3
rated_amps | Rated load amps | number | current in A | reject 0.5..60 | also rla
locked_rotor_amps | Locked rotor amps | number | current in A | reject 2..300 | also lra
low_side_design | Low-side pressure | number | pressure in psig | reject 50..500 | also low design psig
high_side_design | High-side pressure | number | pressure in psig | reject 150..800 | also high design psig
metering | Metering | choice | required | of capillary, orifice, valve
charge_method | Full charge from | choice | of nameplate, measured
safety_class | Safety class | choice | computed | of A1, A2L, A2, A3, B1, B2L, B2, B3
# Life
installed_on | Installed | date | required | also install date
months_a_year | Months in service | number | count in ones | reject 0..12 | also in service months a year, months a year
taps_fitted | Taps fitted | number | count in ones, whole | reject 0..9 | required
taps_place | Taps place | text
compressor_replaced_on | Compressor replaced | date
warranty_end | Warranty ends | date
status | Status | choice | required | of in use, stored, retired, scrapped
gas_recovered_on | Gas recovered on | date | required when the unit is retired or scrapped
gas_recovered_by | Gas recovered by | text | required when the unit is retired or scrapped

## cylinder register | Cylinders | cyl_id
# Cylinder
cyl_id | Cylinder | text | required
kind | Kind | choice | required | of virgin, reclaimed, recovery, nitrogen
gas | Gas | refrigerant | required for a refrigerant cylinder
tare | Tare | number | cylinderMass in lb | reject 0.5..300 | required
water_capacity | Water capacity | number | cylinderMass in lb | reject 1..1000 | required for a recovery cylinder | also wc
mark | Mark | text | also dot mark
service_pressure | Service pressure | number | pressure in psig | reject 100..3000 | required for a recovery cylinder
last_test | Last test | date | required for a recovery cylinder
test_due | Test due | date | required for a recovery cylinder
status | Status | choice | required | of in use, full, empty, out of test, returned
place | Place | choice | required | of truck, shop, supplier
# Contents
opened_on | Opening day | date | required
opening_gross | Opening gross | number | cylinderMass in lb | reject 0..1500 | required
closing_gross | Closing gross | number | cylinderMass in lb | reject 0..1500
heel | Heel | number | cylinderMass in lb | reject 0..50
limit | Net limit | number | cylinderMass in lb | computed

## cylinder movements | Cylinder movements | cyl_id, date, visit_id, purpose
# Movement
cyl_id | Cylinder | text | required
date | Date | date | required
visit_id | Visit | text
purpose | Purpose | choice | required | of charge, recover, transfer, return, reclaim, purchase
gross_before | Gross before | number | cylinderMass in lb | reject 0..1500 | required
gross_after | Gross after | number | cylinderMass in lb | reject 0..1500 | required
technician_id | Technician | text
note | Note | text | up to 500

## staff | Staff and certificates | technician_id
# Person
technician_id | Technician | text | required
name | Name | text | required
cert_type | Certificate | choice | required | of I, II, III, Universal
cert_no | Certificate number | text | required
cert_date | Certificate date | date
flammable_trained | Trained for flammable gas | yesNo | required

## instruments | Instruments and calibration | instrument_id
# Instrument
instrument_id | Instrument | text | required
kind | Kind | choice | required | of scale, gauge, probe, meter, vacuum gauge, leak detector
accuracy | Accuracy | text
scale_step | Scale step | number | mass in oz | reject 0..16 | warn ..0.1 | required for a scale
cal_date | Calibrated | date | required

## price list | Prices | code, valid_from
# Price
code | Code | text | required
description | Description | text | required
unit | Per | choice | required | of oz, each, h, mile, trip
buy | Buy | number | money in money | reject 0..100000
sell | Sell | number | money in money | reject 0..100000 | required
tax_class | Tax class | text
valid_from | Valid from | date | required
valid_to | Valid to | date
minimum | Minimum | number | ratio in ones | reject 0..10000
rounding | Rounded up to | number | ratio in ones | reject 0..1000

## thresholds | Thresholds | name, in_force_from
# Threshold
name | Threshold | text | required
value | Value | text | required
source | Source | text | required
in_force_from | In force from | date
checked_on | Checked on | date | required
`;
