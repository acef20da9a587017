/** Witness on sequences, the last layer, slips and what turns can do: on 54 stickers, by replay and counting. */
import type { Fact, GoalName } from '../../engine/tutor/facts.ts';
import { holds, type NaiveGoal } from '../naive/goals.ts';
import { STICKERS, replay, turned, type Cube } from '../naive/stickers.ts';
import { flawIsPossible } from './flaws.ts';
import {
  OPPOSITE,
  after,
  centreColour,
  faceOfCentre,
  facesOf,
  isHome,
  slotOf,
  tokens,
} from './hands.ts';
import { FACE, SLOT, orderOf, targets } from './motion.ts';

const same = (a: readonly string[], b: readonly string[]): boolean =>
  targets(a).join() === targets(b).join();

function effectProblem(fact: Extract<Fact, { kind: 'effect' }>): string | undefined {
  const list = tokens(fact.turns);
  const goes = targets(list);
  const moves = new Map(goes.map((to, from) => [SLOT[from], SLOT[to]]));
  const cycles = [...fact.corners, ...fact.edges, ...fact.centres];
  for (const cycle of cycles) {
    for (const [i, slot] of cycle.entries())
      if (moves.get(slot) !== cycle[(i + 1) % cycle.length]) return `${slot} goes elsewhere`;
  }
  const told = new Set(cycles.flat());
  for (const [from, to] of moves)
    if ((from !== to) !== told.has(from)) return `${from} is not told`;
  const inPlace = new Set(
    goes.flatMap((to, from) => (SLOT[from] === SLOT[to] && from !== to ? [SLOT[from]] : [])),
  );
  const turnedTold = [...fact.twisted, ...fact.flipped];
  if (turnedTold.length !== inPlace.size || turnedTold.some((slot) => !inPlace.has(slot)))
    return 'others turn in place';
  if (
    fact.twisted.some((slot) => slot.length !== 3) ||
    fact.flipped.some((slot) => slot.length !== 2)
  )
    return 'kinds mixed';
  return orderOf(list) === fact.order ? undefined : `the order is ${orderOf(list)}`;
}

const isSlice = (turn: string): boolean => /^[MES]/.test(turn);
const isRotation = (turn: string): boolean => /^[xyz]/.test(turn);

function faceTurns(turns: readonly string[]): number {
  return turns.reduce((sum, turn) => sum + (isRotation(turn) ? 0 : isSlice(turn) ? 2 : 1), 0);
}

function mirrored(turn: string): string {
  const face = turn.charAt(0).replace(/[LR]/, (one) => (one === 'L' ? 'R' : 'L'));
  const rest = turn.slice(1);
  // M and x lie in the mirror's own direction: they turn as before.
  if (/^[Mx]/.test(turn)) return turn;
  return face + (rest.endsWith('2') ? rest : rest.endsWith("'") ? rest.slice(0, -1) : `${rest}'`);
}

/** Every effect of up to `depth` face turns that equals the wanted one would be a shorter way. */
function isReachedBy(wanted: readonly number[], depth: number, path: string[] = []): boolean {
  if (path.length > 0 && targets(path).join() === wanted.join()) return true;
  if (path.length === depth) return wanted.every((to, from) => to === from);
  return [...'UDLRFB']
    .flatMap((face) => [face, `${face}'`, `${face}2`])
    .some((turn) => isReachedBy(wanted, depth, [...path, turn]));
}

function sideColours(cube: Cube, top: string, face: string): { corners: string[]; edge: string } {
  const topFace = faceOfCentre(cube, top);
  const corners: string[] = [];
  let edge = '';
  cube.forEach((colour, i) => {
    if (FACE[i] !== face || !SLOT[i].includes(topFace)) return;
    if (SLOT[i].length === 3) corners.push(colour);
    else if (SLOT[i].length === 2) edge = colour;
  });
  return { corners, edge };
}

function sidesOf(cube: Cube, top: string): string[] {
  return Object.keys(OPPOSITE)
    .filter((colour) => colour !== top && colour !== OPPOSITE[top])
    .map((colour) => faceOfCentre(cube, colour));
}

