import type { Look } from './recipe.ts';

/**
 * The colours of the house. Blue against orange, never red against green: told apart by colour-blind readers, and the word
 * in the cell says the same.
 */
export const colours = {
  ink: '1F2A33',
  quiet: '5B6B78',
  deep: '22384D',
  deepInk: 'FFFFFF',
  line: 'C9D2DA',
  faintLine: 'E1E7EC',
  inputFill: 'FFFBEA',
  inputLine: 'E3D7A8',
  computedFill: 'EDF2F6',
  paper: 'FFFFFF',
  goodFill: 'CFE3F4',
  goodInk: '0B3C66',
  careFill: 'FBE6B5',
  careInk: '5A3E00',
  stopFill: 'F4C3A6',
  stopInk: '7A2300',
  mutedFill: 'DADFE4',
  mutedInk: '3D4852',
} as const;

/** Colours of the column groups: what is typed stands under warm bands, what is worked out under cool ones. */
export const bandLooks = {
  input: { fill: '8A6D1B', ink: 'FFFFFF' },
  computed: { fill: '3F6484', ink: 'FFFFFF' },
  key: { fill: '22384D', ink: 'FFFFFF' },
} as const;

export const looks = {
  title: { size: 18, bold: true, ink: colours.deep },
  subtitle: { size: 10, ink: colours.quiet },
  section: {
    size: 12,
    bold: true,
    ink: colours.deep,
    line: { colour: colours.deep, sides: 'bottom' },
  },
  heading: {
    fill: 'D9E2EA',
    ink: colours.deep,
    bold: true,
    size: 9,
    wrap: true,
    align: 'center',
    vertical: 'center',
    line: { colour: colours.line, sides: 'all' },
  },
  unit: { size: 8, ink: colours.quiet, align: 'center', italic: true },
  input: {
    fill: colours.inputFill,
    line: { colour: colours.inputLine, sides: 'all' },
    locked: false,
  },
  computed: {
    fill: colours.computedFill,
    line: { colour: colours.line, sides: 'all' },
  },
  body: { size: 10, wrap: true, vertical: 'center' },
  label: { size: 10, ink: colours.ink, wrap: true },
  good: { fill: colours.goodFill, ink: colours.goodInk, bold: true },
  care: { fill: colours.careFill, ink: colours.careInk, bold: true },
  stop: { fill: colours.stopFill, ink: colours.stopInk, bold: true },
  muted: { fill: colours.mutedFill, ink: colours.mutedInk, italic: true },
} as const satisfies Record<string, Look>;
