/**
 * The goal strip in text: one row for each goal, one column for one or more turns. Where a column
 * covers several turns it shows the worst of them, so that no break is lost.
 */
import type { Block } from '../../../engine/document/analysis.ts';
import { makeTracks, type Stretch, type Track } from '../../../engine/picture/tracks.ts';
import type { Page, Tone } from './page.ts';
import { padEnd } from './words.ts';

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

/** Empty for a block without turns or goals. */
export function stripLines(block: Block, page: Page): string[] {
  const { length } = block.course;
  const tracks = makeTracks(block.timeline).filter((track) => track.parts.length > 0);
  if (length === 0 || tracks.length === 0) return [];
  const margin = Math.max(...tracks.map((track) => track.goal.length)) + 2;
  const room = Math.max(20, page.width - margin - 4);
  const perColumn = Math.ceil((length + 1) / room);
  const columns = Math.ceil((length + 1) / perColumn);
  const used = new Set<Stretch>();
  const rows = tracks.map((track) => {
    const cells = cellsOf(track, perColumn, columns);
    for (const cell of cells) if (cell !== undefined) used.add(cell);
    return padEnd(track.goal, margin) + paint(cells, page);
  });
  const legend = SIGNS.filter(({ stretch }) => used.has(stretch)).map(
    ({ sign, tone, says }) => `${page.tone(tone, sign)} ${says}`,
  );
  const scale = perColumn === 1 ? '' : ` (a column is ${perColumn} turns)`;
  return [
    ' '.repeat(margin) + page.tone('quiet', axis(block, perColumn, columns)),
    ...rows,
    ' '.repeat(margin) + legend.join('  ') + page.tone('quiet', scale),
  ];
}

function cellsOf(track: Track, perColumn: number, columns: number): (Stretch | undefined)[] {
  const rank = (stretch: Stretch | undefined): number =>
    stretch === undefined ? SIGNS.length : SIGNS.findIndex((sign) => sign.stretch === stretch);
  const cells = new Array<Stretch | undefined>(columns).fill(undefined);
  for (const { stretch, first, end } of track.parts) {
    const to = Math.floor((end - 1) / perColumn);
    for (let column = Math.floor(first / perColumn); column <= to; column++) {
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

/** A mark and the number of the turn at every tenth column. */
function axis(block: Block, perColumn: number, columns: number): string {
  let line = '';
  for (let column = 0; column < columns; column += 10) {
    const turn = column * perColumn - 1;
    const label = column === 0 ? '' : `╵${block.numberOf(Math.min(turn, block.course.length - 1))}`;
    line = line.padEnd(column) + label;
  }
  return line;
}
