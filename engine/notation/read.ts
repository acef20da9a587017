/**
 * Reads the turns in a stretch of one line. Total: every text gives a tree, and what it does not
 * understand becomes an `unknown` node with a mark.
 *
 * A token (a run without white space or brackets) is turns only if every character of it parses;
 * else it is unknown as a whole, so that nothing is ever half executed. Open brackets are kept on a
 * stack of frames, so that nesting is limited by memory only; time is linear in the text.
 */
import type { Span } from '../cube/place.ts';
import { isPrime, isSpace, readName, readTurn } from './letters.ts';
import {
  conjugateItems,
  conjugateOf,
  digitsEnd,
  finishColon,
  lacksSquare,
  makeFrame,
  readTimes,
  respell,
  type Frame,
  type Repeatable,
} from './read-parts.ts';
import type { SequenceMark, SequenceNode, SequenceTree } from './tree.ts';

const PARTNER = { '(': ')', '[': ']', ')': '(', ']': '[' } as const;

/** Reads `text` from `start` to before `end`; all spans are offsets in the whole `text`. */
export function readSequence(text: string, start = 0, end = text.length): SequenceTree {
  let from = start;
  let to = end;
  while (from < to && isSpace(text[from])) from++;
  while (from < to && isSpace(text[to - 1])) to--;
  return new Reader(text, from, to).read();
}

/** Whether all of the text is turns (or names, gaps, pauses) and there is at least one of them. */
export function looksLikeTurns(text: string): boolean {
  const { items, marks } = readSequence(text);
  return items.length > 0 && executable({ items, marks });
}

/** Whether nothing of the text was left unread: no unknown token, no bracket without its partner. */
export function executable(tree: SequenceTree): boolean {
  return tree.marks.every((mark) => mark.kind === 'spelling' || mark.kind === 'repeat-or-rotation');
}

class Reader {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly marks: SequenceMark[] = [];
  readonly frames: Frame[];
  readonly open = { '(': 0, '[': 0 };
  at: number;
  /** End of the last character that is not white space. */
  contentEnd: number;
  sawUnknown = false;
  /** The last item of the top frame is a bracket or name without a count, and only white space follows it so far. */
  repeatable = false;

  constructor(text: string, start: number, end: number) {
    this.text = text;
    this.start = start;
    this.end = end;
    this.at = start;
    this.contentEnd = start;
    this.frames = [makeFrame('', start)];
  }

  get top(): Frame {
    return this.frames[this.frames.length - 1];
  }

  read(): SequenceTree {
    if (lacksSquare(this.text, this.start, this.end)) this.supply('[', this.start);
    while (this.at < this.end) {
      const character = this.text[this.at];
      if (isSpace(character)) this.at++;
      else if (character === '(' || character === '[') this.openBracket(character);
      else if (character === ')' || character === ']') this.closeBracket(character);
      else if (this.top.bracket === '[' && (character === ',' || character === ':'))
        this.separate(character);
      else {
        const end = this.runEnd(this.at);
        if (this.isBareConjugate(end)) return this.bareConjugate();
        this.readRun(end);
      }
    }
    while (this.frames.length > 1) this.closeUnclosed();
    return { items: this.top.items, marks: this.marks };
  }

  runEnd(from: number): number {
    const parts = this.top.bracket === '[';
    let end = from;
    for (; end < this.end; end++) {
      const character = this.text[end];
      if (isSpace(character) || '()[]'.includes(character)) break;
      if (parts && (character === ',' || character === ':')) break;
    }
    return end;
  }

  openBracket(bracket: '(' | '['): void {
    this.frames.push(makeFrame(bracket, this.at));
    this.open[bracket]++;
    this.contentEnd = ++this.at;
    this.repeatable = false;
  }

  /** Opens a bracket that is missing in the text. */
  supply(bracket: '(' | '[', start: number): void {
    this.frames.push({ ...makeFrame(bracket, start), partStart: start, supplied: true });
    this.open[bracket]++;
  }

  separate(separator: ',' | ':'): void {
    const frame = this.top;
    finishColon(frame, this.at);
    if (separator === ',') {
      frame.commas.push(frame.colons);
      frame.colons = [];
    }
    this.contentEnd = ++this.at;
    frame.partStart = this.at;
    this.repeatable = false;
  }

