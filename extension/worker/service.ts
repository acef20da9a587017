/** What the worker does with a request: the same on Node and in the browser, and without state that matters. */
import { pieceOf, setOf } from '../../engine/cube/piece.ts';
import { colourIndex } from '../../engine/cube/vocabulary.ts';
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis } from '../../engine/document/analysis.ts';
import type { Fact, PieceName, TurnName } from '../../engine/tutor/facts.ts';
import { ask, type Memory } from '../../engine/tutor/tutor.ts';
import type {
  AnswerPlace,
  AskReply,
  AskRequest,
  SearchRequest,
  WorkerMessage,
  WorkerResult,
} from './messages.ts';
import { describe, Runner, type Pause } from './runner.ts';
import { searchFor } from './searches.ts';

/** The text asked about last, because the next question is mostly about the same. */
let latest:
  { readonly text: string; readonly options: string; readonly analysis: Analysis } | undefined;

/**
 * The worker's side of the line: `post` sends results, the function that comes back takes messages, and
 * `pause` lets them in while a search runs.
 */
export function makeService(
  post: (result: WorkerResult) => void,
  pause: Pause,
): (message: WorkerMessage) => void {
  const runner = new Runner(post, pause);
  return (message) => {
    if ('cancel' in message) {
      runner.cancel(message.cancel);
      return;
    }
    const { id, body } = message;
    try {
      if (body.kind === 'ask') post({ id, body: answerQuestion(body) });
      else {
        const source = { analysis: analysisOf(body), options: body.options };
        runner.start(id, searchFor(source, body.task));
      }
    } catch (error) {
      post({ id, failed: describe(error) });
    }
  };
}

function answerQuestion(request: AskRequest): AskReply {
  const analysis = analysisOf(request);
  const { answer, memory } = ask(
    analysis,
    request.position,
    request.question,
    readMemory(request.memory),
  );
  return {
    kind: 'answer',
    text: answer.text,
    ...(answer.turns === undefined ? {} : { turns: answer.turns }),
    followUps: answer.followUps,
    places: placesIn(answer.facts),
    marked: setOf(piecesIn(answer.facts)),
    memory,
  };
}

function analysisOf({ text, options }: AskRequest | SearchRequest): Analysis {
  const key = JSON.stringify(options);
  if (latest?.text !== text || latest.options !== key) {
    latest = { text, options: key, analysis: analyse(text, options, latest?.analysis) };
  }
  return latest.analysis;
}

/** The memory as it was given out; a stored one of an earlier edition begins the dialogue anew. */
function readMemory(data: unknown): Memory | undefined {
  const known =
    typeof data === 'object' &&
    data !== null &&
    'pieces' in data &&
    Array.isArray(data.pieces) &&
    'level' in data;
  return known ? (data as unknown as Memory) : undefined;
}

/** Most places offered as buttons. */
const PLACES = 4;

/** The turns that the facts name, in their order, each once. */
function placesIn(facts: readonly Fact[]): AnswerPlace[] {
  const found = new Map<number, AnswerPlace>();
  for (const fact of facts) {
    // Where the answer stands is where the person is already.
    if (fact.kind === 'stand') continue;
    for (const { index, number, text } of turnsOf(fact)) {
      found.set(index, { turn: index, label: `Go to ${text}, turn ${number}` });
    }
  }
  return [...found.values()].slice(0, PLACES);
}

function turnsOf(fact: Fact): TurnName[] {
  return Object.values(fact as object).filter(isTurnName);
}

function isTurnName(value: unknown): value is TurnName {
  return (
    typeof value === 'object' &&
    value !== null &&
    'index' in value &&
    'number' in value &&
    'text' in value
  );
}

/** The pieces that the answer is about. */
function piecesIn(facts: readonly Fact[]): number[] {
  const names: PieceName[] = facts.flatMap((fact): readonly PieceName[] => {
    switch (fact.kind) {
      case 'piece':
        return [fact.piece];
      case 'next':
        return fact.pieces;
      case 'loss':
        return fact.pieces.map(({ piece }) => piece);
      case 'goal':
        return fact.missing;
      default:
        return [];
    }
  });
  return names.flatMap((name) => pieceOf(name.map(colourIndex)) ?? []);
}
