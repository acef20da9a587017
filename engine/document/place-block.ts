/** A judged block, whose lines count from its first, as a block of the text where it stands. */
import type { Range } from '../cube/place.ts';
import { NO_TURNS, countTurns, type Counts } from '../notation/count.ts';
import type { Block } from './analysis.ts';
import { textOfTurn, type JudgedBlock } from './judged.ts';
import { placeOfLine, type Script } from './script.ts';

export function shift(range: Range, by: number): Range {
  return {
    start: { line: range.start.line + by, character: range.start.character },
    end: { line: range.end.line + by, character: range.end.character },
  };
}

export function placeBlock(block: JudgedBlock, firstLine: number): Block {
  const { judged } = block;
  const { script, course } = judged;
  const rangeOf = (turn: number): Range => {
    const line = script.lines[turn] + firstLine;
    return {
      start: { line, character: script.starts[turn] },
      end: { line, character: script.ends[turn] },
    };
  };
  const countsOfTurns = (first: number, end: number): Counts =>
    countTurns(
      script.codes,
      (index) => {
        const jump = script.jumps.get(index);
        return jump?.kind === 'power' ? jump.tally : NO_TURNS;
      },
      first,
      end,
    );
  const last = block.end - 1;
  return {
    kind: judged.kind,
    title: block.title,
    line: block.first + firstLine,
    range: {
      start: { line: block.first + firstLine, character: 0 },
      end: { line: last + firstLine, character: judged.textOf(last).length },
    },
    scramble: judged.start.scramble && {
      text: judged.start.scramble.text,
      range: shift(judged.start.scramble.range, firstLine),
    },
    startFrom: judged.start.from,
    start: course.stateAt(0),
    course,
    method: judged.method.variantOf ?? judged.method.name,
    base: judged.base,
    timeline: judged.timeline,
    stages: judged.stages.stages.map(({ goal, line, span, how }) => ({
      goal,
      range: {
        start: { line: line + firstLine, character: span.start },
        end: { line: line + firstLine, character: span.end },
      },
      how,
    })),
    scope: {
      method: judged.method,
      methods: judged.settings.methods,
      goals: judged.settings.goals,
      holding: judged.settings.holding,
    },
    ownFrom: judged.ownFrom,
    counts: countsOfTurns(judged.ownFrom, course.length),
    solved: block.solved,
    sequence: block.sequence,
    asides: block.asides.map((aside) => placeBlock(aside, firstLine)),
    rangeOf,
    numberOf: (turn) => judged.numbers[turn],
    textOf: (turn) => textOfTurn(judged, turn),
    placeAt: (position) => placeAt(judged.script, position.line - firstLine, position.character),
    countsOf: countsOfTurns,
    commentOn: (turn) => script.comments.get(script.lines[turn]),
  };
}

/** Turns stand in the order of their lines; on the line itself each says when it is done. */
function placeAt(script: Script, line: number, character: number): number {
  const { lines, dues } = script;
  let place = placeOfLine(script, line);
  while (place < lines.length && lines[place] === line && dues[place] <= character) place++;
  return place;
}