  closeBracket(bracket: ')' | ']'): void {
    const partner = PARTNER[bracket];
    if (this.open[partner] > 0) {
      while (this.top.bracket !== partner) this.closeUnclosed();
    } else {
      // Read as opened where the bracket around it, or the stretch, begins: so is the repair.
      const outer = this.top;
      this.supply(partner, outer.partStart);
      this.top.items = outer.items;
      outer.items = [];
    }
    if (this.top.supplied) {
      const span = { start: this.at, end: this.at + 1 };
      this.mark({ kind: 'unclosed', span, bracket, at: this.top.start, insert: partner });
    }
    this.contentEnd = ++this.at;
    const node = this.finishFrame();
    if (node.kind === 'unknown') this.repeatable = false;
    else this.readRun(this.runEnd(this.at), node);
  }

  /** An open bracket whose partner is missing is read as closed here. */
  closeUnclosed(): void {
    const { bracket, start } = this.top;
    if (bracket === '') return;
    const span = { start, end: start + 1 };
    this.mark({ kind: 'unclosed', span, bracket, at: this.contentEnd, insert: PARTNER[bracket] });
    this.finishFrame();
    this.repeatable = false;
  }

  /** Turns the top frame into a node of the frame around it. */
  finishFrame(): SequenceNode {
    const end = this.contentEnd;
    const frame = this.top;
    this.frames.pop();
    if (frame.bracket !== '') this.open[frame.bracket]--;
    const span = { start: frame.start, end };
    const node =
      frame.commas.length + frame.colons.length > 0
        ? this.finishParts(frame, span)
        : ({ kind: 'group', span, items: frame.items, times: 1n } as const);
    this.top.items.push(node);
    return node;
  }

  /** The node of a square bracket with commas or colons in it. */
  finishParts(frame: Frame, span: Span): SequenceNode {
    finishColon(frame, span.end);
    const lists = [...frame.commas, frame.colons];
    if (lists.length > 2) return this.unknown(span);
    const [first, second] = lists;
    if (second === undefined) return { ...conjugateOf(first), span };
    return {
      kind: 'commutator',
      span,
      first: conjugateItems(first),
      second: conjugateItems(second),
      times: 1n,
    };
  }

  /** Reads the run up to `end`; `closed` is the bracket that ended right before it. */
  readRun(end: number, closed?: SequenceNode): void {
    const from = this.at;
    const { items } = this.top;
    const itemsBefore = items.length;
    const marksBefore = this.marks.length;
    const wasRepeatable = this.repeatable;
    this.at = end;
    if (end > from) this.contentEnd = end;
    this.repeatable = closed !== undefined;
    const tight = closed !== undefined;
    if ((tight || wasRepeatable) && this.readLooseRepeat(from, end, tight)) return;
    let at = closed === undefined ? from : this.readTightRepeat(from, end);
    while (at < end) {
      const next = this.readUnit(at, end);
      if (next === undefined) {
        items.length = itemsBefore;
        if (closed !== undefined) items[itemsBefore - 1] = closed;
        this.marks.length = marksBefore;
        items.push(this.unknown({ start: from, end }));
        this.repeatable = false;
        return;
      }
      at = next;
    }
  }

  /** One turn, pause, gap or name at `at`; where it ends. */
  readUnit(at: number, end: number): number | undefined {
    const { text } = this;
    const { items } = this.top;
    this.repeatable = false;
    const turn = readTurn(text, at, end);
    if (turn !== undefined) {
      const span = { start: at, end: turn.end };
      items.push({ kind: 'turn', span, turn: turn.turn });
      if (turn.newText !== undefined) this.mark({ kind: 'spelling', span, newText: turn.newText });
      return turn.end;
    }
    const character = text[at];
    if (character === '~') {
      items.push({ kind: 'pause', span: { start: at, end: at + 1 } });
      return at + 1;
    }
    if (character === '…' || character === '.' || character === '?') {
      let after = at;
      while (after < end && text[after] === character) after++;
      if (character !== '…' && after - at < 3) return undefined;
      items.push({ kind: 'gap', span: { start: at, end: after } });
      return after;
    }
    const name = character === '@' ? readName(text, at, end) : undefined;
    if (name === undefined) return undefined;
    items.push({ kind: 'name', span: { start: at, end: name.end }, name: name.name, times: 1n });
    this.repeatable = true;
    return this.readTightRepeat(name.end, end);
  }

