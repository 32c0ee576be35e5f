import { expect, test } from 'vitest';
import { nearNames } from '../../../../functions/office-work/quote/near-names.ts';

/** Definition: fewest edits first, letters and numbers only, leading zeros dropped. */
test('names that were meant come first', () => {
  const names = ['U-01', 'U-02', 'U-12', 'W-02', 'Roof 2'];
  expect(nearNames('u2', names, 1)).toEqual(['U-02']);
  expect(nearNames('U-002', names, 2)[0]).toBe('U-02');
  expect(nearNames('roof-02', names, 1)).toEqual(['Roof 2']);
  expect(nearNames('zz', names)).toHaveLength(5);
  expect(nearNames('', [])).toEqual([]);
});
