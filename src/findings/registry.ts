/** Every kind of finding, in the order in which the documentation lists them. A test holds it against the folder. */
import {barredMaterial} from './barred-material.js';
import {cleanFirst} from './clean-first.js';
import {leftSlack} from './left-slack.js';
import type {FindingKind} from './model.js';

export const FINDINGS: readonly FindingKind[] = [cleanFirst, leftSlack, barredMaterial];
