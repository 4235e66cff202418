/** A drawing of the model as an SVG text for the Typst template, which sets it as vectors. */
import {svgText} from '../print/svg.js';
import {drawingText, wireRuns} from './drawing-text.js';
import {drawingNode} from './html-drawing.js';
import type {Drawing} from './model.js';
import type {Words} from './words.js';

export interface PrintDrawing {
  readonly svg: string;
  /** Millimetres. */
  readonly width: number;
  readonly alt: string;
  /** What stands beside it in words: the runs of a wire. */
  readonly says: readonly string[];
}

/** The very drawing of the HTML, so that both say the same. */
export function printDrawing(drawing: Drawing, words: Words): PrintDrawing {
  const node = drawingNode(drawing, words);
  const {width} = node.properties;
  return {
    svg: svgText(node),
    width: Number.parseFloat(String(width)),
    alt: drawingText(drawing, words),
    says: wireRuns(drawing, words),
  };
}