  /** `3`, `'`, `3'`, `x3`, `×3`, `^-1` right after a bracket or name; where it ends. */
  readTightRepeat(from: number, end: number): number {
    let at = from;
    let inverse = false;
    let count: bigint | undefined;
    let spelled = false;
    const prime = (): void => {
      if (!inverse && at < end && isPrime(this.text[at])) {
        inverse = true;
        at++;
      }
    };
    prime();
    const after = digitsEnd(this.text, at, end);
    if (after > at) {
      count = BigInt(this.text.slice(at, after));
      at = after;
      prime();
    } else {
      const times = readTimes(this.text, at, end);
      if (times !== undefined) {
        spelled = true;
        ({ end: at } = times);
        count = times.count;
        prime();
      }
    }
    if (at > from) this.repeat(inverse ? -(count ?? 1n) : (count ?? 1n), at, spelled);
    // Once it has a count, a following `x3` is a turn.
    this.repeatable = count === undefined && at === end;
    return at;
  }

  /** `x3`, `×3` after a bracket and white space, `x 3` in any case. */
  readLooseRepeat(from: number, end: number, tight: boolean): boolean {
    const times =
      (tight ? undefined : readTimes(this.text, from, end)) ?? this.readSpacedTimes(from, end);
    if (times === undefined || times.end < end) return false;
    const node = this.top.items[this.top.items.length - 1] as Repeatable;
    if ('xX'.includes(this.text[from]) && times.count === 2n && times.end === end) {
      this.mark({ kind: 'repeat-or-rotation', ...respell(node, node.times * 2n, end) });
      this.repeatable = false;
      return false;
    }
    this.at = times.end;
    this.contentEnd = times.end;
    this.repeat(times.count, times.end, true);
    this.repeatable = false;
    return true;
  }

  /** `x 3`: as `3` alone is no turn, only a repeat can be meant. */
  readSpacedTimes(from: number, end: number): { count: bigint; end: number } | undefined {
    const { text } = this;
    if (end !== from + 1 || !'xX×✕✖*'.includes(text[from])) return undefined;
    let digits = end;
    while (digits < this.end && isSpace(text[digits])) digits++;
    const after = digitsEnd(text, digits, this.end);
    if (after === digits || after !== this.runEnd(digits)) return undefined;
    return { count: BigInt(text.slice(digits, after)), end: after };
  }

  /** Gives the last item its count, written up to `end`. */
  repeat(count: bigint, end: number, spelled: boolean): void {
    const { items } = this.top;
    const node = items[items.length - 1] as Repeatable;
    const times = node.times * count;
    if (spelled) this.mark({ kind: 'spelling', ...respell(node, times, end) });
    const span = { start: node.span.start, end };
    const once = times === 1n || times === -1n;
    items[items.length - 1] =
      node.kind === 'name' && !once
        ? { kind: 'group', span, items: [{ ...node, times: 1n }], times }
        : { ...node, times, span };
  }

  /** Only turns before a colon outside all brackets, and something behind it. */
  isBareConjugate(end: number): boolean {
    if (this.frames.length > 1 || this.sawUnknown) return false;
    let colon = this.at;
    while (colon < end && this.text[colon] !== ':') colon++;
    if (colon === end || colon + 1 >= this.end) return false;
    if (colon === this.at) return this.top.items.length > 0;
    return looksLikeTurns(this.text.slice(this.at, colon));
  }

  bareConjugate(): SequenceTree {
    const span = { start: this.start, end: this.end };
    const text = this.text.slice(this.start, this.end);
    return {
      items: [{ kind: 'unknown', span, text }],
      marks: [{ kind: 'bare-conjugate', span, newText: `[${text}]` }],
    };
  }

  unknown(span: Span): SequenceNode {
    const text = this.text.slice(span.start, span.end);
    this.sawUnknown = true;
    this.mark({ kind: 'unknown-turn', span, text });
    return { kind: 'unknown', span, text };
  }

  mark(mark: SequenceMark): void {
    this.marks.push(mark);
  }
}
