/**
 * Formatting: canonical spelling, one blank between turns, turns of a stage indented, comments of
 * neighbouring lines aligned. A line keeps its content as read; where the reader would see another
 * one in the new text, the line stays as it was. So nothing can be lost, whatever the text is.
 */
import { METHODS } from '../../goals/methods.ts';
import { printSequence } from '../../notation/print.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import type { Analysis } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import { readDocument, type Body, type Comment, type LineContent } from '../read/index.ts';
import { bodyOf, rangeIn } from './text.ts';

const INDENT = '  ';
/** Longer turns do not push the comments of other lines to the right. */
const WIDEST = 60;

interface Laid {
  readonly text: string;
  readonly comment: string | undefined;
  /** Comments of lines of turns stand below each other, headings in between or not. */
  readonly aligned: boolean;
  /** Ends a run of aligned comments. */
  readonly breaks?: true;
}

/** Edits, one for each line that changes; none for a text that is formatted already. */
export function format(analysis: Analysis): TextEdit[] {
  const { lines } = analysis.tree;
  const imported = stagesKnown(analysis);
  let wanted = layOut(analysis);
  // Lines that would be read otherwise are left alone; that may matter to others, hence the rounds.
  const kept = new Set<number>();
  for (let round = 0; round < 4; round++) {
    const after = readDocument(wanted.join('\n'), imported);
    let spoilt = 0;
    for (let line = 0; line < lines.length; line++) {
      if (kept.has(line)) continue;
      if (meaning(lines[line].content) === meaning(after.lines[line].content)) continue;
      kept.add(line);
      spoilt++;
    }
    if (spoilt === 0) return changes(analysis, wanted);
    wanted = wanted.map((text, line) => (kept.has(line) ? lines[line].text : text));
  }
  return [];
}

/** Names of stages that may come from other files: the reader must know them. */
function stagesKnown({ blocks }: Analysis): string[] {
  const names = new Set<string>();
  for (const { scope } of blocks) {
    for (const { name } of scope.goals) names.add(name);
    for (const method of scope.methods)
      if (!METHODS.includes(method)) for (const { name } of method.stages) names.add(name);
  }
  return [...names];
}

function changes({ lines }: Analysis, wanted: readonly string[]): TextEdit[] {
  return wanted.flatMap((newText, line) =>
    newText === lines[line]
      ? []
      : [{ range: rangeIn(line, { start: 0, end: lines[line].length }), newText }],
  );
}

function layOut({ tree }: Analysis): string[] {
  const laid: Laid[] = [];
  let inStage = false;
  for (const { text, content } of tree.lines) {
    if (content.kind === 'stage') inStage = true;
    if (content.kind === 'key' && ['solve', 'aside', 'end', 'scramble'].includes(content.key))
      inStage = false;
    // In a sequence the turns are its body, as those of a stage are.
    if (content.kind === 'key' && content.key === 'sequence') inStage = true;
    laid.push(layLine(text, content, inStage));
  }
  return align(laid);
}

function layLine(text: string, content: LineContent, inStage: boolean): Laid {
  const asIs: Laid = { text: text.trimEnd(), comment: undefined, aligned: false };
  switch (content.kind) {
    case 'blank':
      return { ...asIs, text: '', breaks: true };
    case 'turns': {
      const body = printBody(text, content);
      const lead = text.slice(0, content.span.start);
      if (body === undefined || lead.trim() !== '') return asIs;
      const indent = inStage ? INDENT : lead.startsWith('\uFEFF') ? lead : '';
      return withComment(indent + body, text, content.comment, true) ?? asIs;
    }
    case 'key': {
      if (content.colon === undefined || text.slice(0, content.name.span.start).trim() !== '')
        return asIs;
      if (content.key === 'note') return asIs;
      const lead = text.slice(0, content.name.span.start);
      const value = content.body ? printBody(text, content.body) : content.value.text;
      if (value === undefined) return asIs;
      const head = `${lead}${content.key}:`;
      return (
        withComment(value === '' ? head : `${head} ${value}`, text, content.comment, false) ?? asIs
      );
    }
    case 'stage': {
      const lead = text.slice(0, content.heading.span.start);
      if (content.colon === undefined || lead.trim() !== '') return asIs;
      const body = content.body ? printBody(text, content.body) : '';
      if (body === undefined) return asIs;
      const head = `${content.heading.text}:`;
      return (
        withComment(body === '' ? head : `${head} ${body}`, text, content.comment, false) ?? asIs
      );
    }
    case 'scramble': {
      const body = printBody(text, content.body);
      if (body === undefined || text.slice(0, content.body.span.start).trim() !== '') return asIs;
      return withComment(body, text, content.comment, false) ?? asIs;
    }
    default:
      return asIs;
  }
}

/** The turns in canonical spelling; undefined where something stands between them that is no turn. */
function printBody(text: string, body: Body): string | undefined {
  if (body.kind !== 'turns') return text.slice(body.span.start, body.span.end);
  if (body.ignored.length > 0) return undefined;
  if (body.turns.marks.some(({ kind }) => kind !== 'spelling' && kind !== 'unknown-turn'))
    return undefined;
  return printSequence(body.turns.items);
}

/** Undefined if something would stand behind the comment's end or between it and the turns. */
function withComment(
  text: string,
  line: string,
  comment: Comment | undefined,
  aligned: boolean,
): Laid | undefined {
  if (comment === undefined) return { text, comment: undefined, aligned };
  if (line.slice(comment.span.end).trim() !== '') return undefined;
  return { text, comment: comment.text, aligned };
}

function align(laid: readonly Laid[]): string[] {
  const result: string[] = [];
  for (let first = 0; first < laid.length;) {
    let end = first + 1;
    while (end < laid.length && laid[end].breaks === undefined) end++;
    const run = laid.slice(first, end);
    const widths = run
      .filter(
        ({ comment, text, aligned }) => aligned && comment !== undefined && text.length <= WIDEST,
      )
      .map(({ text }) => text.length);
    const width = Math.max(0, ...widths);
    for (const { text, comment, aligned } of run) {
      if (comment === undefined) result.push(text);
      else result.push(`${aligned ? text.padEnd(width) : text}  // ${comment}`.trimEnd());
    }
    first = end;
  }
  return result;
}

/** What a line says, spelling and blanks apart. */
function meaning(content: LineContent): string {
  const body = bodyOf(content);
  const turns = body?.kind === 'turns' ? printed(body.turns.items) : (body?.text ?? '');
  const comment = 'comment' in content ? content.comment : undefined;
  const head =
    content.kind === 'key'
      ? [content.key, content.body ? '' : content.value.text]
      : content.kind === 'stage'
        ? [content.heading.text]
        : content.kind === 'unknown-key'
          ? [content.name.text, content.value.text]
          : content.kind === 'net-row'
            ? [content.text]
            : [];
  return JSON.stringify([content.kind, head, body?.kind, turns, comment?.text]);
}

function printed(items: readonly SequenceNode[]): string {
  return printSequence(items);
}
