import type { WorkingLine } from '../lines/line.ts';
import type { SheetUnits } from '../sheet-units.ts';
import { limitsOf } from './limits.ts';
import { all, any, firstOf, flag, isNumber, not, oneOf } from './words.ts';

/** A value that the next set starts from; a set that is not used hands it on. */
const kept = (key: string, label: string, before: number | string, formula: string): WorkingLine => ({
  kind: 'working',
  key,
  label,
  before,
  formula: `IF([used]=0,[<${key}],${formula})`,
});

const now = (key: string, label: string, formula: string): WorkingLine => ({
  kind: 'working',
  key,
  label,
  formula: `IF([used]=0,0,${formula})`,
});

const weighedIn = '"nameplate weighed in"';
const residual = '"residual weighed"';

/** What is known after each set: the masses, the state of the circuit, the standing pressure; as `src/visit/answer/learn.ts`. */
export function stateLines(units: SheetUnits): readonly WorkingLine[] {
  const { crumb, whole } = limitsOf(units);
  const added = `SUM([added])>${crumb}`;
  const recovered = `SUM([recovered])>${crumb}`;
  return [
    kept('s_basis', 'Mass known by', '', 'IF([mass_basis]<>"",[mass_basis],[<s_basis])'),
    now(
      'found_now',
      'Found anew',
      flag(
        `IF(${all(isNumber('[found]'), `[s_basis]<>${weighedIn}`)},IF(${isNumber('[<s_found]')},ABS([found]-[<s_found])>${crumb},TRUE),FALSE)`,
      ),
    ),
    kept('s_found', 'Found', '', 'IF([found_now]=1,[found],[<s_found])'),
    now('held', 'Vacuum held', flag('[vacuum_check]="Dry and tight"')),
    now('emptied_now', 'Emptied now', flag(any('[held]=1', all(recovered, `[s_basis]=${weighedIn}`)))),
    now(
      'all_out',
      'All of it taken out',
      flag(
        all(
          recovered,
          not(added),
          '[compressor_state]<>"running"',
          `IF(${all(`[s_basis]=${residual}`, isNumber('[s_found]'))},SUM([recovered])>=${whole}*SUM([s_found]),TRUE)`,
        ),
      ),
    ),
    now(
      'anew',
      'Weighing starts anew',
      flag(
        any(
          '[emptied_now]=1',
          '[found_now]=1',
          all(`[mass_basis]=${weighedIn}`, '[<s_basis]<>""', `[<s_basis]<>${weighedIn}`),
        ),
      ),
    ),
    kept('s_added', 'Added since', 0, 'IF([anew]=1,0,[<s_added])+SUM([added])'),
    kept('s_recovered', 'Recovered since', 0, 'IF([anew]=1,0,[<s_recovered]+SUM([recovered]))'),
    kept(
      's_recovered_with_found',
      'Recovered in the row that was found',
      0,
      'IF([found_now]=1,SUM([recovered]),IF([anew]=1,0,[<s_recovered_with_found]))',
    ),
    kept('s_added_visit', 'Added in the visit', 0, '[<s_added_visit]+SUM([added])'),
    kept('s_recovered_visit', 'Recovered in the visit', 0, '[<s_recovered_visit]+SUM([recovered])'),
    kept(
      's_added_unknown',
      'A set does not say what was added',
      0,
      flag(any(not(isNumber('[added]')), all('[<s_added_unknown]=1', '[anew]=0'))),
    ),
    kept('s_emptied', 'Emptied', 0, flag(any('[emptied_now]=1', all('[<s_emptied]=1', '[found_now]=0')))),
    kept(
      's_open',
      'Emptied, not proved tight',
      0,
      flag(all('[held]=0', not(added), any('[all_out]=1', '[emptied_now]=1', '[<s_open]=1'))),
    ),
    kept(
      's_held',
      'Tight, dry and empty',
      0,
      flag(all(not(added), any('[held]=1', all('[<s_held]=1', not(recovered))))),
    ),
    now(
      'accesses',
      'Has a way in',
      flag(
        any(
          ...['[suction]', '[liquid]', '[found]', '[vacuum_start]', '[test_1]'].map(isNumber),
          added,
          recovered,
          'SUM([tap_added])>0',
        ),
      ),
    ),
    kept('s_accessed', 'Had a way in', 0, flag(any('[<s_accessed]=1', '[accesses]=1'))),
    kept('s_taps', 'Taps fitted in the visit', 0, '[<s_taps]+SUM([tap_added])'),
    kept(
      's_leak',
      'A leak is open',
      0,
      firstOf([['[leak_fixed]="yes"', '0']], flag(any('[<s_leak]=1', '[leak_found]="yes"'))),
    ),
    kept(
      's_standing',
      'Standing pressure said',
      '',
      firstOf(
        [
          [
            all(
              '[s_open]=0',
              oneOf('[standing_check]', ['Matches', 'Within doubt', 'Non-condensables', 'Mismatch', 'Empty']),
            ),
            '[standing_check]',
          ],
          [
            any(
              '[s_open]=1',
              all('[s_emptied]=1', '[<s_emptied]=0'),
              all(`[mass_basis]=${weighedIn}`, added),
              all('[<s_standing]<>""', '[found_now]=1'),
            ),
            '""',
          ],
          [
            any(added, recovered),
            `IF(${oneOf('[<s_standing]', ['Non-condensables', 'Mismatch'])},[<s_standing],"")`,
          ],
        ],
        '[<s_standing]',
      ),
    ),
    kept(
      's_superheat',
      'Superheat of the last running set',
      '',
      `IF(${isNumber('[superheat]')},[superheat],[<s_superheat])`,
    ),
    kept('s_added_at', 'Added by then', 0, `IF(${isNumber('[superheat]')},[s_added_visit],[<s_added_at])`),
    ...massLines(),
  ];
}

/** Between what the scale says is inside at the least and at the most; no number: nobody knows. */
function massLines(): readonly WorkingLine[] {
  const added = 'MAX(0,[s_added]-[s_recovered])';
  const inVisit = 'MAX(0,[s_added_visit]-[s_recovered_visit])';
  const inside = 'SUM([s_found])+[s_added]-[s_recovered]';
  const less = `MAX(0,${inside}-[s_recovered_with_found])`;
  return [
    now(
      'least',
      'Inside at the least',
      firstOf(
        [
          ['[s_emptied]=1', `IF([s_added_unknown]=1,MAX(0,[s_added]),${added})`],
          [`[s_basis]=${weighedIn}`, `IF([s_added_unknown]=1,MAX(0,[s_added]),IF([s_added]>0,${added},0))`],
          [`AND(${isNumber('[s_found]')},[s_basis]<>${weighedIn})`, less],
        ],
        inVisit,
      ),
    ),
    now(
      'most',
      'Inside at the most',
      firstOf(
        [
          ['[s_added_unknown]=1', '"unknown"'],
          ['[s_emptied]=1', added],
          [`[s_basis]=${weighedIn}`, `IF([s_added]>0,${added},"unknown")`],
          [all(`[s_basis]=${residual}`, isNumber('[s_found]')), `MAX(0,${inside})`],
        ],
        '"unknown"',
      ),
    ),
    now(
      'room_left',
      'Room',
      `IF(${all(isNumber('{nameplate}'), isNumber('[most]'))},{nameplate}-[most],"unknown")`,
    ),
  ];
}
