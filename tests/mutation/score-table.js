import { isDrawn, keyOf } from './sample.js';

const columns = ['Killed', 'Timeout', 'Survived', 'NoCoverage', 'RuntimeError', 'Ignored'];

/** Counts of one folder. What no test reaches is reported of all mutants, drawn or not, and is drawn here. */
function countsOf({ report, share }) {
  const counts = Object.fromEntries(columns.map((column) => [column, 0]));
  let all = 0;
  for (const [file, { mutants }] of Object.entries(report.files)) {
    for (const mutant of mutants) {
      all += 1;
      if (isDrawn(keyOf(file, mutant), share)) counts[mutant.status] += 1;
    }
  }
  return { ...counts, all };
}

const tried = ({ Killed, Timeout, Survived, NoCoverage }) => Killed + Timeout + Survived + NoCoverage;

/** Share of the changes made to the code that a test noticed; a test that never ends has noticed. */
const scoreOf = (counts) => (counts.Killed + counts.Timeout) / tried(counts);

/** Estimate of all folders: each with the weight of all its mutants; half-width of the 95 % interval of a sample. */
function overall(rows) {
  const weight = ({ counts }) => counts.all - counts.Ignored;
  const total = rows.reduce((sum, row) => sum + weight(row), 0);
  let score = 0;
  let variance = 0;
  for (const row of rows) {
    const share = weight(row) / total;
    score += share * scoreOf(row.counts);
    variance += share ** 2 * varianceOf(row);
  }
  return { score, doubt: 1.96 * Math.sqrt(variance) };
}

/** Of a share in a sample without replacement. */
function varianceOf({ counts, share }) {
  const score = scoreOf(counts);
  return (score * (1 - score) * (1 - share)) / tried(counts);
}

const percent = (value) => `${(100 * value).toFixed(1)} %`;

/** @param {{ folder: string, report: object, share: number }[]} reports - one for each folder, with the share tried */
export function scoreTable(reports) {
  const rows = reports.map((one) => ({ ...one, counts: countsOf(one) }));
  const names = ['killed', 'timeout', 'survived', 'uncovered', 'failed', 'ignored'];
  const lines = [['folder', 'mutants', 'sample', 'score', '+/-', ...names]];
  for (const row of rows) {
    const doubt = 1.96 * Math.sqrt(varianceOf(row));
    lines.push(
      [row.folder, row.counts.all, percent(row.share), percent(scoreOf(row.counts)), percent(doubt)].concat(
        columns.map((column) => row.counts[column]),
      ),
    );
  }
  const { score, doubt } = overall(rows);
  const sum = (column) => rows.reduce((total, { counts }) => total + counts[column], 0);
  lines.push(['all', sum('all'), '', percent(score), percent(doubt), ...columns.map(sum)]);
  return lines.map((line) => line.map((cell) => String(cell).padStart(10)).join(' ')).join('\n');
}
