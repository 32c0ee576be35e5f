// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { FluidEquation } from './equation-form.ts';
import type { BlendFacts, PureFacts } from './facts-form.ts';
import type { SaturationTable } from './saturation-form.ts';
import { facts as refrigerants_r_11 } from './refrigerants/r-11.ts';
import { facts as refrigerants_r_115 } from './refrigerants/r-115.ts';
import { facts as refrigerants_r_116 } from './refrigerants/r-116.ts';
import { facts as refrigerants_r_12 } from './refrigerants/r-12.ts';
import { facts as refrigerants_r_123 } from './refrigerants/r-123.ts';
import { facts as refrigerants_r_1233zd_e } from './refrigerants/r-1233zd-e.ts';
import { facts as refrigerants_r_1234yf } from './refrigerants/r-1234yf.ts';
import { facts as refrigerants_r_1234ze_e } from './refrigerants/r-1234ze-e.ts';
import { facts as refrigerants_r_124 } from './refrigerants/r-124.ts';
import { facts as refrigerants_r_125 } from './refrigerants/r-125.ts';
import { facts as refrigerants_r_1270 } from './refrigerants/r-1270.ts';
import { facts as refrigerants_r_134a } from './refrigerants/r-134a.ts';
import { facts as refrigerants_r_142b } from './refrigerants/r-142b.ts';
import { facts as refrigerants_r_143a } from './refrigerants/r-143a.ts';
import { facts as refrigerants_r_152a } from './refrigerants/r-152a.ts';
import { facts as refrigerants_r_218 } from './refrigerants/r-218.ts';
import { facts as refrigerants_r_22 } from './refrigerants/r-22.ts';
import { facts as refrigerants_r_227ea } from './refrigerants/r-227ea.ts';
import { facts as refrigerants_r_23 } from './refrigerants/r-23.ts';
import { facts as refrigerants_r_236fa } from './refrigerants/r-236fa.ts';
import { facts as refrigerants_r_245fa } from './refrigerants/r-245fa.ts';
import { facts as refrigerants_r_290 } from './refrigerants/r-290.ts';
import { facts as refrigerants_r_32 } from './refrigerants/r-32.ts';
import { facts as refrigerants_r_600 } from './refrigerants/r-600.ts';
import { facts as refrigerants_r_600a } from './refrigerants/r-600a.ts';
import { facts as refrigerants_r_601 } from './refrigerants/r-601.ts';
import { facts as refrigerants_r_601a } from './refrigerants/r-601a.ts';
import { facts as refrigerants_r_744 } from './refrigerants/r-744.ts';
import { facts as blends_r_401a } from './blends/r-401a.ts';
import { facts as blends_r_402a } from './blends/r-402a.ts';
import { facts as blends_r_404a } from './blends/r-404a.ts';
import { facts as blends_r_407a } from './blends/r-407a.ts';
import { facts as blends_r_407c } from './blends/r-407c.ts';
import { facts as blends_r_407f } from './blends/r-407f.ts';
import { facts as blends_r_407h } from './blends/r-407h.ts';
import { facts as blends_r_408a } from './blends/r-408a.ts';
import { facts as blends_r_409a } from './blends/r-409a.ts';
import { facts as blends_r_410a } from './blends/r-410a.ts';
import { facts as blends_r_414b } from './blends/r-414b.ts';
import { facts as blends_r_417a } from './blends/r-417a.ts';
import { facts as blends_r_421a } from './blends/r-421a.ts';
import { facts as blends_r_422b } from './blends/r-422b.ts';
import { facts as blends_r_422d } from './blends/r-422d.ts';
import { facts as blends_r_424a } from './blends/r-424a.ts';
import { facts as blends_r_426a } from './blends/r-426a.ts';
import { facts as blends_r_427a } from './blends/r-427a.ts';
import { facts as blends_r_434a } from './blends/r-434a.ts';
import { facts as blends_r_437a } from './blends/r-437a.ts';
import { facts as blends_r_438a } from './blends/r-438a.ts';
import { facts as blends_r_444b } from './blends/r-444b.ts';
import { facts as blends_r_448a } from './blends/r-448a.ts';
import { facts as blends_r_449a } from './blends/r-449a.ts';
import { facts as blends_r_450a } from './blends/r-450a.ts';
import { facts as blends_r_452a } from './blends/r-452a.ts';
import { facts as blends_r_452b } from './blends/r-452b.ts';
import { facts as blends_r_453a } from './blends/r-453a.ts';
import { facts as blends_r_454a } from './blends/r-454a.ts';
import { facts as blends_r_454b } from './blends/r-454b.ts';
import { facts as blends_r_454c } from './blends/r-454c.ts';
import { facts as blends_r_455a } from './blends/r-455a.ts';
import { facts as blends_r_457a } from './blends/r-457a.ts';
import { facts as blends_r_458a } from './blends/r-458a.ts';
import { facts as blends_r_500 } from './blends/r-500.ts';
import { facts as blends_r_502 } from './blends/r-502.ts';
import { facts as blends_r_507a } from './blends/r-507a.ts';
import { facts as blends_r_508b } from './blends/r-508b.ts';
import { facts as blends_r_513a } from './blends/r-513a.ts';
import { facts as blends_r_515b } from './blends/r-515b.ts';
import { equation as equations_r_11 } from './equations/r-11.ts';
import { equation as equations_r_115 } from './equations/r-115.ts';
import { equation as equations_r_116 } from './equations/r-116.ts';
import { equation as equations_r_12 } from './equations/r-12.ts';
import { equation as equations_r_123 } from './equations/r-123.ts';
import { equation as equations_r_1233zd_e } from './equations/r-1233zd-e.ts';
import { equation as equations_r_1234yf } from './equations/r-1234yf.ts';
import { equation as equations_r_1234ze_e } from './equations/r-1234ze-e.ts';
import { equation as equations_r_124 } from './equations/r-124.ts';
import { equation as equations_r_125 } from './equations/r-125.ts';
import { equation as equations_r_1270 } from './equations/r-1270.ts';
import { equation as equations_r_134a } from './equations/r-134a.ts';
import { equation as equations_r_142b } from './equations/r-142b.ts';
import { equation as equations_r_143a } from './equations/r-143a.ts';
import { equation as equations_r_152a } from './equations/r-152a.ts';
import { equation as equations_r_218 } from './equations/r-218.ts';
import { equation as equations_r_22 } from './equations/r-22.ts';
import { equation as equations_r_227ea } from './equations/r-227ea.ts';
import { equation as equations_r_23 } from './equations/r-23.ts';
import { equation as equations_r_236fa } from './equations/r-236fa.ts';
import { equation as equations_r_245fa } from './equations/r-245fa.ts';
import { equation as equations_r_290 } from './equations/r-290.ts';
import { equation as equations_r_32 } from './equations/r-32.ts';
import { equation as equations_r_404a } from './equations/r-404a.ts';
import { equation as equations_r_407c } from './equations/r-407c.ts';
import { equation as equations_r_410a } from './equations/r-410a.ts';
import { equation as equations_r_507a } from './equations/r-507a.ts';
import { equation as equations_r_600 } from './equations/r-600.ts';
import { equation as equations_r_600a } from './equations/r-600a.ts';
import { equation as equations_r_601 } from './equations/r-601.ts';
import { equation as equations_r_601a } from './equations/r-601a.ts';
import { equation as equations_r_744 } from './equations/r-744.ts';
import { table as saturation_r_11 } from './saturation/r-11.ts';
import { table as saturation_r_115 } from './saturation/r-115.ts';
import { table as saturation_r_116 } from './saturation/r-116.ts';
import { table as saturation_r_12 } from './saturation/r-12.ts';
import { table as saturation_r_123 } from './saturation/r-123.ts';
import { table as saturation_r_1233zd_e } from './saturation/r-1233zd-e.ts';
import { table as saturation_r_1234yf } from './saturation/r-1234yf.ts';
import { table as saturation_r_1234ze_e } from './saturation/r-1234ze-e.ts';
import { table as saturation_r_124 } from './saturation/r-124.ts';
import { table as saturation_r_125 } from './saturation/r-125.ts';
import { table as saturation_r_1270 } from './saturation/r-1270.ts';
import { table as saturation_r_134a } from './saturation/r-134a.ts';
import { table as saturation_r_142b } from './saturation/r-142b.ts';
import { table as saturation_r_143a } from './saturation/r-143a.ts';
import { table as saturation_r_152a } from './saturation/r-152a.ts';
import { table as saturation_r_218 } from './saturation/r-218.ts';
import { table as saturation_r_22 } from './saturation/r-22.ts';
import { table as saturation_r_227ea } from './saturation/r-227ea.ts';
import { table as saturation_r_23 } from './saturation/r-23.ts';
import { table as saturation_r_236fa } from './saturation/r-236fa.ts';
import { table as saturation_r_245fa } from './saturation/r-245fa.ts';
import { table as saturation_r_290 } from './saturation/r-290.ts';
import { table as saturation_r_32 } from './saturation/r-32.ts';
import { table as saturation_r_401a } from './saturation/r-401a.ts';
import { table as saturation_r_402a } from './saturation/r-402a.ts';
import { table as saturation_r_404a } from './saturation/r-404a.ts';
import { table as saturation_r_407a } from './saturation/r-407a.ts';
import { table as saturation_r_407c } from './saturation/r-407c.ts';
import { table as saturation_r_407f } from './saturation/r-407f.ts';
import { table as saturation_r_407h } from './saturation/r-407h.ts';
import { table as saturation_r_408a } from './saturation/r-408a.ts';
import { table as saturation_r_409a } from './saturation/r-409a.ts';
import { table as saturation_r_410a } from './saturation/r-410a.ts';
import { table as saturation_r_414b } from './saturation/r-414b.ts';
import { table as saturation_r_417a } from './saturation/r-417a.ts';
import { table as saturation_r_421a } from './saturation/r-421a.ts';
import { table as saturation_r_422b } from './saturation/r-422b.ts';
import { table as saturation_r_422d } from './saturation/r-422d.ts';
import { table as saturation_r_424a } from './saturation/r-424a.ts';
import { table as saturation_r_426a } from './saturation/r-426a.ts';
import { table as saturation_r_427a } from './saturation/r-427a.ts';
import { table as saturation_r_434a } from './saturation/r-434a.ts';
import { table as saturation_r_437a } from './saturation/r-437a.ts';
import { table as saturation_r_438a } from './saturation/r-438a.ts';
import { table as saturation_r_444b } from './saturation/r-444b.ts';
import { table as saturation_r_448a } from './saturation/r-448a.ts';
import { table as saturation_r_449a } from './saturation/r-449a.ts';
import { table as saturation_r_450a } from './saturation/r-450a.ts';
import { table as saturation_r_452a } from './saturation/r-452a.ts';
import { table as saturation_r_452b } from './saturation/r-452b.ts';
import { table as saturation_r_453a } from './saturation/r-453a.ts';
import { table as saturation_r_454a } from './saturation/r-454a.ts';
import { table as saturation_r_454b } from './saturation/r-454b.ts';
import { table as saturation_r_454c } from './saturation/r-454c.ts';
import { table as saturation_r_455a } from './saturation/r-455a.ts';
import { table as saturation_r_457a } from './saturation/r-457a.ts';
import { table as saturation_r_458a } from './saturation/r-458a.ts';
import { table as saturation_r_500 } from './saturation/r-500.ts';
import { table as saturation_r_502 } from './saturation/r-502.ts';
import { table as saturation_r_507a } from './saturation/r-507a.ts';
import { table as saturation_r_508b } from './saturation/r-508b.ts';
import { table as saturation_r_513a } from './saturation/r-513a.ts';
import { table as saturation_r_515b } from './saturation/r-515b.ts';
import { table as saturation_r_600 } from './saturation/r-600.ts';
import { table as saturation_r_600a } from './saturation/r-600a.ts';
import { table as saturation_r_601 } from './saturation/r-601.ts';
import { table as saturation_r_601a } from './saturation/r-601a.ts';
import { table as saturation_r_744 } from './saturation/r-744.ts';

