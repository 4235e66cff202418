/** A drawing of the model as an SVG text for the Typst template, which sets it as vectors. */
import {toHtml} from 'hast-util-to-html';
import {drawingText, wireRuns} from './drawing-text.js';
import {drawingNode} from './html-drawing.js';
import type {Drawing} from './model.js';
import {withoutUnseen} from './unseen.js';
import type {Words} from './words.js';

export interface PrintDrawing {
  readonly svg: string;
  /** Millimetres. */
  readonly width: number;
  readonly alt: string;
  /** What stands beside it in words: the runs of a wire. */
  readonly says: readonly string[];
}

export function printDrawing(drawing: Drawing, words: Words): PrintDrawing {
  const node = drawingNode(drawing, words);
  const {width} = node.properties;
  const properties = {
    ...node.properties,
    xmlns: 'http://www.w3.org/2000/svg',
    fontFamily: 'DejaVu Sans',
    fontStretch: 'condensed',
  };
  return {
    svg: withoutUnseen(toHtml({...node, properties}, {space: 'svg'})),
    width: Number.parseFloat(String(width)),
    alt: drawingText(drawing, words),
    says: wireRuns(drawing, words),
  };
}
