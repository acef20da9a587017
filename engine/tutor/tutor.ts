/**
 * The tutor: question in, answer and memory out. Understanding gives an intent with slots, the engine
 * computes facts, and sentences are made of the facts alone. The same input gives the same answer.
 */
import type { Position } from '../cube/place.ts';
import { pieceOf, type Piece } from '../cube/piece.ts';
import type { Turn } from '../cube/turn.ts';
import { colourIndex } from '../cube/vocabulary.ts';
import type { Analysis } from '../document/analysis.ts';
import type { Names } from '../document/names.ts';
import { complete, type Search } from '../search/step.ts';
import type { Fact, FactPlace, Refusal } from './facts.ts';
import { findTurns, personStep } from './find-turns.ts';
import { gatherDone, gatherHolding } from './gather-goals.ts';
import { gatherLoss } from './gather-losses.ts';
import { gatherNext, writtenTurns } from './gather-next.ts';
import { gatherOther } from './gather-other.ts';
import { gatherProposal } from './gather-proposal.ts';
import { gatherWhere } from './gather-where.ts';
import { NO_MEMORY, type Intent, type Memory, type PlaceRef, type Understood } from './intents.ts';
import { namedTurns } from './named-turns.ts';
import { OFFERS_ANYWHERE, followUpsOf, offersAt } from './offers.ts';
import { dueGoal, meantGoal, meantPiece, ownGoal, type MeantGoal } from './referents.ts';
import { render } from './render.ts';
import { all, one } from './select.ts';
import { sceneAt, setScene, turnNumbered, turnsOf, turnsOfLine, type Scene } from './scene.ts';
import { MOST_QUESTIONS } from './split.ts';
import { understand } from './understand.ts';
import { gatherWithoutCube } from './without-cube.ts';

export { NO_MEMORY, type Intent, type Memory } from './intents.ts';
export type { Fact } from './facts.ts';

export interface Answer {
  readonly question: string;
  /** Of the first question, where a text holds several. */
  readonly intent: Intent;
  readonly text: string;
  readonly facts: readonly Fact[];
  /** Turns that the answer tells, replayed before. */
  readonly turns?: string;
  /** Questions or requests that work next. */
  readonly followUps: readonly string[];
}

export interface Reply {
  readonly answer: Answer;
  readonly memory: Memory;
}

/** `position` undefined: the end of the first solve. */
export function ask(
  analysis: Analysis,
  position: Position | undefined,
  question: string,
  memory?: Memory,
): Reply {
  return complete(answering(analysis, position, question, memory));
}

/** As `ask`, in steps: for a runner that owns a clock, yields in between and can cancel. */
export function* answering(
  analysis: Analysis,
  position: Position | undefined,
  question: string,
  memory: Memory = NO_MEMORY,
): Search<Reply> {
  const questions = understand(question, memory).slice(0, MOST_QUESTIONS);
  const parts: Part[] = [];
  let now = memory;
  for (const understood of questions) {
    const part = yield* answerOne(analysis, position, understood, now);
    parts.push(part);
    now = part.memory;
  }
  const texts = parts.map(({ intent, facts, level }) => render(intent, facts, level, parts.length));
  const last = parts[parts.length - 1];
  const turns = parts.flatMap(({ facts, level, intent }) => turnsTold(intent, facts, level)).at(-1);
  return {
    answer: {
      question,
      intent: parts[0].intent,
      text: texts.join('\n\n'),
      facts: parts.flatMap(({ facts }) => facts),
      ...(turns === undefined ? {} : { turns }),
      followUps: followUpsOf(last.intent, last.facts, last.level),
    },
    memory: now,
  };
}

interface Part {
  readonly intent: Intent;
  readonly facts: readonly Fact[];
  readonly level: number;
  readonly memory: Memory;
}

function turnsTold(intent: Intent, facts: readonly Fact[], level: number): string[] {
  if (intent !== 'next-step' || level < 3) return [];
  const turns = one(facts, 'turns')?.turns ?? one(facts, 'cross-offset')?.turn;
  return turns === undefined ? [] : [turns];
}

function refusal(
  place: FactPlace,
  reason: Refusal,
  text: string,
  questions: readonly string[],
): Fact[] {
  return [
    { kind: 'refusal', place, reason, text: text.slice(0, 80) },
    { kind: 'offer', place, questions },
  ];
}

/** Which place a question is about; a turn that is blamed is no place to stand. */
function placeAsked({ intent, places }: Understood): PlaceRef | undefined {
  if (intent === 'why-broke' || intent === 'where-wrong') return undefined;
  return places.at(-1);
}

