/**
 * Findings that single lines bring up by themselves: spellings, brackets, words, keys, turns that
 * cancel. The fixes keep to the place they speak of.
 */
import { printTurns } from '../notation/print.ts';
import { cancellations } from '../notation/simplify.ts';
import { readSpoken } from '../notation/spoken.ts';
import type { SequenceMark } from '../notation/tree.ts';
import { rangeIn } from './check-claims.ts';
import { isLiteral, rangeOfTurn, type Judged } from './judged.ts';
import type { RawFinding, RawFix } from './raw-finding.ts';
import { TURN_LIMIT, type LineNote, type Script } from './script.ts';

export interface TextQuestion {
  readonly script: Script;
  readonly firstLine: number;
  readonly textOf: (line: number) => string;
  /** Named sequences; those that contain themselves execute nothing, but have a finding of their own. */
  readonly known: ReadonlyMap<string, unknown>;
}

export function checkText(question: TextQuestion): RawFinding[] {
  const findings: RawFinding[] = [];
  let passage: { line: number; index: number; edits: RawFix['edits'][number][] } | undefined;
  let tooLong = false;
  for (const note of question.script.notes) {
    if (note.line < question.firstLine) continue;
    if (note.kind === 'prose') {
      const { line, words } = note;
      const edit = commentEdit(line, words.span.start);
      // Lines of words that follow each other are one passage and one finding.
      if (passage?.line === line - 1) {
        passage.line = line;
        passage.edits.push(edit);
        const { range } = findings[passage.index];
        const end = { line, character: words.span.end };
        findings[passage.index] = { ...findings[passage.index], range: { ...range, end } };
        continue;
      }
      passage = { line, index: findings.length, edits: [edit] };
      findings.push({
        args: { code: 'prose', text: words.text },
        range: rangeIn(line, words.span),
        fixes: [{ title: 'Make it a comment', edits: passage.edits }],
      });
    } else if (note.kind === 'too-long') {
      if (!tooLong)
        findings.push({
          args: { code: 'too-long', limit: TURN_LIMIT },
          range: rangeIn(note.line, note.span),
        });
      tooLong = true;
    } else findings.push(...sayNote(note, question));
  }
  return findings;
}

function commentEdit(line: number, character: number): RawFix['edits'][number] {
  const place = { line, character };
  return { range: { start: place, end: place }, newText: '// ' };
}

function sayNote(
  note: Exclude<LineNote, { kind: 'prose' | 'too-long' }>,
  question: TextQuestion,
): RawFinding[] {
  switch (note.kind) {
    case 'mark':
      return [sayMark(note.mark, note.text, note.line)];
    case 'spoken': {
      const spoken = readSpoken(note.words.text);
      const range = rangeIn(note.line, note.words.span);
      const newText = spoken?.newText;
      const fixes =
        newText === undefined
          ? []
          : [{ title: `Write ${short(newText)}`, edits: [{ range, newText }] }];
      return [{ args: { code: 'spoken-notation', newText }, range, fixes }];
    }
    case 'unknown-key': {
      const { name, suggestion } = note.content;
      const range = rangeIn(note.line, name.span);
      const fixes = suggestion
        ? [{ title: `Write ${suggestion.text}:`, edits: [{ range, newText: suggestion.text }] }]
        : [];
      return [
        {
          args: { code: 'unknown-key', key: name.text, suggestion: suggestion?.text },
          range,
          fixes,
        },
      ];
    }
    case 'name-unknown':
      if (question.known.has(note.name)) return [];
      return [
        {
          args: {
            code: 'name-unknown',
            what: 'sequence',
            name: `@${note.name}`,
            known: firstNames(question.known),
          },
          range: rangeIn(note.line, note.span),
        },
      ];
    default:
      return [];
  }
}

function sayMark(mark: SequenceMark, text: string, line: number): RawFinding {
  const range = rangeIn(line, mark.span);
  const replaced = (newText: string): RawFix[] => [
    { title: `Write ${short(newText)}`, edits: [{ range, newText }] },
  ];
  switch (mark.kind) {
    case 'unknown-turn':
      return { args: { code: 'unknown-turn', text: mark.text }, range };
    case 'unclosed': {
      const place = { line, character: mark.at };
      return {
        args: { code: 'unclosed', kind: 'bracket', bracket: mark.bracket, insert: mark.insert },
        range,
        fixes: [
          {
            title: `Insert ${mark.insert}`,
            edits: [{ range: { start: place, end: place }, newText: mark.insert }],
          },
        ],
      };
    }
    case 'bare-conjugate':
      return {
        args: { code: 'unclosed', kind: 'conjugate', newText: mark.newText },
        range,
        fixes: replaced(mark.newText),
      };
    case 'spelling':
      return {
        args: { code: 'spelling', text, newText: mark.newText },
        range,
        fixes: replaced(mark.newText),
      };
    case 'repeat-or-rotation':
      return {
        args: { code: 'repeat-or-rotation', text, newText: mark.newText, repeatFits: false },
        range,
        fixes: replaced(mark.newText),
      };
  }
}

/** As many as a sentence lists. */
function firstNames(known: ReadonlyMap<string, unknown>): string[] {
  const names: string[] = [];
  for (const name of known.keys()) {
    if (names.length === 8) break;
    names.push(`@${name}`);
  }
  return names;
}

function short(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}

/** Turns written next to each other in a line that cancel or merge, where they can be edited as they stand. */
export function checkCancelling(judged: Judged): RawFinding[] {
  const { codes, lines } = judged.script;
  const findings: RawFinding[] = [];
  for (let from = judged.ownFrom; from < codes.length;) {
    let end = from + 1;
    while (end < codes.length && lines[end] === lines[from]) end++;
    // A line may hold more than a call takes arguments.
    if (end - from > 1)
      for (const finding of cancellingIn(judged, from, end)) findings.push(finding);
    from = end;
  }
  return findings;
}

/** In the turns of a line, from `from` to before `end`. */
function cancellingIn(judged: Judged, from: number, end: number): RawFinding[] {
  const { script } = judged;
  return cancellations(script.codes.slice(from, end)).flatMap((found): RawFinding[] => {
    const [first, last] = [found.first + from, found.last + from];
    for (let turn = first; turn <= last; turn++) {
      if (!isLiteral(judged, turn) || (turn > first && !onlyBlanks(judged, turn))) return [];
    }
    const range = { start: rangeOfTurn(judged, first).start, end: rangeOfTurn(judged, last).end };
    const result = printTurns(found.replacement);
    const title = result === '' ? 'Leave them out' : `Write ${result}`;
    return [
      {
        args: {
          code: 'turns-cancel',
          turns: printTurns(script.codes.slice(first, last + 1)),
          result,
        },
        range,
        fixes: [{ title, edits: [{ range, newText: result }] }],
      },
    ];
  });
}

/** Whether nothing but blanks stands between a turn and the one before it. */
function onlyBlanks(judged: Judged, turn: number): boolean {
  const { script } = judged;
  const between = judged
    .textOf(script.lines[turn])
    .slice(script.ends[turn - 1], script.starts[turn]);
  return between.trim() === '';
}
