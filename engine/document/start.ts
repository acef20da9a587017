/**
 * Where a block starts, and how the cube is at every place: from its scramble, its net, the place it
 * branches off from, or, with neither, worked out backwards from a solved end.
 */
import type { Holding } from '../cube/holding.ts';
import { readNet } from '../cube/net.ts';
import type { Range } from '../cube/place.ts';
import { readState, type Problem } from '../cube/possible.ts';
import { explainProblem } from '../cube/remedy.ts';
import {
  SOLVED,
  applyTurn,
  compose,
  held,
  holdingAfter,
  invertState,
  type State,
} from '../cube/state.ts';
import { makeCourse, type Course, type Jump } from '../goals/course.ts';
import { execute, JUMP } from '../notation/execute.ts';
import { sayNetProblem } from './bad-values.ts';
import type { Block } from './analysis.ts';
import type { RawFinding } from './raw-finding.ts';
import { readHolding, type Words } from './read/index.ts';
import { TURN_LIMIT, type Script, type ScriptContext, type ScriptEvent } from './script.ts';

/** A net in the text, at the place where it stands. */
export interface NetClaim {
  readonly place: number;
  readonly range: Range;
  /** Undefined if it can't be read or can't be. */
  readonly state: State | undefined;
}

export interface Start {
  readonly from: Block['startFrom'];
  readonly course: Course;
  readonly scramble: Block['scramble'];
  /** Nets that set nothing and so are claims. */
  readonly claims: readonly NetClaim[];
  readonly findings: readonly RawFinding[];
}

export interface StartQuestion {
  readonly script: Script;
  readonly kind: Block['kind'];
  readonly holding: Holding;
  /** The course that an aside branches off from at a place; `length` turns before it are in the script. */
  readonly branch:
    { readonly course: Course; readonly length: number; readonly at: number } | undefined;
  /** First line of the block itself; what stands before belongs to the course it branches off from. */
  readonly firstLine: number;
  readonly textOf: (range: Range) => string;
  /** Whether the method's last stage is opened or claimed, so that the end is taken to be solved. */
  readonly endsSolved: boolean;
  readonly context: ScriptContext;
}

export function findStart(question: StartQuestion): Start {
  const { script, kind, holding, branch, endsSolved } = question;
  const own = script.events.filter((event) => event.line >= question.firstLine);
  const { nets, findings } = readNets(own);
  const setting = branch ? undefined : nets.find((net) => net.place === 0);
  const scramble = readScramble(question, own);
  for (const finding of scramble.findings) findings.push(finding);
  const gaps = [...script.jumps]
    .flatMap(([index, jump]) => (jump.kind === 'gap' ? [index] : []))
    .sort((a, b) => a - b);

  let from: Block['startFrom'];
  let start: State | undefined;
  if (branch) [from, start] = ['place', branch.course.stateAt(branch.at - branch.length)];
  else if (setting) [from, start] = ['net', setting.state];
  else if (scramble.range) [from, start] = ['scramble', scramble.state];
  else if (kind === 'sequence') [from, start] = ['any', held(SOLVED, holding)];
  else if (gaps.length === 0)
    [from, start] = ['inverse', solvedAfter(script, 0, script.codes.length, holding)];
  else [from, start] = ['unknown', undefined];

  // Nets after an unknown stretch say what it led to; the others are claims.
  const used = new Set<NetClaim>(setting ? [setting] : []);
  const jumps = new Map<number, Jump>();
  let at = start?.holding ?? holding;
  let next = 0;
  const holdings = holdingClaims(script);
  for (let index = 0; index < script.codes.length; index++) {
    const code = script.codes[index];
    if (code !== JUMP) {
      at = holdingAfter(code, at);
      continue;
    }
    const jump = script.jumps.get(index);
    if (jump?.kind === 'power') {
      jumps.set(index, { kind: 'power', effect: jump.effect });
      at = compose(held(SOLVED, at), jump.effect).holding;
      continue;
    }
    next++;
    if (branch && index < branch.length) {
      const after = branch.course.stateAt(index + 1);
      jumps.set(index, { kind: 'gap', after });
      at = after?.holding ?? at;
      continue;
    }
    const until = gaps[next] ?? script.codes.length;
    at = holdings.get(index + 1) ?? at;
    const net = nets.find(
      (other) => other.place > index && other.place <= until && !used.has(other),
    );
    let after: State | undefined;
    if (net?.state) {
      used.add(net);
      after = before(script, index + 1, net.place, net.state, at);
      at = after?.holding ?? at;
    } else if (next === gaps.length && endsSolved) {
      after = solvedAfter(script, index + 1, script.codes.length, at);
    }
    jumps.set(index, { kind: 'gap', after });
  }
  return {
    from,
    course: makeCourse(start, script.codes, jumps),
    scramble: scramble.range && { text: question.textOf(scramble.range), range: scramble.range },
    claims: nets.filter((net) => !used.has(net)),
    findings,
  };
}

