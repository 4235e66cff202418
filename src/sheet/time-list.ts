/** The time plan of a book: work at the bench, waits for cures, the earliest finish, and what can go on during a cure. */
import {type Stretch, stretchesOf} from '../build/stretches.js';
import {si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {byOneInTurn} from '../trade/one-in-turn.js';
import {fromSi} from '../trade/result.js';
import {type PlannedTask, timePlan} from '../trade/time-plan.js';
import type {SheetBook} from './compile.js';
import {type Naming, nameOf} from './context.js';
import type {StretchLine, TimeList} from './list-model.js';
import type {Value} from './model.js';

/** Nothing where no procedure states a time and nothing cures, or where there is no step. */
export function timeList(book: SheetBook, naming: Naming): TimeList | undefined {
  const stretches = stretchesOf(book);
  const known = stretches.some(({timed, wait}) => timed || (wait !== undefined && si(wait) > 0));
  const plan = timePlan(stretches);
  if (!known || !plan.ok) return undefined;
  const {result} = plan;
  const alone = byOneInTurn(stretches);
  const planned = new Map(result.tasks.map((task) => [task.id, task]));
  const title = (stretch: Stretch) => book.procedures[stretch.sheet - 1]?.front.title ?? '';
  const untimed = stretches.filter(({timed}) => !timed).map(title);
  const unknown = stretches.filter(({waitUnknown}) => waitUnknown).flatMap(({curing}) => curing);
  return {
    stretches: stretches.flatMap((stretch) => {
      const task = planned.get(stretch.id);
      return task === undefined ? [] : [lineOf(stretch, task, {title: title(stretch), naming})];
    }),
    handsOn: told(result.handsOn),
    waits: told(result.waiting),
    earliest: told(result.earliest),
    path: result.path,
    alone: {finish: told(alone.finish), order: alone.order},
    untimed: [...new Set(untimed)],
    unknownWaits: [...new Set(unknown)].map((id) => nameOf(id, naming)),
  };
}

function lineOf(
  {id, hands, wait, timed, curing}: Stretch,
  {start, end, slack, during}: PlannedTask,
  {title, naming}: {readonly title: string; readonly naming: Naming},
): StretchLine {
  return {
    id,
    title,
    ...(timed && {hands: told(hands)}),
    ...(wait && {wait: told(wait)}),
    curing: curing.map((one) => nameOf(one, naming)),
    start: told(start),
    end: told(end),
    slack: told(slack),
    during,
  };
}

/** Minutes up to three hours, hours beyond. */
function told(time: Quantity): Value {
  const short = si(time) < 3 * 3600;
  return {text: formatQuantity(short ? fromSi(si(time), unit('min'), 1) : fromSi(si(time), unit('h'), 0.1))};
}
