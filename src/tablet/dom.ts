/** Elements made one by one: every text goes in as text, so that none can become markup. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />

type Attributes = Readonly<Record<string, string | undefined>>;

/** An element with attributes and what stands in it; an attribute that is undefined is left out. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  content: readonly (string | Node)[] = [],
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) element.setAttribute(name, value);
  }
  element.append(...content);
  return element;
}

const SHAPES = {
  /** A tick, a triangle, a cross: told apart without colour. */
  in: 'M2 9 L6 13 L14 3',
  near: 'M8 2 L15 14 H1 Z',
  out: 'M2 2 L14 14 M14 2 L2 14',
} as const;

export function shape(name: keyof typeof SHAPES): SVGElement {
  const space = 'http://www.w3.org/2000/svg';
  const svg = document.createElementNS(space, 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS(space, 'path');
  path.setAttribute('d', SHAPES[name]);
  path.setAttribute('fill', 'none');
  path.setAttribute('stroke', 'currentColor');
  path.setAttribute('stroke-width', '2.4');
  svg.append(path);
  return svg;
}
