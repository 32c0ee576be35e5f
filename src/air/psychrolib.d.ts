/** The calls used here of psychrolib 1.1.1, which ships no types. In inch-pound units: degF, psi, Btu/lb, lb/lb, ft3/lb. */
declare module 'psychrolib' {
  interface Psychrometrics {
    readonly IP: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulbF: number): number;
    GetHumRatioFromTWetBulb(dryBulbF: number, wetBulbF: number, pressurePsia: number): number;
    GetHumRatioFromRelHum(dryBulbF: number, relativeHumidity: number, pressurePsia: number): number;
    GetTWetBulbFromHumRatio(dryBulbF: number, humidityRatio: number, pressurePsia: number): number;
    GetTDewPointFromHumRatio(dryBulbF: number, humidityRatio: number, pressurePsia: number): number;
    GetRelHumFromHumRatio(dryBulbF: number, humidityRatio: number, pressurePsia: number): number;
    GetMoistAirEnthalpy(dryBulbF: number, humidityRatio: number): number;
    GetMoistAirVolume(dryBulbF: number, humidityRatio: number, pressurePsia: number): number;
  }
  const shared: Psychrometrics & { readonly constructor: new () => Psychrometrics };
  export default shared;
}
