/** Every kind of finding, in the order in which the documentation lists them. A test holds it against the folder. */
import {alterFirst} from './alter-first.js';
import {barredMaterial} from './barred-material.js';
import {barredTool} from './barred-tool.js';
import {calibrationDue} from './calibration-due.js';
import {cautionLate} from './caution-late.js';
import {cautionMissing} from './caution-missing.js';
import {clauseNotTaken} from './clause-not-taken.js';
import {cleanFirst} from './clean-first.js';
import {cotterSize} from './cotter-size.js';
import {cureShort} from './cure-short.js';
import {endlessRepeat} from './endless-repeat.js';
import {fileUnreadable} from './file-unreadable.js';
import {fitImpossible} from './fit-impossible.js';
import {fluidsMixed} from './fluids-mixed.js';
import {frontMatter} from './front-matter.js';
import {gaugeTooCoarse} from './gauge-too-coarse.js';
import {gradeUnknown} from './grade-unknown.js';
import {holdBySamePerson} from './hold-by-same-person.js';
import {inspectFirst} from './inspect-first.js';
import {installManner} from './install-manner.js';
import {installOrder} from './install-order.js';
import {leftFilledOpen} from './left-filled-open.js';
import {leftIn} from './left-in.js';
import {leftOut} from './left-out.js';
import {leftSlack} from './left-slack.js';
import {leftUnchecked} from './left-unchecked.js';
import {leftUnfilled} from './left-unfilled.js';
import {leftUnlocked} from './left-unlocked.js';
import {leftUnmeasured} from './left-unmeasured.js';
import {leftUnrecorded} from './left-unrecorded.js';
import {leftUnsealed} from './left-unsealed.js';
import {leftUnstriped} from './left-unstriped.js';
import {leftUnwitnessed} from './left-unwitnessed.js';
import {loadedBeforeCure} from './loaded-before-cure.js';
import {lockBeforeTorque} from './lock-before-torque.js';
import {lockWrongKind} from './lock-wrong-kind.js';
import {lubeFirst} from './lube-first.js';
import {markMismatch} from './mark-mismatch.js';
import {measuredSlack} from './measured-slack.js';
import {measuredTooLate} from './measured-too-late.js';
import type {FindingKind} from './model.js';
import {notInBuild} from './not-in-build.js';
import {onlyMissing} from './only-missing.js';
import {passesNotRising} from './passes-not-rising.js';
import {pictureMissing} from './picture-missing.js';
import {preloadOutOfRange} from './preload-out-of-range.js';
import {proseDisagrees} from './prose-disagrees.js';
import {reworkMissing} from './rework-missing.js';
import {singleUseReused} from './single-use-reused.js';
import {sourceMissing} from './source-missing.js';
import {specContradiction} from './spec-contradiction.js';
import {specForm} from './spec-form.js';
import {specSilent} from './spec-silent.js';
import {stepUnmarked} from './step-unmarked.js';
import {stripLeftIn} from './strip-left-in.js';
import {stripNotDry} from './strip-not-dry.js';
import {stripTurned} from './strip-turned.js';
import {substituteUnaltered} from './substitute-unaltered.js';
import {tagForm} from './tag-form.js';
import {tagOutsideStep} from './tag-outside-step.js';
import {threadCondition} from './thread-condition.js';
import {threadEngagement} from './thread-engagement.js';
import {threadUnknown} from './thread-unknown.js';
import {toolNotInShop} from './tool-not-in-shop.js';
import {turnedBlocked} from './turned-blocked.js';
import {twoActions} from './two-actions.js';
import {undersizeMismatch} from './undersize-mismatch.js';
import {unitMissing} from './unit-missing.js';
import {unitWrongKind} from './unit-wrong-kind.js';
import {unknownItem} from './unknown-item.js';
import {unknownVerb} from './unknown-verb.js';
import {unmeasuredBranch} from './unmeasured-branch.js';
import {unreachableStep} from './unreachable-step.js';
import {untaggedAction} from './untagged-action.js';
import {valueDisagrees} from './value-disagrees.js';
import {waiverStale} from './waiver-stale.js';
import {waiverWithoutReason} from './waiver-without-reason.js';
import {wireRun} from './wire-run.js';
import {wireSize} from './wire-size.js';
import {witnessedEarly} from './witnessed-early.js';
import {wrenchOutOfRange} from './wrench-out-of-range.js';
import {wrongKind} from './wrong-kind.js';

export const FINDINGS: readonly FindingKind[] = [
  tagForm,
  unknownVerb,
  unknownItem,
  wrongKind,
  clauseNotTaken,
  frontMatter,
  tagOutsideStep,
  stepUnmarked,
  unitMissing,
  unitWrongKind,
  specForm,
  sourceMissing,
  specContradiction,
  specSilent,
  fileUnreadable,
  pictureMissing,
  notInBuild,
  untaggedAction,
  valueDisagrees,
  proseDisagrees,
  alterFirst,
  barredMaterial,
  cleanFirst,
  cureShort,
  fluidsMixed,
  inspectFirst,
  installOrder,
  leftFilledOpen,
  leftIn,
  leftOut,
  leftSlack,
  leftUnchecked,
  leftUnfilled,
  leftUnlocked,
  leftUnmeasured,
  leftUnrecorded,
  leftUnsealed,
  leftUnstriped,
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
  turnedBlocked,
  witnessedEarly,
  unmeasuredBranch,
  endlessRepeat,
  unreachableStep,
  barredTool,
  installManner,
  toolNotInShop,
  calibrationDue,
  preloadOutOfRange,
  wrenchOutOfRange,
  gaugeTooCoarse,
  wireSize,
  wireRun,
  cotterSize,
  fitImpossible,
  threadEngagement,
  threadUnknown,
  gradeUnknown,
  cautionMissing,
  cautionLate,
  twoActions,
  holdBySamePerson,
  waiverWithoutReason,
  waiverStale,
  markMismatch,
  undersizeMismatch,
  substituteUnaltered,
  onlyMissing,
  reworkMissing,
];
