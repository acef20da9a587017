/**
 * The goal strip in text: one row for each goal, one column for one or more turns. Where a column
 * covers several turns it shows the worst of them, so that no break is lost.
 */
import type { Block } from '../../../engine/document/analysis.ts';
import { makeTracks, type Stretch, type Track } from '../../../engine/picture/tracks.ts';
import type { Page, Tone } from './page.ts';
import { columns, harmless, padEnd } from './words.ts';

/** Signs from the most to the least telling. */
const SIGNS: readonly {
  readonly stretch: Stretch;
  readonly sign: string;
  readonly tone: Tone;
  readonly says: string;
}[] = [
  { stretch: 'lasting', sign: '✗', tone: 'error', says: 'lost' },
  { stretch: 'carried', sign: '≈', tone: 'warning', says: 'lost, back in a later stage' },
  { stretch: 'open', sign: '○', tone: 'warning', says: 'open' },
  { stretch: 'passing', sign: '~', tone: 'quiet', says: 'lent out, back within the stage' },
  { stretch: 'unknown', sign: '?', tone: 'quiet', says: 'unknown' },
  { stretch: 'kept', sign: '━', tone: 'good', says: 'made and kept' },
  { stretch: 'early', sign: '╌', tone: 'quiet', says: 'there early' },
];

const NOTHING = '·';

/** Columns from one number of the axis to the next. */
const TICK = 10;

/** Columns that the report stands in from the left. */
const INDENT = 4;

/** Beyond so many rows of the page a column stands for several turns. */
const MOST_SYSTEMS = 6;

/** Empty for a block without turns or goals. A long strip is broken into systems, like a score. */
export function stripLines(block: Block, page: Page): string[] {
  const places = block.course.length + 1;
  const tracks = makeTracks(block.timeline).filter((track) => track.parts.length > 0);
  if (places === 1 || tracks.length === 0) return [];
  const margin = Math.max(...tracks.map((track) => columns(track.goal))) + 2;
  const room = Math.max(20, Math.floor((page.width - margin - INDENT) / TICK) * TICK);
  const scale = Math.ceil(places / (room * MOST_SYSTEMS));
  const cells = tracks.map((track) => cellsOf(track, scale, Math.ceil(places / scale)));
  const lines: string[] = [];
  for (let from = 0; from * scale < places; from += room) {
    const to = Math.min(from + room, Math.ceil(places / scale));
    if (from > 0) lines.push('');
    lines.push(' '.repeat(margin) + page.tone('quiet', axis(block, scale, from, to)));
    tracks.forEach((track, row) => {
      const shown = cells[row].slice(from, to);
      // A goal that has nothing to show here takes no row.
      if (shown.some((cell) => cell !== undefined)) {
        lines.push(padEnd(harmless(track.goal), margin) + paint(shown, page));
      }
    });
  }
  const used = new Set(cells.flat());
  const legend = SIGNS.filter(({ stretch }) => used.has(stretch)).map(
    ({ sign, tone, says }) => `${page.tone(tone, sign)} ${says}`,
  );
  if (scale > 1) legend.push(page.tone('quiet', `a column is ${scale} turns`));
  return [...lines, ' '.repeat(margin) + legend.join('   ')];
}

function cellsOf(track: Track, scale: number, count: number): (Stretch | undefined)[] {
  const rank = (stretch: Stretch | undefined): number =>
    stretch === undefined ? SIGNS.length : SIGNS.findIndex((sign) => sign.stretch === stretch);
  const cells = new Array<Stretch | undefined>(count).fill(undefined);
  for (const { stretch, first, end } of track.parts) {
    const to = Math.floor((end - 1) / scale);
    for (let column = Math.floor(first / scale); column <= to; column++) {
      if (rank(stretch) < rank(cells[column])) cells[column] = stretch;
    }
  }
  return cells;
}

/** Cells of one kind share one pair of colour codes. */
function paint(cells: readonly (Stretch | undefined)[], page: Page): string {
  let line = '';
  for (let from = 0; from < cells.length;) {
    let to = from;
    while (to < cells.length && cells[to] === cells[from]) to++;
    const sign = SIGNS.find(({ stretch }) => stretch === cells[from]);
    line += page.tone(sign?.tone ?? 'quiet', (sign?.sign ?? NOTHING).repeat(to - from));
    from = to;
  }
  return line;
}

/** A mark and the number of the turn at every tenth place. */
function axis(block: Block, scale: number, from: number, to: number): string {
  let line = '';
  for (let column = from; column < to; column += TICK) {
    const turn = Math.min(column * scale, block.course.length) - 1;
    const label = turn < 0 ? '╵start' : `╵${block.numberOf(turn)}`;
    line = line.padEnd(column - from) + label;
  }
  return line;
}
