/** Coefficients of thermal expansion of common materials, near room temperature and of steel down into the cold. */

export interface Material {
  readonly name: string;
  /** Per kelvin, near room temperature. */
  readonly perKelvin: number;
  readonly steel: boolean;
}

/**
 * Callister, Materials Science and Engineering, Table B.6 (pdfslide.us/documents/thermal-expansion-data-table.html).
 * Other tables differ by 5 to 10 %: 10.8 for grey iron, 21.1 to 24.7 for aluminium alloys, 18 to 18.5 for tin bronze
 * (wisetool.com/designation/te.htm).
 */
export const MATERIALS: readonly Material[] = [
  material('steel', 11.7, true),
  material('steel-1020', 11.7, true),
  material('steel-1040', 11.3, true),
  material('steel-4140', 12.3, true),
  material('steel-4340', 12.3, true),
  material('stainless-304', 17.2),
  material('stainless-316', 15.9),
  material('grey-iron', 11.4),
  material('ductile-iron', 11.2),
  material('ductile-iron-80-55-06', 10.6),
  material('aluminium-6061', 23.6),
  material('aluminium-2024', 22.9),
  material('aluminium-7075', 23.4),
  material('aluminium-356', 21.5),
  material('bearing-bronze', 18),
  material('brass', 19.9),
  material('magnesium', 26),
  material('titanium', 8.6),
];

function material(name: string, millionths: number, steel = false): Material {
  return {name, perKelvin: millionths * 1e-6, steel};
}

/**
 * Steel in the cold: temperature in °F, coefficient in 10⁻⁶ per °F at that temperature. A. Kaw, Numerical Methods
 * (University of South Florida), trunnion problem, Table 1 (ar.scribd.com/document/366103159).
 */
export const COLD_STEEL: readonly (readonly [fahrenheit: number, millionths: number])[] = [
  [80, 6.47],
  [0, 6],
  [-80, 5.43],
  [-100, 5.28],
  [-160, 4.72],
  [-180, 4.52],
  [-260, 3.58],
  [-280, 3.33],
  [-300, 3.07],
  [-340, 2.45],
];

/** For the source line of what is worked out with them. */
export const EXPANSION_SOURCE = 'coefficients: Callister, Table B.6 (sources differ by 5 to 10 %)';

/** `grey-iron, 11.4 µm/m·K (6.3 µin/in·°F)`, as an input is told. */
export function coefficientText({name, perKelvin}: Material): string {
  const [kelvin, fahrenheit] = [perKelvin * 1e6, (perKelvin * 1e6 * 5) / 9];
  return `${name}, ${kelvin.toFixed(1)} µm/m·K (${fahrenheit.toFixed(1)} µin/in·°F)`;
}
