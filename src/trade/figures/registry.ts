/** Every subject of `wmark figure`, as it is listed: fasteners, bearings, fits, engine sizes, gauges, time. */
import type {Figure} from '../figure.js';
import {adapterFigure} from './adapter.js';
import {adapterTorqueFigure} from './adapter-torque.js';
import {bearingClearanceFigure} from './bearing-clearance.js';
import {bentShaftFigure} from './bent-shaft.js';
import {boltGradeFigure} from './bolt-grade.js';
import {chamberFigure} from './chamber.js';
import {compressionFigure} from './compression.js';
import {coolToFitFigure} from './cool-to-fit.js';
import {corePlugFigure} from './core-plug.js';
import {cotterPinFigure} from './cotter-pin.js';
import {counterboreFigure} from './counterbore.js';
import {crushFigure} from './crush.js';
import {deckHeightFigure} from './deck-height.js';
import {endPlayFigure} from './end-play.js';
import {engagementFigure} from './engagement.js';
import {fitFigure} from './fit.js';
import {fitOfPartsFigure} from './fit-of-parts.js';
import {gaugeFigure} from './gauge.js';
import {gaugingStripFigure} from './gauging-strip.js';
import {guardBandFigure} from './guard-band.js';
import {heatToFitFigure} from './heat-to-fit.js';
import {hotFitFigure} from './hot-fit.js';
import {lashScrewFigure} from './lash-screw.js';
import {lashShimFigure} from './lash-shim.js';
import {limitsFigure} from './limits.js';
import {passesFigure} from './passes.js';
import {preloadFigure} from './preload.js';
import {ringGapFigure} from './ring-gap.js';
import {ringGapChangeFigure} from './ring-gap-change.js';
import {rodTwistFigure} from './rod-twist.js';
import {runningClearanceFigure} from './running-clearance.js';
import {safetyWireFigure} from './safety-wire.js';
import {shellSpreadFigure} from './shell-spread.js';
import {stackFigure} from './stack.js';
import {stackMiddleFigure} from './stack-middle.js';
import {stressAreaFigure} from './stress-area.js';
import {stripTaperFigure} from './strip-taper.js';
import {thrustWasherFigure} from './thrust-washer.js';
import {tighteningOrderFigure} from './tightening-order.js';
import {timePlanFigure} from './time-plan.js';
import {torqueFigure} from './torque.js';
import {torqueAngleFigure} from './torque-angle.js';
import {undersizeFigure} from './undersize.js';
import {wearLimitFigure} from './wear-limit.js';
import {whichUndersizeFigure} from './which-undersize.js';
import {wireLengthFigure} from './wire-length.js';
import {wireRunFigure} from './wire-run.js';
import {wireTwistsFigure} from './wire-twists.js';
import {wrenchFigure} from './wrench.js';

export const FIGURES: readonly Figure[] = [
  stressAreaFigure,
  boltGradeFigure,
  engagementFigure,
  preloadFigure,
  torqueFigure,
  torqueAngleFigure,
  adapterFigure,
  adapterTorqueFigure,
  wrenchFigure,
  passesFigure,
  tighteningOrderFigure,
  safetyWireFigure,
  wireTwistsFigure,
  wireRunFigure,
  wireLengthFigure,
  cotterPinFigure,
  bearingClearanceFigure,
  runningClearanceFigure,
  gaugingStripFigure,
  stripTaperFigure,
  undersizeFigure,
  whichUndersizeFigure,
  crushFigure,
  shellSpreadFigure,
  wearLimitFigure,
  bentShaftFigure,
  rodTwistFigure,
  limitsFigure,
  fitFigure,
  fitOfPartsFigure,
  stackFigure,
  stackMiddleFigure,
  heatToFitFigure,
  coolToFitFigure,
  hotFitFigure,
  corePlugFigure,
  counterboreFigure,
  ringGapFigure,
  ringGapChangeFigure,
  lashScrewFigure,
  lashShimFigure,
  endPlayFigure,
  thrustWasherFigure,
  compressionFigure,
  chamberFigure,
  deckHeightFigure,
  gaugeFigure,
  guardBandFigure,
  timePlanFigure,
];
