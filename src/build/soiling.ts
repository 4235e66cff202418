/** What is put on a part as it is looked at or wiped stays on its surfaces: marking blue, dye, paste, an oily rag. */
import {idsOf} from '../procedure/values.js';
import type {ConsumableUse, Item} from '../spec/model.js';
import {type Doing, setAll, undoAll} from './doing.js';

/** Surfaces, joints or a part, with the places of each. */
export type Faces = readonly (readonly [Item, readonly string[]])[];

/**
 * A material on a surface takes its cleanness away, and the oil that was on it is fouled: blue, dye, paste, abrasive. What
 * cleans does not.
 */
export function soil(doing: Doing, faces: Faces): void {
  if (!isUsed(doing, (use) => use !== 'cleaner')) return;
  for (const [face, places] of faces) {
    undoAll(doing, 'lubed', face, places);
    for (const place of places) doing.state.spoil('clean', face.id, place, doing.action);
  }
}

/** Wiped with an oily rag a surface is clean and lubed, and the faces of a joint are too oily for a seal. */
export function leaveOil(doing: Doing, faces: Faces): void {
  if (!isUsed(doing, (use) => use === 'lubricant')) return;
  const ids = idsOf(doing.action.tag, 'with');
  for (const [face, places] of faces) {
    if (face.kind === 'surface') setAll(doing, 'lubed', face, places, {ids});
    else if (face.kind === 'joint')
      for (const place of places) doing.state.spoil('clean', face.id, place, doing.action);
  }
}

function isUsed({action, spec}: Doing, isMeant: (use: ConsumableUse) => boolean): boolean {
  return idsOf(action.tag, 'with').some((id) => {
    const material = spec.items.get(id);
    return material?.kind === 'consumable' && isMeant(material.use);
  });
}
