/** What makes a command end with status 1, as the user says it. */
import {InvalidArgumentError} from 'commander';

export type StopOn = 'weakened' | 'changed' | 'error' | 'warning';

/** Takes one more word of a repeated `--stop-on`; `known` are those that the command understands. */
export function stopOnWord<W extends StopOn>(known: readonly W[]) {
  return (word: string, before: readonly W[] | undefined): readonly W[] => {
    const found = known.find((one) => one === word);
    if (found === undefined) throw new InvalidArgumentError(`It is one of ${known.join(', ')}.`);
    return [...(before ?? []), found];
  };
}
