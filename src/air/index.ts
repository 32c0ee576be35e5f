export { airflowAllowsChargeTest, airflowFromHeatM3PerS, chargeTestAirflowM3PerSPerW } from './airflow.ts';
export type { HeaterReading } from './airflow.ts';
export { condensateKgPerS, latentCapacityW, sensibleCapacityW, totalCapacityW } from './capacity.ts';
export type { DryCoilReading, WetCoilReading } from './capacity.ts';
export {
  airDewPointK,
  airEnthalpyJPerKg,
  airSpecificVolumeM3PerKg,
  humidityRatio,
  humidityRatioFromRelativeHumidity,
  relativeHumidity,
  wetBulbK,
} from './moist-air.ts';
export type { RelativeHumidityReading, WetBulbReading } from './moist-air.ts';
export {
  standardAtmospherePa,
  standardAtmosphereTemperatureK,
  standardElevationM,
} from './standard-atmosphere.ts';
export { waterSaturationPressurePa, waterSaturationTemperatureK } from './water-saturation.ts';
