/**
 * ANSI B4.1-1967 fits in thousandths of an inch, for nominal sizes to 7.09 in (transition fits to 3.15 in). Read in
 * Machinery's Handbook: RC 1 to RC 7, LT and LN in the 31st ed., Tables 8a, 8b, 10 and 12, pp. 654–660
 * (online.flippingbook.com/view/954192180/718-732; its column order is lost, so every row is kept only where hole,
 * shaft and fit agree); FN in the 27th ed., Table 11, p. 663 (123docz.net/document/2158496), and over 3.94 in in the
 * 31st; FN at 3.94–4.73 in from memory.
 */

/** Limits from the nominal size: the hole's upper (its lower is nought), the shaft's upper and lower. */
export type InchRow = readonly [hole: number, upper: number, lower: number];

export interface InchClass {
  readonly name: string;
  /** As the standard calls the kind of fit. */
  readonly says: string;
  /** Sizes in inches that end a step, "over … to". */
  readonly ends: readonly number[];
  /** One a step; undefined where the class leaves the step out. */
  readonly rows: readonly (InchRow | undefined)[];
}

const ENDS = [0.12, 0.24, 0.4, 0.71, 1.19, 1.97, 3.15, 4.73, 7.09];
const FORCE_ENDS = [
  0.12, 0.24, 0.4, 0.56, 0.71, 0.95, 1.19, 1.58, 1.97, 2.56, 3.15, 3.94, 4.73, 5.52, 6.3, 7.09,
];

const H5 = [0.2, 0.2, 0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.7];
const H6 = [0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.7, 0.9, 1];
const H7 = [0.4, 0.5, 0.6, 0.7, 0.8, 1, 1.2, 1.4, 1.6];
const H8 = [0.6, 0.7, 0.9, 1, 1.2, 1.6, 1.8, 2.2, 2.5];
const H9 = [1, 1.2, 1.4, 1.6, 2, 2.5, 3, 3.5, 4];

const FORCE_H6 = [0.25, 0.3, 0.4, 0.4, 0.4, 0.5, 0.5, 0.6, 0.6, 0.7, 0.7, 0.9, 0.9, 1, 1, 1];
const FORCE_H7 = [0.4, 0.5, 0.6, 0.7, 0.7, 0.8, 0.8, 1, 1, 1.2, 1.2, 1.4, 1.4, 1.6, 1.6, 1.6];
const FORCE_H8 = [0.6, 0.7, 0.9, 1, 1, 1.2, 1.2, 1.6, 1.6, 1.8, 1.8, 2.2, 2.2, 2.5, 2.5, 2.5];