function* answerOne(
  analysis: Analysis,
  position: Position | undefined,
  understood: Understood,
  memory: Memory,
): Search<Part> {
  const { intent, text } = understood;
  const found = setScene(analysis, position, placeAsked(understood));
  const none = (facts: Fact[], as: Intent = intent): Part => ({
    intent: as,
    facts,
    level: 0,
    memory,
  });
  if (found.kind !== 'scene') {
    const offers = OFFERS_ANYWHERE;
    if (found.kind === 'no-turn') {
      const { place, what, number, last } = found;
      return none([
        { kind: 'no-turn', place, what, number, last },
        { kind: 'offer', place, questions: offers },
      ]);
    }
    const known = yield* gatherWithoutCube(analysis, position, found.place, understood, memory);
    if (known.length > 0) return none([...known]);
    return none(refusal(found.place, found.kind, text, offers), 'not-understood');
  }
  const { scene } = found;
  if (intent === 'not-understood') {
    return none(
      refusal(scene.place, understood.refusal ?? 'not-understood', text, offersAt(scene)),
    );
  }
  const goals = understood.goals.map((ref) => meantGoal(scene, ref));
  if (goals.includes(undefined))
    return none(refusal(scene.place, 'no-goal', text, offersAt(scene)), 'not-understood');
  const asked = goals.filter((goal) => goal !== undefined);
  const pieces: Piece[] = [];
  for (const ref of understood.pieces) {
    const meant = meantPiece(scene, ref, pieces.length > 0 ? pieces : memory.pieces);
    if (meant.kind !== 'piece') {
      return none([meant, { kind: 'offer', place: scene.place, questions: offersAt(scene) }]);
    }
    pieces.push(meant.piece);
  }
  return yield* answerAt(scene, understood, asked, pieces, memory, analysis.names);
}

function* answerAt(
  scene: Scene,
  understood: Understood,
  asked: readonly MeantGoal[],
  pieces: readonly Piece[],
  memory: Memory,
  names: Names,
): Search<Part> {
  const { intent, text } = understood;
  const goalRef = understood.goals.at(-1) ?? memory.goal;
  const remembered: Memory = {
    ...memory,
    intent,
    goal: goalRef,
    pieces: pieces.length > 0 ? pieces : memory.pieces,
  };
  const part = (facts: Fact[], memoryAfter: Memory = remembered, level = 0): Part => ({
    intent,
    facts,
    level,
    memory: memoryAfter,
  });
  switch (intent) {
    case 'where-piece': {
      const wanted = pieces.length > 0 ? pieces : memory.pieces;
      if (wanted.length === 0)
        return {
          ...part(refusal(scene.place, 'not-understood', text, offersAt(scene)), memory),
          intent: 'not-understood',
        };
      return part(gatherWhere(scene, wanted));
    }
    case 'is-done':
      return part(gatherDone(scene, goalsAsked(scene, understood, asked, memory)));
    case 'which-hold':
      return part(gatherHolding(scene));
    case 'why-broke': {
      const goals =
        asked.length > 0
          ? asked
          : pieces.length === 0 && isAboutIt(text) && memory.goal
            ? [meantGoal(scene, memory.goal)].filter((goal) => goal !== undefined)
            : [];
      const suspects = suspectsOf(scene, understood, pieces);
      if ('kind' in suspects)
        return part(
          [suspects, { kind: 'offer', place: scene.place, questions: offersAt(scene) }],
          memory,
        );
      return part(gatherLoss(scene, goals, suspects));
    }
    case 'judge-turns': {
      const proposal = understood.turns?.text ?? memory.turns ?? '';
      const turns = turnsOf(proposal);
      if (turns === undefined || turns.length === 0) {
        return {
          ...part(refusal(scene.place, 'turns-unread', text, offersAt(scene)), memory),
          intent: 'not-understood',
        };
      }
      const facts = gatherProposal(scene, turns, asked.at(0));
      facts.push(...readings(scene, understood));
      return part(facts, { ...remembered, turns: proposal });
    }
    case 'next-step':
      return yield* answerNext(scene, understood, memory, remembered, names);
    case 'which-case':
    case 'what-does':
    case 'where-wrong':
    case 'shorter':
    case 'explain-term':
    case 'is-possible':
    case 'compare':
    case 'how-often':
    case 'which-way':
    case 'journey':
    case 'stage-span':
    case 'which-order': {
      const found = yield* gatherOther(scene, understood, { goal: asked.at(0), pieces }, memory);
      if (found.kind === 'facts')
        return part([...found.facts, ...readings(scene, understood)], {
          ...remembered,
          turns: found.turns ?? memory.turns,
        });
      const facts = refusal(scene.place, found.reason, text, offersAt(scene));
      return { ...part(facts, memory), intent: 'not-understood' };
    }
    case 'not-understood':
      return part(refusal(scene.place, 'not-understood', text, offersAt(scene)), memory);
  }
}

