import type { Style } from 'excelize-wasm';

import type { Look } from './recipe.ts';

const sides = {
  all: ['left', 'top', 'right', 'bottom'],
  bottom: ['bottom'],
  top: ['top'],
  left: ['left'],
} as const;

/** Liberation Sans and Arial have the same widths, so pages break alike in both worlds. */
const family = 'Arial';

/** Translates a look into the writer's style. */
export function styleOf(look: Look): Style {
  return {
    Font: {
      Family: family,
      Size: look.size ?? 10,
      Bold: look.bold ?? false,
      Italic: look.italic ?? false,
      Color: look.ink ?? '1F2A33',
    },
    ...(look.fill === undefined ? {} : { Fill: { Type: 'pattern', Pattern: 1, Color: [look.fill] } }),
    Alignment: {
      // Without an alignment of its own a cell is not indented.
      Horizontal: look.align ?? (look.indent === undefined ? '' : 'left'),
      Vertical: look.vertical ?? 'center',
      WrapText: look.wrap ?? false,
      Indent: look.indent ?? 0,
      TextRotation: look.turned ?? 0,
    },
    ...(look.line === undefined
      ? {}
      : {
          Border: sides[look.line.sides].map((side) => ({
            Type: side,
            Color: look.line?.colour ?? '',
            Style: 1,
          })),
        }),
    ...(look.format === undefined ? {} : { CustomNumFmt: look.format }),
    Protection: { Locked: look.locked ?? true, Hidden: false },
  };
}

/** Only what differs from the cell's own look. */
export function ruleStyleOf(look: Pick<Look, 'fill' | 'ink' | 'bold' | 'italic'>): Style {
  return {
    Font: {
      ...(look.ink === undefined ? {} : { Color: look.ink }),
      ...(look.bold === undefined ? {} : { Bold: look.bold }),
      ...(look.italic === undefined ? {} : { Italic: look.italic }),
    },
    ...(look.fill === undefined ? {} : { Fill: { Type: 'pattern', Pattern: 1, Color: [look.fill] } }),
  };
}