export const INCH_CLASSES: readonly InchClass[] = [
  running(
    'RC1',
    'close sliding',
    H5,
    '-.1/.25 -.15/.3 -.2/.35 -.25/.45 -.3/.55 -.4/.7 -.4/.7 -.5/.9 -.6/1.1',
  ),
  running('RC2', 'sliding', H6, '-.1/.3 -.15/.35 -.2/.45 -.25/.55 -.3/.7 -.4/.8 -.4/.9 -.5/1.1 -.6/1.3'),
  running(
    'RC3',
    'precision running',
    H7,
    '-.3/.55 -.4/.7 -.5/.9 -.6/1 -.8/1.3 -1/1.6 -1.2/1.9 -1.4/2.3 -1.6/2.6',
  ),
  running(
    'RC4',
    'close running',
    H8,
    '-.3/.7 -.4/.9 -.5/1.1 -.6/1.3 -.8/1.6 -1/2 -1.2/2.4 -1.4/2.8 -1.6/3.2',
  ),
  running(
    'RC5',
    'medium running',
    H8,
    '-.6/1 -.8/1.3 -1/1.6 -1.2/1.9 -1.6/2.4 -2/3 -2.5/3.7 -3/4.4 -3.5/5.1',
  ),
  running(
    'RC6',
    'medium running',
    H9,
    '-.6/1.2 -.8/1.5 -1/1.9 -1.2/2.2 -1.6/2.8 -2/3.6 -2.5/4.3 -3/5.2 -3.5/6',
  ),
  running('RC7', 'free running', H9, '-1/1.6 -1.2/1.9 -1.6/2.5 -2/3 -2.5/3.7 -3/4.6 -4/5.8 -5/7.2 -6/8.5'),
  placed('LT1', 'locational transition', H7, '.12/-.12 .15/-.15 .2/-.2 .2/-.2 .25/-.25 .3/-.3 .3/-.3'),
  placed('LT2', 'locational transition', H8, '.2/-.2 .25/-.25 .3/-.3 .35/-.35 .4/-.4 .5/-.5 .6/-.6'),
  placed('LT3', 'locational transition', H7, '- - .5/.1 .5/.1 .6/.1 .7/.1 .8/.1'),
  placed('LT4', 'locational transition', H8, '- - .7/.1 .8/.1 .9/.1 1.1/.1 1.3/.1'),
  placed('LT5', 'locational transition', H7, '.5/.25 .6/.3 .8/.4 .9/.5 1.1/.6 1.3/.7 1.5/.8'),
  placed('LT6', 'locational transition', H7, '.65/.25 .8/.3 1/.4 1.2/.5 1.4/.6 1.7/.7 2/.8'),
  placed('LN1', 'locational interference', H6, '.45/.25 .5/.3 .65/.4 .8/.4 1/.5 1.1/.6 1.3/.8 1.6/1 1.9/1.2'),
  placed(
    'LN2',
    'locational interference',
    H7,
    '.65/.4 .8/.5 1/.6 1.1/.7 1.3/.8 1.6/1 2.1/1.4 2.5/1.6 2.8/1.8',
  ),
  placed(
    'LN3',
    'locational interference',
    H7,
    '.75/.5 .9/.6 1.2/.8 1.4/1 1.7/1.2 2/1.4 2.3/1.6 2.9/2 3.5/2.5',
  ),
  force(
    'FN1',
    'light drive',
    FORCE_H6,
    '.5/.3 .6/.4 .75/.5 .8/.5 .9/.6 1.1/.7 1.2/.8 1.3/.9 1.4/1 1.8/1.3 1.9/1.4 2.4/1.8 2.6/2 2.9/2.2 3.2/2.5 3.5/2.8',
  ),
  force(
    'FN2',
    'medium drive',
    FORCE_H7,
    '.85/.6 1/.7 1.4/1 1.6/1.2 1.6/1.2 1.9/1.4 1.9/1.4 2.4/1.8 2.4/1.8 2.7/2 2.9/2.2 3.7/2.8 3.9/3 4.5/3.5 5/4 5.5/4.5',
  ),
  force(
    'FN3',
    'heavy drive',
    FORCE_H7,
    '- - - - - - 2.1/1.6 2.6/2 2.8/2.2 3.2/2.5 3.7/3 4.4/3.5 4.9/4 6/5 6/5 7/6',
  ),
  force(
    'FN4',
    'force',
    FORCE_H7,
    '.95/.7 1.2/.9 1.6/1.2 1.8/1.4 1.8/1.4 2.1/1.6 2.3/1.8 3.1/2.5 3.4/2.8 4.2/3.5 4.7/4 5.9/5 6.9/6 8/7 8/7 9/8',
  ),
  force(
    'FN5',
    'force',
    FORCE_H8,
    '1.3/.9 1.7/1.2 2/1.4 2.3/1.6 2.5/1.8 3/2.2 3.3/2.5 4/3 5/4 6.2/5 7.2/6 8.4/7 9.4/8 11.6/10 13.6/12 13.6/12',
  ),
];

/** Running fits have the whole shaft below the nominal, so the sign is written once. */
function running(name: string, says: string, holes: readonly number[], shafts: string): InchClass {
  return classOf(name, `${says} fit`, ENDS, holes, shafts.replace(/\//g, '/-'));
}

function placed(name: string, says: string, holes: readonly number[], shafts: string): InchClass {
  return classOf(name, `${says} fit`, ENDS, holes, shafts);
}

function force(name: string, says: string, holes: readonly number[], shafts: string): InchClass {
  return classOf(name, `${says} fit`, FORCE_ENDS, holes, shafts);
}

/** A dash stands for a step that the class leaves out; the table ends with the list. */
function classOf(
  name: string,
  says: string,
  ends: readonly number[],
  holes: readonly number[],
  shafts: string,
): InchClass {
  const rows = shafts.split(' ').map((shaft, step): InchRow | undefined => {
    const [upper, lower] = shaft.split('/').map(Number);
    const hole = holes[step];
    return upper === undefined || lower === undefined || hole === undefined
      ? undefined
      : [hole, upper, lower];
  });
  return {name, says, ends: ends.slice(0, rows.length), rows};
}
