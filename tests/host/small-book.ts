/** The smallest book that is clean under the check, as files, for tests that change one thing in it. */

export const SHOP = `shop: {name: Small Works}
sources: {notes: {title: Notes, note: invented}}
tools: {soft-mallet: soft-faced mallet}
consumables: {solvent: {use: cleaner}}
`;

export const ENGINE = `engine: {id: small, name: Small engine}
source: notes
parts:
  block: {given: true}
  plug: {closes: [seat]}
surfaces:
  seat: {on: block, assembly: dry}
build: [plug.md]
`;

export const PROCEDURE = `---
title: Plug
revision: A
date: 2026-01-15
author: shop lead
---

1. Wipe the seat with solvent. \`clean: seat with solvent\`
2. Drive the plug in. \`install: plug using soft-mallet\`
`;

/** As one folder `book` with its own shop.yaml; `changes` replaces files, or takes them away with \`undefined\`. */
export function smallBook(changes: {readonly [path: string]: string | Uint8Array | undefined} = {}) {
  const files: {[path: string]: string | Uint8Array | undefined} = {
    'book/shop.yaml': SHOP,
    'book/engine.yaml': ENGINE,
    'book/plug.md': PROCEDURE,
    ...changes,
  };
  const kept: {[path: string]: string | Uint8Array} = {};
  for (const [path, content] of Object.entries(files)) if (content !== undefined) kept[path] = content;
  return kept;
}
