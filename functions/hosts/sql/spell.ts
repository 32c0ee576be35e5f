/** How SQL spells a function; most engines take the name in any case. */
export function spell(id: string): string {
  return `OUNCE_${id}`;
}
