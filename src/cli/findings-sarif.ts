/** Findings as results of SARIF: a rule each, their story as related locations, their fix as one that a service can offer. */
import type {HouseFinding} from '../findings/house.js';
import {meaningOf} from '../findings/meaning.js';
import type {FindingKind} from '../findings/model.js';
import {FINDINGS} from '../findings/registry.js';
import type {FindingJson} from './answer.js';
import {fingerprint} from './fingerprint.js';
import type {Level, SarifResult, SarifRule} from './sarif.js';

const LEVEL: {readonly [severity in FindingJson['severity']]: Level} = {
  error: 'error',
  warning: 'warning',
  information: 'note',
};

/** Ours first. The report says itself what a rule is about: an address on this machine would lead nowhere on another. */
export function findingRules(house: readonly HouseFinding[] = []): SarifRule[] {
  return [...FINDINGS, ...house].map(rule);
}

function rule({
  name,
  summary,
  why,
  severity,
}: Pick<FindingKind, 'name' | 'summary' | 'why' | 'severity'>): SarifRule {
  return {id: name, says: `${summary}.`, why, level: LEVEL[severity]};
}

/** `known` is why it is on the list of known findings, where it is. */
export function findingResult(finding: FindingJson, known?: string): SarifResult {
  const {name, severity, message, item, story, related, fix, file} = finding;
  return {
    ruleId: name,
    level: LEVEL[severity],
    message,
    place: finding,
    related: [...story, ...related],
    ...(fix && {fix}),
    fingerprint: fingerprint([meaningJson(finding, file)]),
    ...(known !== undefined && {known}),
    ...(item !== null && {properties: {item}}),
  };
}

export function meaningJson({name, message, item, place}: FindingJson, file: string): string {
  return meaningOf({name, message, ...(item !== null && {item}), ...(place !== null && {place})}, file);
}
