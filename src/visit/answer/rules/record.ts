import { figure, phrase } from '../../../phrase.ts';
import { answerOf } from '../answer-form.ts';
import { headings, registerHeadings } from '../ask.ts';
import type { Rule } from '../evidence.ts';

const outOfUse: readonly string[] = ['stored', 'retired', 'scrapped'];

/** Readings of a unit that the register calls out of use belong to another unit, or the register is wrong. */
export const unitOutOfUse: Rule = ({ unit }) => {
  if (unit.status === undefined || !outOfUse.includes(unit.status)) return undefined;
  return answerOf(
    'correct-record',
    phrase`Correct the record`,
    [phrase`the register says this unit is ${unit.status}: is it this unit, and is it in use again?`],
    [registerHeadings.status],
  );
};

/** A set number that stands twice leaves two sums of ounces, and only the record tells which is right. */
export const setTwice: Rule = ({ known, inside }) => {
  if (!known.setTwice) return undefined;
  const doubt =
    known.addedInVisitKg > 0
      ? phrase`; with both, ${figure(known.addedInVisitKg, 'mass')} went in during this visit and at least ${figure(inside.lowKg, 'mass')} are inside, else less`
      : phrase``;
  return answerOf(
    'correct-record',
    phrase`Correct the record`,
    [phrase`a set number stands twice in this visit: the same weighing twice, or two steps?${doubt}`],
    [headings.set, headings.addedKg],
  );
};

/** What the log calls the gas must be what the register calls it. */
export const gasOfRegister: Rule = ({ set, unit }) => {
  const gas = unit.refrigerant?.designation;
  if (gas === undefined || set.gasInUnit === undefined || set.gasInUnit === gas) return undefined;
  return answerOf(
    'correct-record',
    phrase`Correct the record`,
    [phrase`the log says ${set.gasInUnit}, the register says ${gas}: read the label`],
    [registerHeadings.refrigerant],
  );
};

/** Figures that no unit can show, or that the record cannot hold. */
export const impossible: Rule = ({ set }) => {
  const [first] = set.impossible;
  if (first === undefined) return undefined;
  const said = set.impossible.map((finding) => finding.said);
  const ask = [...new Set(set.impossible.map(({ heading }) => heading))];
  return first.what === 'reading'
    ? answerOf('read-again', phrase`Read again`, said, ask)
    : answerOf('correct-record', phrase`Correct the record`, said, ask);
};
