/** Every kind of finding, in the order in which the documentation lists them. A test holds it against the folder. */
import {alterFirst} from './alter-first.js';
import {barredMaterial} from './barred-material.js';
import {cleanFirst} from './clean-first.js';
import {cureShort} from './cure-short.js';
import {endlessRepeat} from './endless-repeat.js';
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
import {unmeasuredBranch} from './unmeasured-branch.js';
import {unreachableStep} from './unreachable-step.js';
import {witnessedEarly} from './witnessed-early.js';

export const FINDINGS: readonly FindingKind[] = [
  alterFirst,
  barredMaterial,
  cleanFirst,
  cureShort,
  inspectFirst,
  installOrder,
  leftFilledOpen,
  leftOut,
  leftSlack,
  leftUnchecked,
  leftUnfilled,
  leftUnlocked,
  leftUnmeasured,
  leftUnrecorded,
  leftUnsealed,
  leftUnwitnessed,
  loadedBeforeCure,
  lockBeforeTorque,
  lockWrongKind,
  lubeFirst,
  measuredSlack,
  measuredTooLate,
  passesNotRising,
  singleUseReused,
  stripLeftIn,
  stripNotDry,
  stripTurned,
  threadCondition,
  witnessedEarly,
  unmeasuredBranch,
  endlessRepeat,
  unreachableStep,
];
