/** Which section of which file holds the items of a kind. */
import type {ItemKind} from './model.js';

/** In the order in which a section is best written; `engine.yaml` and `shop.yaml` hold different ones. */
export const ENGINE_SECTIONS = {
  parts: 'part',
  surfaces: 'surface',
  joints: 'joint',
  fasteners: 'fastener',
  fits: 'fit',
  marks: 'mark',
  checks: 'check',
  'hold-points': 'hold-point',
  systems: 'system',
  alterations: 'alteration',
} as const satisfies Record<string, ItemKind>;

export const SHOP_SECTIONS = {
  tools: 'tool',
  consumables: 'consumable',
} as const satisfies Record<string, ItemKind>;

/** Every kind of thing in an engine, and so whatever a hold point may ask for and a bar may speak of. */
export const ENGINE_KINDS: readonly ItemKind[] = Object.values(ENGINE_SECTIONS);

/** What `after:` of a part, a check or a system may name. */
export const FIRSTS: readonly ItemKind[] = [
  'part',
  'joint',
  'fastener',
  'fit',
  'mark',
  'check',
  'hold-point',
  'system',
];

/** Kinds as a message says them: `a fit`, `an alteration`. */
export const KIND_SAYS: Readonly<Record<ItemKind, string>> = {
  part: 'a part',
  surface: 'a surface',
  joint: 'a joint',
  fastener: 'a fastener',
  fit: 'a fit',
  mark: 'a mark',
  check: 'a check',
  'hold-point': 'a hold point',
  system: 'a system',
  alteration: 'an alteration',
  tool: 'a tool',
  consumable: 'a consumable',
};

/** The section that holds the items of a kind. */
export const SECTION_OF: Readonly<Record<ItemKind, string>> = {
  part: 'parts',
  surface: 'surfaces',
  joint: 'joints',
  fastener: 'fasteners',
  fit: 'fits',
  mark: 'marks',
  check: 'checks',
  'hold-point': 'hold-points',
  system: 'systems',
  alteration: 'alterations',
  tool: 'tools',
  consumable: 'consumables',
};