function caseProblem(fact: Extract<Fact, { kind: 'case' }>, cube: Cube): string | undefined {
  const top = OPPOSITE[fact.base];
  const topFace = faceOfCentre(cube, top);
  const shown = (size: number): string[] =>
    cube.flatMap((colour, i) =>
      FACE[i] === topFace && SLOT[i].length === size && colour === top ? [SLOT[i]] : [],
    );
  const edges = shown(2).map((slot) => slot.replace(topFace, ''));
  const line =
    edges.length === 2 && OPPOSITE[centreColour(cube, edges[0])] === centreColour(cube, edges[1]);
  const shape = { 0: 'dot', 2: line ? 'line' : 'angle', 4: 'cross' }[edges.length];
  if (shape !== fact.edges) return `the edges are ${String(shape)}`;
  if (shown(3).length !== fact.cornersRight) return 'other corners are right';
  const below = STICKERS.every(
    (_, i) => SLOT[i].includes(topFace) || cube[i] === centreColour(cube, FACE[i]),
  );
  if (!below) return 'the layers below are not done';
  const oriented = shape === 'cross' && fact.cornersRight === 4;
  if (!oriented) return fact.swap === undefined ? undefined : 'not turned right';
  const agreeing = sidesOf(cube, top).filter(
    (face) => new Set(sideColours(cube, top, face).corners).size === 1,
  ).length;
  const swap = agreeing === 4 ? 'right' : agreeing === 0 ? 'diagonal' : 'adjacent';
  return swap === fact.swap ? undefined : `corners ${swap}`;
}

/** Facts that need the cube at the place, and the goals of the method up to a named one. */
export interface Bench {
  readonly cube: Cube;
  readonly history: {
    readonly start: Cube;
    readonly turns: readonly string[];
    readonly lines: readonly number[];
  };
  goal(name: GoalName): NaiveGoal;
  before(name: GoalName): NaiveGoal[];
}

const isSolved = (cube: Cube): boolean =>
  cube.every((colour, i) => colour === centreColour(cube, FACE[i]));

export type SequenceFact = Extract<
  Fact,
  {
    kind:
      | 'effect'
      | 'counts'
      | 'related'
      | 'case'
      | 'hold'
      | 'shorter'
      | 'term'
      | 'sides'
      | 'flaw'
      | 'solvable'
      | 'compare'
      | 'repeat'
      | 'way'
      | 'slip'
      | 'no-slip'
      | 'span'
      | 'near'
      | 'journey'
      | 'stage'
      | 'order'
      | 'impossible';
  }
>;