export const pureFacts: readonly PureFacts[] = [
  refrigerants_r_11,
  refrigerants_r_115,
  refrigerants_r_116,
  refrigerants_r_12,
  refrigerants_r_123,
  refrigerants_r_1233zd_e,
  refrigerants_r_1234yf,
  refrigerants_r_1234ze_e,
  refrigerants_r_124,
  refrigerants_r_125,
  refrigerants_r_1270,
  refrigerants_r_134a,
  refrigerants_r_142b,
  refrigerants_r_143a,
  refrigerants_r_152a,
  refrigerants_r_218,
  refrigerants_r_22,
  refrigerants_r_227ea,
  refrigerants_r_23,
  refrigerants_r_236fa,
  refrigerants_r_245fa,
  refrigerants_r_290,
  refrigerants_r_32,
  refrigerants_r_600,
  refrigerants_r_600a,
  refrigerants_r_601,
  refrigerants_r_601a,
  refrigerants_r_744,
];
export const blendFacts: readonly BlendFacts[] = [
  blends_r_401a,
  blends_r_402a,
  blends_r_404a,
  blends_r_407a,
  blends_r_407c,
  blends_r_407f,
  blends_r_407h,
  blends_r_408a,
  blends_r_409a,
  blends_r_410a,
  blends_r_414b,
  blends_r_417a,
  blends_r_421a,
  blends_r_422b,
  blends_r_422d,
  blends_r_424a,
  blends_r_426a,
  blends_r_427a,
  blends_r_434a,
  blends_r_437a,
  blends_r_438a,
  blends_r_444b,
  blends_r_448a,
  blends_r_449a,
  blends_r_450a,
  blends_r_452a,
  blends_r_452b,
  blends_r_453a,
  blends_r_454a,
  blends_r_454b,
  blends_r_454c,
  blends_r_455a,
  blends_r_457a,
  blends_r_458a,
  blends_r_500,
  blends_r_502,
  blends_r_507a,
  blends_r_508b,
  blends_r_513a,
  blends_r_515b,
];
export const equations: readonly FluidEquation[] = [
  equations_r_11,
  equations_r_115,
  equations_r_116,
  equations_r_12,
  equations_r_123,
  equations_r_1233zd_e,
  equations_r_1234yf,
  equations_r_1234ze_e,
  equations_r_124,
  equations_r_125,
  equations_r_1270,
  equations_r_134a,
  equations_r_142b,
  equations_r_143a,
  equations_r_152a,
  equations_r_218,
  equations_r_22,
  equations_r_227ea,
  equations_r_23,
  equations_r_236fa,
  equations_r_245fa,
  equations_r_290,
  equations_r_32,
  equations_r_404a,
  equations_r_407c,
  equations_r_410a,
  equations_r_507a,
  equations_r_600,
  equations_r_600a,
  equations_r_601,
  equations_r_601a,
  equations_r_744,
];
/** By file name: the designation in lower case. */
export const saturationTables: Readonly<Record<string, SaturationTable>> = {
  'r-11': saturation_r_11,
  'r-115': saturation_r_115,
  'r-116': saturation_r_116,
  'r-12': saturation_r_12,
  'r-123': saturation_r_123,
  'r-1233zd-e': saturation_r_1233zd_e,
  'r-1234yf': saturation_r_1234yf,
  'r-1234ze-e': saturation_r_1234ze_e,
  'r-124': saturation_r_124,
  'r-125': saturation_r_125,
  'r-1270': saturation_r_1270,
  'r-134a': saturation_r_134a,
  'r-142b': saturation_r_142b,
  'r-143a': saturation_r_143a,
  'r-152a': saturation_r_152a,
  'r-218': saturation_r_218,
  'r-22': saturation_r_22,
  'r-227ea': saturation_r_227ea,
  'r-23': saturation_r_23,
  'r-236fa': saturation_r_236fa,
  'r-245fa': saturation_r_245fa,
  'r-290': saturation_r_290,
  'r-32': saturation_r_32,
  'r-401a': saturation_r_401a,
  'r-402a': saturation_r_402a,
  'r-404a': saturation_r_404a,
  'r-407a': saturation_r_407a,
  'r-407c': saturation_r_407c,
  'r-407f': saturation_r_407f,
  'r-407h': saturation_r_407h,
  'r-408a': saturation_r_408a,
  'r-409a': saturation_r_409a,
  'r-410a': saturation_r_410a,
  'r-414b': saturation_r_414b,
  'r-417a': saturation_r_417a,
  'r-421a': saturation_r_421a,
  'r-422b': saturation_r_422b,
  'r-422d': saturation_r_422d,
  'r-424a': saturation_r_424a,
  'r-426a': saturation_r_426a,
  'r-427a': saturation_r_427a,
  'r-434a': saturation_r_434a,
  'r-437a': saturation_r_437a,
  'r-438a': saturation_r_438a,
  'r-444b': saturation_r_444b,
  'r-448a': saturation_r_448a,
  'r-449a': saturation_r_449a,
  'r-450a': saturation_r_450a,
  'r-452a': saturation_r_452a,
  'r-452b': saturation_r_452b,
  'r-453a': saturation_r_453a,
  'r-454a': saturation_r_454a,
  'r-454b': saturation_r_454b,
  'r-454c': saturation_r_454c,
  'r-455a': saturation_r_455a,
  'r-457a': saturation_r_457a,
  'r-458a': saturation_r_458a,
  'r-500': saturation_r_500,
  'r-502': saturation_r_502,
  'r-507a': saturation_r_507a,
  'r-508b': saturation_r_508b,
  'r-513a': saturation_r_513a,
  'r-515b': saturation_r_515b,
  'r-600': saturation_r_600,
  'r-600a': saturation_r_600a,
  'r-601': saturation_r_601,
  'r-601a': saturation_r_601a,
  'r-744': saturation_r_744,
};