/** The effect of the turns from `first` to before `end` (no gaps among them), done in this holding. */
function effectOf(script: Script, first: number, end: number, holding: Holding): State {
  let state = held(SOLVED, holding);
  for (let index = first; index < end; index++) {
    const jump = script.jumps.get(index);
    if (jump?.kind === 'power') state = compose(state, jump.effect);
    else if (script.codes[index] !== JUMP) state = applyTurn(state, script.codes[index]);
  }
  return state;
}

/** The state, held so, that the turns from `first` to before `end` solve. */
function solvedAfter(script: Script, first: number, end: number, holding: Holding): State {
  const effect = effectOf(script, first, end, holding);
  return held(invertState(held(effect, 0)), holding);
}

/** The state from which the turns from `first` to before `end` lead to `state`; the holding is worked back from its centres. */
function before(
  script: Script,
  first: number,
  end: number,
  state: State,
  assumed: Holding,
): State | undefined {
  for (let tried = 0, holding = assumed; tried < 25; holding = tried++) {
    const effect = effectOf(script, first, end, holding);
    if (effect.holding !== state.holding) continue;
    return held(compose(held(state, 0), invertState(held(effect, 0))), holding);
  }
  return undefined;
}

/** Holdings said right after a place, by place. */
function holdingClaims(script: Script): Map<number, Holding> {
  const result = new Map<number, Holding>();
  for (const event of script.events) {
    if (event.kind !== 'key' || event.content.key !== 'holding' || result.has(event.place))
      continue;
    const value = readHolding(event.content.value);
    if (value.kind === 'holding') result.set(event.place, value.holding);
  }
  return result;
}

function readNets(events: readonly ScriptEvent[]): { nets: NetClaim[]; findings: RawFinding[] } {
  const nets: NetClaim[] = [];
  const findings: RawFinding[] = [];
  for (let index = 0; index < events.length; index++) {
    const event = events[index];
    if (event.kind !== 'key' || event.content.key !== 'start') continue;
    const rows: { line: number; words: Words }[] = [];
    if (event.content.value.text !== '')
      rows.push({ line: event.line, words: event.content.value });
    for (
      let row = events[index + 1];
      row?.kind === 'net-row';
      row = events[index + rows.length + (event.content.value.text === '' ? 1 : 0)]
    ) {
      rows.push({ line: row.line, words: row.words });
    }
    const head = rows.length === 0 ? { line: event.line, words: event.content.name } : rows[0];
    const tail = rows.at(-1) ?? head;
    const range = {
      start: { line: head.line, character: head.words.span.start },
      end: { line: tail.line, character: tail.words.span.end },
    };
    const net = readNet(rows.map((row) => row.words.text));
    if (net.kind === 'bad-net') {
      nets.push({ place: event.place, range, state: undefined });
      for (const problem of net.problems) {
        const { line, words } = rows[problem.row] ?? head;
        const whole = problem.kind === 'row-count';
        const { start } = words.span;
        findings.push({
          args: { code: 'bad-value', key: 'start', reason: sayNetProblem(problem) },
          range: whole
            ? range
            : {
                start: { line, character: start + problem.span.start },
                end: { line, character: start + problem.span.end },
              },
        });
      }
      continue;
    }
    const read = readState(net.colours);
    if (read.kind === 'impossible') {
      findings.push({ args: { code: 'state-impossible', ...explainAll(read.problems) }, range });
    }
    nets.push({
      place: event.place,
      range,
      state: read.kind === 'possible' ? read.state : undefined,
    });
  }
  return { nets, findings };
}

