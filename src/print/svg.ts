/** A drawing as an SVG text for a Typst template, which sets it as vectors in the fonts of the page. */
import type {Element} from 'hast';
import {toHtml} from 'hast-util-to-html';
import {withoutUnseen} from '../text/printable.js';

export function svgText(node: Element): string {
  const properties = {
    ...node.properties,
    xmlns: 'http://www.w3.org/2000/svg',
    fontFamily: 'DejaVu Sans',
    fontStretch: 'condensed',
  };
  return withoutUnseen(toHtml({...node, properties}, {space: 'svg'}));
}
