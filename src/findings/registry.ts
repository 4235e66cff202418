/** Every kind of finding, in the order in which the documentation lists them. A test holds it against the folder. */
import {alterFirst} from './alter-first.js';
import {barredMaterial} from './barred-material.js';
import {cleanFirst} from './clean-first.js';
import {cureShort} from './cure-short.js';
import {inspectFirst} from './inspect-first.js';
import {installOrder} from './install-order.js';
import {leftFilledOpen} from './left-filled-open.js';
import {leftOut} from './left-out.js';
import {leftSlack} from './left-slack.js';
import {leftUnchecked} from './left-unchecked.js';
import {leftUnfilled} from './left-unfilled.js';
import {leftUnlocked} from './left-unlocked.js';
import {leftUnmeasured} from './left-unmeasured.js';
import {leftUnrecorded} from './left-unrecorded.js';
import {leftUnsealed} from './left-unsealed.js';
import {leftUnwitnessed} from './left-unwitnessed.js';
import {loadedBeforeCure} from './loaded-before-cure.js';
import {lockBeforeTorque} from './lock-before-torque.js';
import {lockWrongKind} from './lock-wrong-kind.js';
import {lubeFirst} from './lube-first.js';
import {measuredSlack} from './measured-slack.js';
import {measuredTooLate} from './measured-too-late.js';
import type {FindingKind} from './model.js';
import {passesNotRising} from './passes-not-rising.js';
import {singleUseReused} from './single-use-reused.js';
import {stripLeftIn} from './strip-left-in.js';
import {stripNotDry} from './strip-not-dry.js';
import {stripTurned} from './strip-turned.js';
import {threadCondition} from './thread-condition.js';
import {witnessedEarly} from './witnessed-early.js';

export const FINDINGS: readonly FindingKind[] = [
  barredMaterial,
  cleanFirst,
  leftSlack,
  lubeFirst,
  threadCondition,
  installOrder,
  alterFirst,
  inspectFirst,
  singleUseReused,
  passesNotRising,
  lockBeforeTorque,
  lockWrongKind,
  stripNotDry,
  stripTurned,
  stripLeftIn,
  measuredSlack,
  measuredTooLate,
  cureShort,
  loadedBeforeCure,
  witnessedEarly,
  leftOut,
  leftUnlocked,
  leftUnmeasured,
  leftUnchecked,
  leftUnsealed,
  leftUnwitnessed,
  leftUnrecorded,
  leftUnfilled,
  leftFilledOpen,
];
