/** What a text leaves open and is taken to mean, and headings that mean nothing in its method. */
import type { Range } from '../cube/place.ts';
import { COLOURS } from '../cube/vocabulary.ts';
import { rangeIn } from './check-claims.ts';
import type { Judged } from './judged.ts';
import type { RawFinding } from './raw-finding.ts';

/** Headings of another method's stages. */
export function strangeHeadings({ stages, firstLine, textOf }: Judged): RawFinding[] {
  return stages.strange
    .filter(({ line }) => line >= firstLine)
    .map(({ line, span }) => ({
      args: {
        code: 'unknown-key',
        key: textOf(line).slice(span.start, span.end),
        suggestion: undefined,
      },
      range: rangeIn(line, span),
    }));
}

export function assumptions(judged: Judged, baseAssumed: boolean): RawFinding[] {
  if (judged.kind !== 'solve' || judged.course.length === judged.ownFrom) return [];
  const { script, start, base } = judged;
  const turn = script.lines[0];
  const range: Range = {
    start: { line: turn, character: script.starts[0] },
    end: { line: turn, character: script.ends[0] },
  };
  const findings: RawFinding[] = [];
  if (start.from === 'inverse') findings.push({ args: { code: 'start-assumed' }, range });
  if (baseAssumed && start.course.stateAt(0) !== undefined) {
    const colour = COLOURS[base];
    // Before the first line that does anything: a line above `scramble:` may be another solve's.
    const first = script.events.find(
      ({ kind, line }) =>
        line >= judged.firstLine && (kind === 'turns' || kind === 'heading' || kind === 'label'),
    );
    const place = { line: first?.line ?? turn, character: 0 };
    findings.push({
      args: { code: 'base-assumed', colour },
      range,
      fixes: [
        {
          title: `Write base: ${colour}`,
          edits: [{ range: { start: place, end: place }, newText: `base: ${colour}\n` }],
        },
      ],
    });
  }
  return findings;
}
