/** Inch-pound units of the published tables, by their exact definitions; independent of the package's own conversion. */
export const fahrenheitK = (degF: number): number => (degF + 459.67) / 1.8;
export const toFahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67;
export const psiPa = (0.45359237 * 9.80665) / 0.0254 ** 2;
export const psiaPa = (psia: number): number => psia * psiPa;
export const toPsia = (pascal: number): number => pascal / psiPa;
/** Inch-pound tables count enthalpy from dry air at 0 degF, the SI equation from 0 degC: 0.240 x 32 apart. */
export const toBtuPerLb = (joulePerKg: number): number => joulePerKg / 2326 + 7.68;
export const toFt3PerLb = (m3PerKg: number): number => (m3PerKg * 0.45359237) / 0.3048 ** 3;
export const cfmM3PerS = (cfm: number): number => (cfm * 0.3048 ** 3) / 60;
export const btuPerHourW = 1055.05585262 / 3600;
