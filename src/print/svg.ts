/** A drawing as an SVG text for a Typst template, which sets it as vectors in the fonts of the page. */
import type {Element} from 'hast';
import {toHtml} from 'hast-util-to-html';
import {withoutUnseen} from '../text/printable.js';

/**
 * What the drawing says in words is left out: a document has it beside the drawing, and as an attribute it may hold what
 * HTML allows there and XML doesn't.
 */
export function svgText(node: Element): string {
  const {ariaLabel: _, ...drawn} = node.properties;
  const properties = {
    ...drawn,
    xmlns: 'http://www.w3.org/2000/svg',
    fontFamily: 'DejaVu Sans',
    fontStretch: 'condensed',
  };
  return withoutUnseen(toHtml({...node, properties}, {space: 'svg'}));
}
