/**
 * Bears witness against the tutor: derives every fact once more from the text's turns, on 54 stickers,
 * knowing of the engine nothing but the types of facts.
 */
import type { Fact, FactPlace, GoalName, PieceName, TurnName } from '../../engine/tutor/facts.ts';
import {
  cfopOf,
  holds,
  layersOf,
  smallestMissing,
  madePairs,
  type NaiveGoal,
} from '../naive/goals.ts';
import { replay, turned, type Cube } from '../naive/stickers.ts';
import {
  lineProblem,
  lossProblem,
  noLossProblem,
  range,
  turnsProblem,
  verdictProblem,
} from './checker-losses.ts';
import { sequenceProblem } from './checker-sequences.ts';
import { cueHolds } from './cues.ts';
import {
  OPPOSITE,
  after,
  centreColour,
  faceOfCentre,
  facesOf,
  homeOfPiece,
  isHome,
  slotOfPiece,
  tokens,
} from './hands.ts';

/** What the test itself wrote: nothing here comes from the engine. */
export interface History {
  /** Zero-based line of the block's heading. */
  readonly block: number;
  readonly start: Cube;
  readonly turns: readonly string[];
  /** Line of each turn, from 1. */
  readonly lines: readonly number[];
  readonly stages: readonly {
    readonly goal: string;
    readonly first: number;
    readonly end: number;
  }[];
  readonly method: 'layers' | 'CFOP';
  readonly base: string;
}

const isRotation = (turn: string): boolean => /^[xyz]/.test(turn);

export class Checker {
  readonly history: History;
  readonly cubes: Cube[];
  readonly goalLists = new Map<string, NaiveGoal[]>();

  constructor(history: History) {
    this.history = history;
    this.cubes = [history.start];
    for (const turn of history.turns)
      this.cubes.push(turned(this.cubes[this.cubes.length - 1], turn));
  }

  /** What is wrong with a fact; undefined if nothing is. */
  check(fact: Fact): string | undefined {
    const wrong = this.problem(fact);
    return wrong === undefined ? undefined : `${wrong}: ${JSON.stringify(fact)}`;
  }

  cubeAt({ at, then }: FactPlace): Cube {
    return after(this.cubes[at], then);
  }

  goal({ method, goal, base }: GoalName): NaiveGoal {
    const key = `${method} ${base}`;
    const list = this.goalLists.get(key) ?? (method === 'CFOP' ? cfopOf(base) : layersOf(base));
    this.goalLists.set(key, list);
    const found = list.find(({ name }) => name === goal);
    if (found === undefined) throw new Error(`no goal ${goal} in ${method}`);
    return found;
  }

  heldAt(goal: NaiveGoal, at: number): boolean {
    return holds(goal, this.cubes[at]);
  }

  turnIsNamed({ index, number, line, text }: TurnName): boolean {
    const { turns, lines } = this.history;
    const counted = turns.slice(0, index + 1).filter((turn) => !isRotation(turn)).length;
    return (
      turns[index] === text && !isRotation(text) && counted === number && lines[index] === line
    );
  }

  /** All goals of the method before the one named. */
  before(name: GoalName): NaiveGoal[] {
    const list = name.method === 'CFOP' ? cfopOf(name.base) : layersOf(name.base);
    return list.slice(
      0,
      list.findIndex((goal) => goal.name === name.goal),
    );
  }