/** Turns in lower case that were read as faces are told as read. */
function readings({ place }: Scene, { sequences }: Understood): Fact[] {
  return sequences.flatMap(({ asked, text }) =>
    text === asked ? [] : [{ kind: 'reading', place, what: 'turns', asked, read: text }],
  );
}

function goalsAsked(
  scene: Scene,
  { text }: Understood,
  asked: readonly MeantGoal[],
  memory: Memory,
): readonly MeantGoal[] {
  if (asked.length > 0) return asked;
  const last = scene.goals.length - 1;
  if (isAboutIt(text) && memory.goal) {
    const meant = meantGoal(scene, memory.goal);
    if (meant) return [meant];
  }
  if (/\b(?:missing|left|wrong|lack|remain)/i.test(text))
    return [ownGoal(scene, dueGoal(scene) ?? last)];
  return last < 0 ? [] : [ownGoal(scene, last)];
}

/** "is it done", "why did it break": the goal last spoken of. */
function isAboutIt(text: string): boolean {
  return /\b(?:it|that|this)\b|^\W*why\W*$/i.test(text) && !/\b(?:cube|puzzle|solve)\b/i.test(text);
}

function suspectsOf(
  scene: Scene,
  { places, turns }: Understood,
  pieces: readonly Piece[],
): Parameters<typeof gatherLoss>[2] | Extract<Fact, { kind: 'no-turn' }> {
  const { block, place } = scene;
  const missing = (what: 'turn' | 'line', number: number): Extract<Fact, { kind: 'no-turn' }> => ({
    kind: 'no-turn',
    place,
    what,
    number,
    last: lastOf(scene),
  });
  for (const ref of places) {
    if (ref.kind === 'turn') {
      const turn = turnNumbered(block, ref.number);
      return turn === undefined ? missing('turn', ref.number) : { turn, pieces };
    }
    if (ref.kind === 'line') {
      const span = turnsOfLine(block, ref.line);
      return span === undefined ? missing('line', ref.line) : { span, pieces };
    }
  }
  // "why did R break it": the last such turn before the place.
  const named = turns === undefined ? undefined : turnsOf(turns.text);
  if (named?.length === 1) {
    for (let turn = scene.at - 1; turn >= 0; turn--)
      if (block.course.codes[turn] === named[0]) return { turn, pieces };
  }
  return { pieces };
}

function lastOf(scene: Scene): number {
  const { block } = scene;
  return block.course.length === 0 ? 0 : block.numberOf(block.course.length - 1);
}

function* answerNext(
  scene: Scene,
  understood: Understood,
  memory: Memory,
  remembered: Memory,
  names: Names,
): Search<Part> {
  let here = scene;
  // "and then?" stands after the turns last told or judged, and more help for it stands there, too.
  const more = understood.help !== undefined && memory.intent === 'next-step' ? memory.then : '';
  const ahead = understood.onwards ? (memory.turns ?? '') : more;
  const turns: readonly Turn[] | undefined = ahead === '' ? undefined : turnsOf(ahead);
  if (turns) {
    const there = sceneAt(scene.block, scene.at, turns);
    if (there.kind === 'scene') here = there.scene;
  }
  const due = dueGoal(here);
  const { block, at, then } = here.place;
  const key = `${block}:${at}:${then}:${due ?? ''}`;
  const before = memory.levelFor === key ? memory.level : 0;
  const { help } = understood;
  const level = Math.min(3, typeof help === 'number' ? help : before + 1) as 1 | 2 | 3;
  const step = due === undefined ? undefined : personStep(here, due);
  // What the text does next comes first, then its own named sequences, then the person's way.
  const own =
    level === 3 && due !== undefined
      ? (writtenTurns(here, due) ?? namedTurns(here, due, names))
      : undefined;
  const found =
    level === 3 && due !== undefined ? (own ?? (yield* findTurns(here, due, step))) : undefined;
  const facts = gatherNext(here, level, { step: own ? undefined : step, turns: found });
  const told = turnsTold('next-step', facts, level).at(0);
  const pieces = all(facts, 'next').flatMap((fact) =>
    fact.pieces.flatMap((name) => pieceOf(name.map(colourIndex)) ?? []),
  );
  return {
    intent: 'next-step',
    facts,
    level,
    memory: {
      ...remembered,
      level,
      levelFor: key,
      then,
      pieces: pieces.length > 0 ? pieces : remembered.pieces,
      // "and then?" goes on from turns that were told.
      turns:
        told === undefined ? memory.turns : [then, told].filter((text) => text !== '').join(' '),
    },
  };
}
