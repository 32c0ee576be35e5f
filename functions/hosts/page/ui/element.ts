/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element with attributes and children. Text becomes text nodes, never markup. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  setAttributes(made, attributes);
  made.append(...children);
  return made;
}

export function drawing(
  name: string,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  setAttributes(made, attributes);
  made.append(...children);
  return made;
}

function setAttributes(made: Element, attributes: Attributes): void {
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    made.setAttribute(key, value === true ? '' : String(value));
  }
}

/** An element of the page's own markup. */
export function part<T extends HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no part ${id}`);
  return found as T;
}