  problem(fact: Fact): string | undefined {
    if (fact.place.block !== this.history.block) return 'another block';
    const cube = this.cubeAt(fact.place);
    const no = (wrong: boolean, what: string): string | undefined => (wrong ? what : undefined);
    switch (fact.kind) {
      case 'stand': {
        const { at } = fact.place;
        const last = this.history.turns.slice(0, at).findLastIndex((turn) => !isRotation(turn));
        return (
          no((fact.last?.index ?? -1) !== last, 'another last turn') ??
          no(fact.last !== undefined && !this.turnIsNamed(fact.last), 'turn misnamed') ??
          no(
            centreColour(cube, 'U') !== fact.up || centreColour(cube, 'F') !== fact.front,
            'held otherwise',
          )
        );
      }
      case 'piece': {
        const faces = facesOf(cube, fact.piece);
        const slot = slotOfPiece(cube, fact.piece);
        const home = homeOfPiece(cube, fact.piece);
        const status = isHome(cube, fact.piece) ? 'placed' : slot === home ? 'turned' : 'elsewhere';
        const layer = [fact.base, OPPOSITE[fact.base]].find((colour) =>
          slot.includes(faceOfCentre(cube, colour)),
        );
        return (
          no(slot !== fact.slot, `it is at ${slot}`) ??
          no(home !== fact.home, `home is ${home}`) ??
          no(status !== fact.status, `it is ${status}`) ??
          no(layer !== fact.layer, 'another layer') ??
          no(
            fact.shows.some(({ colour, face }) => faces.get(colour) !== face),
            'shows otherwise',
          )
        );
      }
      case 'over-home': {
        const there = after(cube, fact.turn);
        const slot = slotOfPiece(there, fact.piece);
        const base = faceOfCentre(cube, fact.base);
        const top = faceOfCentre(cube, OPPOSITE[fact.base]);
        const over = [...homeOfPiece(cube, fact.piece)].map((face) => (face === base ? top : face));
        return (
          no(slot !== fact.slot, `it comes to ${slot}`) ??
          no([...slot].sort().join() !== over.sort().join(), 'not over its home') ??
          no(fact.turn !== '' && !fact.turn.startsWith(top), 'not a turn of the top')
        );
      }
      case 'goal': {
        const goal = this.goal(fact);
        const truth = holds(goal, cube);
        return (
          no(truth !== fact.holds, `holds: ${String(truth)}`) ??
          no(!this.missingIsRight(goal, cube, fact.missing, truth), 'other pieces missing')
        );
      }
      case 'cross-offset': {
        const cross = this.goal({ method: 'layers', goal: 'cross', base: fact.base });
        const layer = faceOfCentre(cube, fact.base);
        return no(
          !fact.turn.startsWith(layer) ||
            holds(cross, cube) ||
            !holds(cross, after(cube, fact.turn)),
          'no offset',
        );
      }
      case 'cross-order': {
        const edges = this.edgesOf(fact.base);
        const layer = faceOfCentre(cube, fact.base);
        const counts = ['', layer, `${layer}2`, `${layer}'`].map(
          (turn) => edges.filter((edge) => isHome(after(cube, turn), edge)).length,
        );
        return (
          no(
            edges.some((edge) => facesOf(cube, edge).get(fact.base) !== layer),
            'an edge does not show the base',
          ) ??
          no(Math.max(...counts) !== fact.most || fact.most === 4, `most is ${Math.max(...counts)}`)
        );
      }
      case 'since': {
        const goal = this.goal(fact);
        const from = fact.turn === undefined ? 0 : fact.turn.index + 1;
        const whole = range(from, fact.place.at + 1).every((at) => this.heldAt(goal, at));
        return (
          no(fact.turn !== undefined && !this.turnIsNamed(fact.turn), 'turn misnamed') ??
          no(!whole, 'interrupted') ??
          no(goal.pairs === undefined && from > 0 && this.heldAt(goal, from - 1), 'held before')
        );
      }
      case 'loss':
        return lossProblem(this, fact);
      case 'without': {
        const turns = this.history.turns
          .slice(0, fact.place.at)
          .filter((_, i) => i !== fact.turn.index);
        const truth = holds(this.goal(fact), replay(this.history.start, turns));
        return (
          no(!this.turnIsNamed(fact.turn), 'turn misnamed') ?? no(truth !== fact.holds, 'not so')
        );
      }
      case 'mend': {
        const turns = [...this.history.turns.slice(0, fact.place.at)];
        if (fact.change === 'insert') turns.splice(fact.at.index + 1, 0, fact.turn);
        else if (fact.change === 'replace') turns.splice(fact.at.index, 1, fact.turn);
        else turns.splice(fact.at.index, 1);
        return (
          no(!this.turnIsNamed(fact.at), 'turn misnamed') ??
          no(!holds(this.goal(fact), replay(this.history.start, turns)), 'does not mend')
        );
      }
      case 'across': {
        const goal = this.goal(fact);
        if (goal.pairs) return no(!this.turnIsNamed(fact.turn), 'turn misnamed');
        return (
          no(!this.turnIsNamed(fact.turn), 'turn misnamed') ??
          no(this.heldAt(goal, fact.turn.index) !== fact.before, 'before') ??
          no(this.heldAt(goal, fact.turn.index + 1) !== fact.after, 'after')
        );
      }
      case 'never-lost': {
        const goal = this.goal(fact);
        const held = this.cubes.map((one) => holds(goal, one));
        const first = held.indexOf(true);
        const lost = held.some((one, i) => !one && held[i - 1]);
        if (goal.pairs) return undefined;
        return (
          no(lost, 'it was lost') ??
          no((fact.reached === undefined) !== first < 0, 'reached') ??
          no(fact.reached === 'start' && first !== 0, 'not from the start') ??
          no(
            typeof fact.reached === 'object' &&
              (fact.reached.index !== first - 1 || !this.turnIsNamed(fact.reached)),
            'another turn',
          ) ??
          no(fact.holdsAtEnd !== held[held.length - 1], 'at the end')
        );
      }
      case 'no-loss':
        return fact.line === undefined ? noLossProblem(this) : lineProblem(this, fact.line);
      case 'no-turn': {
        const { turns, lines } = this.history;
        const count = turns.filter((turn) => !isRotation(turn)).length;
        return fact.what === 'turn'
          ? (no(fact.number >= 1 && fact.number <= count, 'there is one') ??
              no(fact.last !== count, 'another last one'))
          : no(lines.includes(fact.number), 'there are some');
      }
      case 'midway': {
        const goal = this.goal(fact);
        const { at } = fact.place;
        const away = range(fact.opened.index + 1, fact.back.index + 1).some((i) =>
          this.heldAt(goal, i),
        );
        return (
          no(!this.turnIsNamed(fact.opened) || !this.turnIsNamed(fact.back), 'turn misnamed') ??
          no(fact.opened.index >= at || fact.back.index < at, 'not in between') ??
          no(
            goal.pairs === undefined &&
              (!this.heldAt(goal, fact.opened.index) ||
                away ||
                !this.heldAt(goal, fact.back.index + 1)),
            'not open just then',
          )
        );
      }
      case 'next': {
        const goal = this.goal(fact);
        const { made, of } = this.partsMade(goal, cube);
        return (
          no(holds(goal, cube), 'it holds') ??
          no(
            !this.before(fact).every((one) => holds(one, cube)),
            'an earlier goal does not hold',
          ) ??
          no(made !== fact.made || of !== fact.of, `${made} of ${of}`) ??
          no(
            fact.pieces.length > 0 && fact.pieces.every((piece) => isHome(cube, piece)),
            'all home',
          ) ??
          no(fact.reason === 'last-one' && of - made !== 1, 'not the last one')
        );
      }
      case 'pattern': {
        const face = faceOfCentre(cube, fact.colour);
        const up = this.edgesOf(fact.colour).filter(
          (edge) => facesOf(cube, edge).get(fact.colour) === face,
        );
        const sides = up.map((edge) => slotOfPiece(cube, edge).replace(face, ''));
        const line =
          sides.length === 2 &&
          OPPOSITE[centreColour(cube, sides[0])] === centreColour(cube, sides[1]);
        const shape = { 0: 'dot', 2: line ? 'line' : 'angle', 4: 'cross' }[sides.length];
        return no(shape !== fact.shape, `it is ${String(shape)}`);
      }
      case 'facing': {
        const face = faceOfCentre(cube, fact.colour);
        const pieces =
          fact.pieces === 'edges' ? this.edgesOf(fact.colour) : this.cornersOf(fact.colour);
        const count = pieces.filter(
          (piece) => facesOf(cube, piece).get(fact.colour) === face,
        ).length;
        return no(count !== fact.count, `${count}`);
      }
      case 'arranged': {
        const face = faceOfCentre(cube, fact.colour);
        const pieces =
          fact.pieces === 'edges' ? this.edgesOf(fact.colour) : this.cornersOf(fact.colour);
        const count = (turn: string): number =>
          pieces.filter((piece) => isHome(after(cube, turn), piece)).length;
        const best = Math.max(...['', face, `${face}2`, `${face}'`].map(count));
        return no(best !== fact.count || count(fact.turn) !== best, `best is ${best}`);
      }
      case 'turns':
        return turnsProblem(this, fact);
      case 'cue':
        return no(!cueHolds(fact.cue, cube, fact.piece, fact.base), 'the cue is not there');
      case 'no-turns':
        return undefined;
      case 'verdict':
        return verdictProblem(this, fact);
      case 'lost-in': {
        const goal = this.goal(fact);
        const list = tokens(fact.turns);
        const held = [
          holds(goal, cube),
          ...list.map((_, i) => holds(goal, replay(cube, list.slice(0, i + 1)))),
        ];
        const numbered = (count: number): number =>
          list.slice(0, count).filter((turn) => !isRotation(turn)).length;
        const at = held.findIndex((one, i) => i > 0 && !one);
        const lastAway = held.lastIndexOf(false);
        const back = lastAway === list.length ? undefined : lastAway + 1;
        return (
          no(!held[0], 'did not hold before') ??
          no(numbered(at) !== fact.at || list[at - 1] !== fact.atText, `lost at ${at}`) ??
          no(
            (back === undefined ? undefined : numbered(back)) !== fact.back ||
              (back !== undefined && list[back - 1] !== fact.backText),
            `back at ${String(back)}`,
          ) ??
          no(
            back === undefined &&
              !this.missingIsRight(goal, after(cube, fact.turns), fact.missing, false),
            'other pieces missing',
          )
        );
      }
      case 'effect':
      case 'counts':
      case 'related':
      case 'case':
      case 'hold':
      case 'shorter':
      case 'term':
      case 'sides':
      case 'flaw':
      case 'solvable':
      case 'compare':
      case 'repeat':
      case 'way':
      case 'slip':
      case 'no-slip':
      case 'span':
      case 'near':
      case 'journey':
      case 'stage':
      case 'order':
      case 'impossible':
        return sequenceProblem(fact, {
          cube,
          history: this.history,
          goal: (name) => this.goal(name),
          before: (name) => this.before(name),
        });
      case 'reading':
        return no(fact.asked.toUpperCase() !== fact.read.toUpperCase(), 'read as something else');
      case 'no-piece':
        return no(
          fact.reason === 'twice'
            ? new Set(fact.colours).size === fact.colours.length
            : fact.colours.length > 0 &&
                !fact.colours.some((colour) => fact.colours.includes(OPPOSITE[colour] as never)),
          'there is such a piece',
        );
      case 'which-piece':
        return no(
          fact.options.length < 2 ||
            fact.options.some((piece) => !fact.colours.every((colour) => piece.includes(colour))),
          'no choice',
        );
      case 'refusal':
      case 'offer':
        return undefined;
    }
  }