/** Reasons that a sentence lists. */
const REASONS_TOLD = 3;

/**
 * One sentence for one cube. A wrong sticker makes a colour too many, another too few and a piece
 * impossible: the remedy is that of the piece, for it has a place; mirrored corners say nothing then.
 */
function explainAll(problems: readonly Problem[]): { reason: string; remedy: string } {
  const miscounted = problems.some(({ kind }) => kind === 'colour-count');
  const told = miscounted
    ? problems.filter(({ kind }) => kind !== 'mirrored-corner' && kind !== 'mirrored-scheme')
    : problems;
  const explained = told.map(explainProblem);
  const placed = told.findIndex(({ kind }) => kind !== 'colour-count');
  const more = explained.length - REASONS_TOLD;
  const reasons = explained.slice(0, REASONS_TOLD).map(({ reason }) => reason);
  if (more > 0) reasons.push(`${String(more)} more such ${more === 1 ? 'fault' : 'faults'}`);
  return { reason: reasons.join('; '), remedy: explained[Math.max(0, placed)].remedy };
}

interface Scramble {
  readonly range: Range | undefined;
  readonly state: State | undefined;
  readonly findings: readonly RawFinding[];
}

/** The first scramble of the block, if it stands before all turns of its own. */
function readScramble(
  { holding, context, branch }: StartQuestion,
  own: readonly ScriptEvent[],
): Scramble {
  const none: Scramble = { range: undefined, state: undefined, findings: [] };
  // The key itself stands for the scramble only where no turns follow it.
  const event =
    own.find((other) => other.kind === 'scramble') ??
    own.find((other) => other.kind === 'key' && other.content.key === 'scramble');
  if (branch || event === undefined || event.place > 0) return none;
  const at = (start: number, end: number): Range => ({
    start: { line: event.line, character: start },
    end: { line: event.line, character: end },
  });
  if (event.kind !== 'scramble' || event.body.kind !== 'turns') {
    const span =
      event.kind === 'scramble'
        ? event.span
        : event.kind === 'key'
          ? event.content.name.span
          : { start: 0, end: 0 };
    const reason = event.kind === 'scramble' ? 'there are no turns in it' : 'no turns follow';
    return {
      ...none,
      range: at(span.start, span.end),
      findings: [
        { args: { code: 'bad-value', key: 'scramble', reason }, range: at(span.start, span.end) },
      ],
    };
  }
  const range = at(event.body.span.start, event.body.span.end);
  const { items } = event.body.turns;
  const execution = execute(items, { resolve: context.resolve, limit: TURN_LIMIT });
  let state: State | undefined = held(SOLVED, holding);
  for (const [index, code] of execution.codes.entries()) {
    const jump = execution.jumps.get(index);
    if (state === undefined) break;
    if (jump === undefined) state = applyTurn(state, code);
    else state = jump.kind === 'power' ? compose(state, jump.effect) : undefined;
  }
  const findings = execution.unresolved
    .filter((node) => context.resolve(node.name) === undefined)
    .map((node): RawFinding => ({
      args: { code: 'name-unknown', what: 'sequence', name: node.name, known: [] },
      range: at(node.span.start, node.span.end),
    }));
  return { range, state, findings };
}