export function sequenceProblem(fact: SequenceFact, bench: Bench): string | undefined {
  const { cube, history } = bench;
  const no = (wrong: boolean, what: string): string | undefined => (wrong ? what : undefined);
  switch (fact.kind) {
    case 'effect':
      return effectProblem(fact);
    case 'counts': {
      const list = tokens(fact.turns);
      const quarters = list.reduce((sum, turn) => {
        if (isRotation(turn)) return sum;
        return sum + (isSlice(turn) ? 2 : 1) * (turn.includes('2') ? 2 : 1);
      }, 0);
      return no(faceTurns(list) !== fact.obtm || quarters !== fact.qtm, 'counted otherwise');
    }
    case 'related':
      return fact.relation === 'inverse'
        ? no(!same([...tokens(fact.turns), ...tokens(fact.other)], []), 'not the inverse')
        : no(tokens(fact.turns).map(mirrored).join(' ') !== fact.other, 'not the mirror image');
    case 'case':
      return caseProblem(fact, cube);
    case 'hold': {
      const there = after(cube, fact.regrip);
      return no(
        centreColour(there, 'U') !== fact.up || centreColour(there, 'F') !== fact.front,
        'held otherwise',
      );
    }
    case 'shorter': {
      const own = tokens(fact.turns);
      if (faceTurns(own) !== fact.count) return 'counted otherwise';
      if (fact.other !== undefined) {
        const other = tokens(fact.other);
        if (!same(own, other)) return 'another effect';
        if (faceTurns(other) !== fact.otherCount || faceTurns(other) >= fact.count)
          return 'not shorter';
      }
      if (own.some((turn) => isRotation(turn) || isSlice(turn) || turn.includes('w')))
        return undefined;
      return no(
        fact.provenTo >= 0 && isReachedBy(targets(own), Math.min(2, fact.provenTo)),
        'there is a shorter way',
      );
    }
    case 'term':
      return no(fact.meaning === '', 'no meaning');
    case 'sides': {
      const top = OPPOSITE[fact.base];
      const agree = sidesOf(cube, top).filter(
        (face) => new Set(sideColours(cube, top, face).corners).size === 1,
      );
      const finished = agree.filter((face) => {
        const { corners, edge } = sideColours(cube, top, face);
        return corners[0] === edge;
      });
      return (
        no([...fact.agree].sort().join() !== agree.sort().join(), `sides ${agree.join()} agree`) ??
        no([...fact.finished].sort().join() !== finished.sort().join(), 'others are finished')
      );
    }
    case 'flaw':
      return no(flawIsPossible(fact) !== fact.possible, 'it is the other way');
    case 'solvable':
      // All cubes of these tests come from turns.
      return no(!fact.solvable || fact.problems.length > 0, 'it came from turns');
    case 'compare': {
      const [a, b] = [tokens(fact.first), tokens(fact.second)];
      return (
        no(same(a, b) !== fact.same, 'not so') ??
        no(faceTurns(a) !== fact.counts[0] || faceTurns(b) !== fact.counts[1], 'counted otherwise')
      );
    }
    case 'repeat':
      return repeatProblem(fact, bench);
    case 'way': {
      const goes = targets([fact.turn]);
      return no(
        SLOT.every((slot, i) => slot !== fact.from || SLOT[goes[i]] !== fact.to),
        'it goes elsewhere',
      );
    }
    case 'slip': {
      const turns = [...history.turns];
      const { index } = fact.at;
      const own = tokens(fact.turns);
      if (fact.change === 'insert') turns.splice(index + 1, 0, ...own);
      else turns.splice(index, fact.change === 'swap' ? 2 : 1, ...own);
      return (
        no(
          history.turns[index] !== fact.at.text || history.lines[index] !== fact.at.line,
          'turn misnamed',
        ) ?? no(!isSolved(replay(history.start, turns)), 'it does not end solved')
      );
    }
    case 'no-slip': {
      const solved = isSolved(replay(history.start, history.turns));
      if (fact.why === 'solved') return no(!solved, 'it is not solved');
      return fact.why === 'none' ? no(solved || oneReversed(history), 'there is one') : undefined;
    }
    case 'near': {
      const there = after(cube, fact.other);
      const goal = bench.goal(fact);
      return (
        no(!isMistake(fact), 'another kind of mistake') ??
        no(
          [...bench.before(fact), goal].some((one) => holds(one, cube) && !holds(one, there)),
          'something is lost',
        ) ??
        no(fact.effect === 'goal' && !holds(goal, there), 'the goal is not reached') ??
        no(
          fact.pieces.some((piece) => !isHome(there, piece)),
          'not home',
        )
      );
    }
    case 'impossible':
      // All cubes of these tests come from turns.
      return 'it came from turns';
    case 'order': {
      const own = (goal: NaiveGoal): boolean =>
        goal.wants.some(({ piece }) => piece === [...fact.piece].sort().join('-'));
      const before = bench.before(fact);
      return (
        no((fact.when === 'made') !== isHome(cube, fact.piece), 'home or not') ??
        no(!own(bench.goal(fact)) && bench.goal(fact).pairs === undefined, 'not of this goal') ??
        no(
          fact.when === 'due' && !before.every((one) => holds(one, cube)),
          'another goal is due',
        ) ??
        no(fact.when === 'later' && before.every((one) => holds(one, cube)), 'it is due')
      );
    }
    case 'journey':
      return journeyProblem(fact, history);
    case 'stage': {
      const { first, last } = fact;
      if (first === undefined || last === undefined) return undefined;
      const own = history.turns.slice(first.index, last.index + 1);
      const there = replay(history.start, history.turns.slice(0, last.index + 1));
      return (
        no(history.turns[last.index] !== last.text, 'turn misnamed') ??
        no(faceTurns(own) !== fact.obtm, 'counted otherwise') ??
        no(holds(bench.goal(fact), there) !== fact.reached, 'not so at its end')
      );
    }
    case 'span': {
      const from = fact.place.at;
      const own = tokens(fact.turns);
      return no(
        own.some((turn, i) => history.turns[from + i] !== turn),
        'other turns are written',
      );
    }
  }
}

