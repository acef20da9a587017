/** The place where an answer may need a search; it steps like every search, so that its runner can stop it. */
import type { Search } from '../search/step.ts';
import type { TurnsFact } from './facts.ts';
import type { Scene } from './scene.ts';

/** Turns of a person's way towards the due goal; undefined as long as no search is at hand for it. */
// eslint-disable-next-line require-yield -- the search that steps here is not there yet
export function* findTurns(...request: [scene: Scene, due: number]): Search<TurnsFact | undefined> {
  return request.length < 2 ? undefined : undefined;
}
