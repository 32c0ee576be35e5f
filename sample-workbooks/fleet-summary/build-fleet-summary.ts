import { unitRegister } from '../../src/records/index.ts';
import { fillTemplate } from '../../functions/office-work/fill/fill-template.ts';
import { fleetFill } from '../../functions/office-work/gather/fleet-fill.ts';
import { Gathering } from '../../functions/office-work/gather/gathering.ts';
import { Judge } from '../../functions/office-work/gather/judge.ts';
import { rowsOf } from '../../functions/office-work/gather/read-log.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import { outfit } from '../visit-log/scenario/outfit.ts';
import { recalculateSample } from '../writing/cached-values.ts';
import { sampleFiles } from './scenario/logs.ts';

/** Nothing in the sample depends on the day on which it is built. */
const checkedOn = new Date(2026, 10, 1);

/** The sample: the invented logs of a year, gathered into the template just as `ouncewise gather` does it. */
export function buildFleetSummary(template: Uint8Array): Uint8Array {
  const units = unitSystem('US');
  const gathering = new Gathering();
  const encoder = new TextEncoder();
  const files = sampleFiles();
  for (const { name, text } of files) {
    for (const row of rowsOf(name, encoder.encode(text), units).rows) gathering.add(row);
  }
  const fill = fleetFill(gathering, {
    units,
    unitsWord: 'US',
    judge: new Judge(gathering.rows(unitRegister), checkedOn),
    gathered: `November 2025 to October 2026, gathered from ${files.length} files. People, places and figures are invented.`,
    outfit: outfit.name,
    visitPrice: 95,
    gasPrice: 2.6,
    fileName: (file) => file,
  });
  return recalculateSample(fillTemplate(template, fill)).bytes;
}
