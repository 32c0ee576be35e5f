import { describe, expect, it } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';

const saturation = (elevation: number | string, units = 'US'): number =>
  call('SATTEMP', { refrigerant: 'R-22', pressure: '68.5 psig', curve: 'dew', elevation, units }) as number;

describe('a barometer in place of the elevation', () => {
  it('is the air that the gauge reads from (5,000 ft: 12.228 psia = 24.90 inHg, ASHRAE Handbook Fundamentals 2017, table 1)', () => {
    for (const barometer of ['24.896 inHg', '12.228 psia', '843.1 hPa', '84.31 kPa'])
      expect(saturation(barometer)).toBeCloseTo(saturation(5000), 2);
    expect(saturation('84.31 kPa', 'SI')).toBeCloseTo(saturation(1524, 'SI'), 2);
    // A low over the sea: 29.00 inHg is no elevation, but the gauge does not know that.
    expect(saturation('29.00 inHg')).toBeLessThan(saturation(0));
  });

  it('gives back the pressure that was read', () => {
    for (const pressure of [9, 11.3, 12.228, 14.696, 15])
      expect(call('AIRPRESSURE', { elevation: `${pressure} psia` })).toBeCloseTo(pressure, 6);
  });

  it('goes no further than the elevations do, and is not taken for a height', () => {
    expect(call('AIRPRESSURE', { elevation: '5 psia' })).toMatchObject({
      code: 'out-of-range',
      parameter: 'elevation',
    });
    expect(call('AIRPRESSURE', { elevation: '18 psia' })).toMatchObject({ code: 'out-of-range' });
    expect(call('AIRPRESSURE', { elevation: '1524 m' })).toBeCloseTo(12.228, 2);
    expect(call('AIRPRESSURE', { elevation: '5000 elbows' })).toMatchObject({ code: 'invalid-argument' });
  });

  it('is told in the help of every function that takes an elevation', () => {
    const taking = catalogue.all().filter(({ parameterNames }) => parameterNames.includes('elevation'));
    expect(taking.length).toBeGreaterThan(10);
    for (const { id, parameters } of taking.filter(({ id }) => id !== 'AIRPRESSURE'))
      expect(parameters['elevation']?.description, id).toMatch(/barometer/);
  });
});