/** The plainest slips, tried one by one: a turn the other way, or left out. */
function oneReversed({ start, turns }: Bench['history']): boolean {
  return turns.some((turn, i) => {
    if (isRotation(turn) || turn.endsWith('2')) return false;
    const other = turn.endsWith("'") ? turn.slice(0, -1) : `${turn}'`;
    const changed = turns.with(i, other);
    return isSolved(replay(start, changed)) || isSolved(replay(start, turns.toSpliced(i, 1)));
  });
}

function repeatProblem(
  fact: Extract<Fact, { kind: 'repeat' }>,
  { cube, ...bench }: Bench,
): string | undefined {
  const list = tokens(fact.turns);
  if (orderOf(list) !== fact.order) return 'another order';
  const goal = bench.goal(fact);
  const before = bench.before(fact);
  let now = cube;
  for (let times = 1; times <= Math.min(fact.times ?? fact.order - 1, 200); times++) {
    now = list.reduce(turned, now);
    const fits = before.every((one) => holds(one, now));
    const reached = fits && holds(goal, now);
    if (times !== fact.times && reached) return `reached after ${times} times`;
    if (times === fact.times && !fits) return 'goals before are lost';
    if (times === fact.times && fact.effect === 'goal' && !reached) return 'not reached';
    if (times === fact.times && fact.pieces.some((piece) => !isHome(now, piece))) return 'not home';
  }
  return undefined;
}

/** Whether the other turns differ from the given ones in just the way that is told. */
function isMistake({ turns, other, mistake }: Extract<Fact, { kind: 'near' }>): boolean {
  const [own, better] = [tokens(turns), tokens(other)];
  const plain = (turn: string): string => turn.replace(/['2]/g, '');
  switch (mistake) {
    case 'prime':
      return (
        own.length === better.length &&
        own.filter((turn, i) => turn !== better[i]).length === 1 &&
        own.every((turn, i) => plain(turn) === plain(better[i]))
      );
    case 'mirror':
      return own.map(mirrored).join() === better.join();
    case 'setup':
      return better.slice(1).join() === own.join() && !isRotation(better[0]);
    case 'unfinished':
      return better.slice(0, -1).join() === own.join();
    case 'rotation':
      return better.slice(1).join() === own.join() && isRotation(better[0]);
    case 'wide':
      return (
        own.filter((turn, i) => turn !== better[i]).length === 1 &&
        own.every((turn, i) => turn.replace('w', '') === better[i].replace('w', ''))
      );
  }
}

function journeyProblem(
  { piece, steps, count, left, place }: Extract<Fact, { kind: 'journey' }>,
  { start, turns }: Bench['history'],
): string | undefined {
  const found: string[] = [];
  let lastLeft: number | undefined;
  let cube = start;
  turns.slice(0, place.at).forEach((turn, i) => {
    const there = turned(cube, turn);
    const lies = (one: Cube): string => [...facesOf(one, piece)].sort().join();
    if (isRotation(turn)) {
      cube = there;
      return;
    }
    if (lies(cube) !== lies(there))
      found.push(
        `${i} ${slotOf([...facesOf(cube, piece).values()])} ${slotOf([...facesOf(there, piece).values()])}`,
      );
    if (isHome(cube, piece) && !isHome(there, piece)) lastLeft = i;
    cube = there;
  });
  const told = steps.map(({ turn, from, to }) => `${turn.index} ${from} ${to}`);
  if (found.length !== count) return `${found.length} turns move it`;
  if (steps.length > 0 && found.slice(-steps.length).join() !== told.join())
    return 'it goes otherwise';
  return left?.index === lastLeft ? undefined : `it left at ${String(lastLeft)}`;
}
