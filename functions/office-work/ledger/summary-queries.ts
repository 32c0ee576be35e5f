/** One row for each unit, gas and month, with what the gas added weighs as carbon dioxide. */
export function byMonth(units: 'US' | 'SI'): string {
  const mass = massWord(units);
  return `
    WITH each AS MATERIALIZED (
      -- It grows with the weight: one call for each gas is enough.
      SELECT gas, OUNCE_CO2E(gas, 1, basis := 'AR4', units := '${units}') AS co2e FROM (SELECT DISTINCT gas FROM ledger))
    SELECT ${asText('unit_id')} AS "Unit", ${asText('gas')} AS "Refrigerant", month AS "Month", sets AS "Sets", visits AS "Visits",
      added AS "Added (${mass})", recovered AS "Recovered (${mass})", hose AS "Lost in hoses (${mass})",
      added * co2e AS "CO2-eq AR4 (kg)"
    FROM (
      SELECT unit_id, gas, strftime(moment, '%Y-%m') AS month, count(*) AS sets, count(DISTINCT visit_id) AS visits,
        ${sums}
      FROM ledger GROUP BY ALL) LEFT JOIN each USING (gas)
    ORDER BY unit_id, gas, month`;
}

/**
 * One row for each unit: its additions visit by visit, net of what was recovered in the visit, go to the leak functions
 * as lists.
 */
export function byUnit(units: 'US' | 'SI'): string {
  const mass = massWord(units);
  return `
    WITH visits AS (
      SELECT unit_id, visit_id, max(day) AS day, ${sums}, last(reason ORDER BY moment) FILTER (reason IS NOT NULL) AS reason
      FROM ledger GROUP BY unit_id, visit_id),
    additions AS (
      SELECT unit_id, list(added - recovered ORDER BY day, visit_id) AS net, list(day ORDER BY day, visit_id) AS days,
        list(reason ORDER BY day, visit_id) AS reasons
      FROM visits WHERE added - recovered > 1e-9 GROUP BY unit_id),
    units AS (
      SELECT unit_id, last(gas ORDER BY moment) AS gas, count(DISTINCT visit_id) AS visits, max(day) AS last_visit,
        max(verified_on) AS verified_on, ${sums}
      FROM ledger GROUP BY unit_id)
    SELECT ${asText('unit_id')} AS "Unit", ${asText('gas')} AS "Refrigerant", visits AS "Visits", last_visit AS "Last visit",
      added AS "Added (${mass})", recovered AS "Recovered (${mass})", hose AS "Lost in hoses (${mass})",
      OUNCE_LOSSPERYEAR(net, dates := days, reasons := reasons, verified_on := verified_on, units := '${units}')
        AS "Loss (${mass}/year)",
      OUNCE_LEAKTREND(net, dates := days, reasons := reasons, verified_on := verified_on, units := '${units}')
        AS "Trend"
    FROM units LEFT JOIN additions USING (unit_id)
    ORDER BY unit_id`;
}

// To a millionth: what binary sums leave behind it is no weight.
const sums = ['added', 'recovered', 'hose']
  .map((name) => `round(coalesce(sum(${name}), 0), 6) AS ${name}`)
  .join(', ');

/** A text that a spreadsheet program would take for a formula gets an apostrophe in front (OWASP, CSV injection). */
function asText(column: string): string {
  return `CASE WHEN regexp_matches(${column}, '^[=+\\-@\\t\\r]') THEN '''' || ${column} ELSE ${column} END`;
}

function massWord(units: 'US' | 'SI'): string {
  return units === 'SI' ? 'g' : 'oz';
}
