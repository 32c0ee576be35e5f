import type { Family } from '../../runtime/families.ts';

/** The page of a family, relative to the guide. */
export function familyPage(family: Family): string {
  return `${family}.html`;
}

/** Where the guide explains a function, relative to the guide. */
export function guideLink({ family, id }: { readonly family: Family; readonly id: string }): string {
  return `${familyPage(family)}#${id.toLowerCase()}`;
}
