/**
 * Fundamental deviations of ISO 286-1 for shafts to 500 mm, from which those of holes follow: as tabled there, in µm. Taken
 * from a published transcription (github.com/rf-ghofmockel/rf-tolerance) and checked against the pages of textbooks that
 * reprint the standard; `tests/trade/SOURCES.md` says which rows against which.
 */

/** Sizes in mm that end a step; each step runs "over … up to and including". */
export const DEVIATION_STEPS = [
  3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450,
  500,
] as const;

/** How far the upper limit of the shaft lies below the nominal size. */
export const BELOW: Readonly<Record<string, readonly (number | undefined)[]>> = {
  a: row(
    '270 270 280 290 290 300 300 310 320 340 360 380 410 460 520 580 660 740 820 920 1050 1200 1350 1500 1650',
  ),
  b: row(
    '140 140 150 150 150 160 160 170 180 190 200 220 240 260 280 310 340 380 420 480 540 600 680 760 840',
  ),
  c: row('60 70 80 95 95 110 110 120 130 140 150 170 180 200 210 230 240 260 280 300 330 360 400 440 480'),
  cd: row('34 46 56'),
  d: row('20 30 40 50 50 65 65 80 80 100 100 120 120 145 145 145 170 170 170 190 190 210 210 230 230'),
  e: row('14 20 25 32 32 40 40 50 50 60 60 72 72 85 85 85 100 100 100 110 110 125 125 135 135'),
  ef: row('10 14 18'),
  f: row('6 10 13 16 16 20 20 25 25 30 30 36 36 43 43 43 50 50 50 56 56 62 62 68 68'),
  fg: row('4 6 8'),
  g: row('2 4 5 6 6 7 7 9 9 10 10 12 12 14 14 14 15 15 15 17 17 18 18 20 20'),
  h: row('0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0'),
};

/** How far the lower limit of the shaft lies above the nominal size. */
export const ABOVE: Readonly<Record<string, readonly (number | undefined)[]>> = {
  m: row('2 4 6 7 7 8 8 9 9 11 11 13 13 15 15 15 17 17 17 20 20 21 21 23 23'),
  n: row('4 8 10 12 12 15 15 17 17 20 20 23 23 27 27 27 31 31 31 34 34 37 37 40 40'),
  p: row('6 12 15 18 18 22 22 26 26 32 32 37 37 43 43 43 50 50 50 56 56 62 62 68 68'),
  r: row('10 15 19 23 23 28 28 34 34 41 43 51 54 63 65 68 77 80 84 94 98 108 114 126 132'),
  s: row('14 19 23 28 28 35 35 43 43 53 59 71 79 92 100 108 122 130 140 158 170 190 208 232 252'),
  t: row('- - - - - - 41 48 54 66 75 91 104 122 134 146 166 180 196 218 240 268 294 330 360'),
  u: row('18 23 28 33 33 41 48 60 70 87 102 124 144 170 190 210 236 258 284 315 350 390 435 490 540'),
  v: row('- - - - 39 47 55 68 81 102 120 146 172 202 228 252 284 310 340 385 425 475 530 595 660'),
  x: row('20 28 34 40 45 54 64 80 97 122 146 178 210 248 280 310 350 385 425 475 525 590 660 740 820'),
  y: row('- - - - - 63 75 94 114 144 174 214 254 300 340 380 425 470 520 580 650 730 820 920 1000'),
  z: row('26 35 42 50 60 73 88 112 136 172 210 258 310 365 415 465 520 575 640 710 790 900 1000 1100 1250'),
  za: row(
    '32 42 52 64 77 98 118 148 180 226 274 335 400 470 535 600 670 740 820 920 1000 1150 1300 1450 1600',
  ),
  zb: row(
    '40 50 67 90 108 136 160 200 242 300 360 445 525 620 700 780 880 960 1050 1200 1300 1500 1650 1850 2100',
  ),
  zc: row(
    '60 80 97 130 150 188 218 274 325 405 480 585 690 800 900 1000 1150 1250 1350 1550 1700 1900 2100 2400 2600',
  ),
};

/** Shafts k of grades 4 to 7: the lower limit above the nominal; of all other grades it is nought. */
export const K_SHAFT = row('0 1 1 1 1 2 2 2 2 2 2 3 3 3 3 3 4 4 4 4 4 4 4 5 5');

/** Shafts j by grade: how far the lower limit lies below the nominal. */
export const J_SHAFT: Readonly<Record<string, readonly (number | undefined)[]>> = {
  5: row('2 2 2 3 3 4 4 5 5 7 7 9 9 11 11 11 13 13 13 16 16 18 18 20 20'),
  6: row('2 2 2 3 3 4 4 5 5 7 7 9 9 11 11 11 13 13 13 16 16 18 18 20 20'),
  7: row('4 4 5 6 6 8 8 10 10 12 12 15 15 18 18 18 21 21 21 26 26 28 28 32 32'),
  8: row('6'),
};

/** Holes J by grade: how far the upper limit lies above the nominal. */
export const J_HOLE: Readonly<Record<string, readonly (number | undefined)[]>> = {
  6: row('2 5 5 6 6 8 8 10 10 13 13 16 16 18 18 18 22 22 22 25 25 29 29 33 33'),
  7: row('4 6 8 10 10 12 12 14 14 18 18 22 22 26 26 26 30 30 30 36 36 39 39 43 43'),
  8: row('6 10 12 15 15 20 20 24 24 28 28 34 34 41 41 41 47 47 47 55 55 60 60 66 66'),
};

/** A dash stands for a step that the standard leaves out, as does the end of a row. */
function row(text: string): readonly (number | undefined)[] {
  return text.split(' ').map((entry) => (entry === '-' ? undefined : Number(entry)));
}