  edgesOf(colour: string): PieceName[] {
    return Object.keys(OPPOSITE)
      .filter((other) => other !== colour && other !== OPPOSITE[colour])
      .map((other) => [colour, other] as PieceName);
  }

  cornersOf(colour: string): PieceName[] {
    const sides = ['green', 'red', 'blue', 'orange', 'white', 'yellow'].filter(
      (one) => one !== colour && one !== OPPOSITE[colour],
    );
    return sides.flatMap((a, i) =>
      sides
        .slice(i + 1)
        .filter((b) => b !== OPPOSITE[a])
        .map((b) => [colour, a, b] as PieceName),
    );
  }

  partsMade(goal: NaiveGoal, cube: Cube): { made: number; of: number } {
    if (goal.pairs) return { made: madePairs(goal, cube).length, of: goal.pairs.atLeast };
    if (goal.upTo !== undefined) return { made: 0, of: 0 };
    const faces = (colour: string): string => faceOfCentre(cube, colour);
    const made = goal.parts.filter((part) =>
      part.every((name) =>
        goal.wants
          .filter((want) => want.piece === name)
          .every(({ demand, colours }) =>
            demand === 'home'
              ? isHome(cube, name.split('-'))
              : facesOf(cube, name.split('-')).get(colours[0]) === faces(colours[0]),
          ),
      ),
    ).length;
    return { made, of: goal.parts.length };
  }

  missingIsRight(
    goal: NaiveGoal,
    cube: Cube,
    missing: readonly PieceName[],
    held: boolean,
  ): boolean {
    if (held) return missing.length === 0;
    const names = missing
      .map((piece) => [...piece].sort().join('-'))
      .sort()
      .join(' ');
    if (goal.pairs) return missing.length > 0 && missing.every((piece) => !isHome(cube, piece));
    return smallestMissing(goal, cube).includes(names);
  }

  inPlace(goal: NaiveGoal, cube: Cube, piece: PieceName): boolean {
    const name = [...piece].sort().join('-');
    const wants = goal.wants.filter((want) => want.piece === name);
    if (wants.length === 0) return isHome(cube, piece);
    return wants.every(({ demand, colours }) =>
      demand === 'home'
        ? isHome(cube, piece)
        : facesOf(cube, piece).get(colours[0]) === faceOfCentre(cube, colours[0]),
    );
  }
}
