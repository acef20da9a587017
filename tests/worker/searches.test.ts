/** The worker's side of the line, spoken to in messages as the editor does. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { editLines } from '../../engine/late/written.ts';
import { dropTwoPhaseTables } from '../../engine/search/two-phase-tables.ts';
import type { SearchReply, SearchTask, WorkerResult } from '../../extension/worker/messages.ts';
import { makeService } from '../../extension/worker/service.ts';
import { holds, layersOf } from '../naive/goals.ts';
import { replay, SOLVED_CUBE } from '../naive/stickers.ts';

const SAMPLES = fileURLToPath(new URL('../../media/samples', import.meta.url));
const RIGHT = readFileSync(`${SAMPLES}/first-solve.moves`, 'utf8');
const SCRAMBLE = "R2 U' F D2 L' B R' U2 F' D L2 U B2 R F";

/** A line to a service of one's own: what it sends, and promises of its results. */
class Line {
  private readonly waiting = new Map<number, (result: WorkerResult) => void>();
  readonly sent: WorkerResult[] = [];
  private readonly handle = makeService(
    (result) => {
      // As between threads: only what can be copied comes through.
      const copy = structuredClone(result);
      this.sent.push(copy);
      if (!('progress' in copy)) this.waiting.get(copy.id)?.(copy);
    },
    () => new Promise((resolve) => setImmediate(resolve)),
  );
  private last = 0;

  start(text: string, task: SearchTask): { id: number; result: Promise<WorkerResult> } {
    const id = ++this.last;
    const result = new Promise<WorkerResult>((resolve) => this.waiting.set(id, resolve));
    this.handle({ id, body: { kind: 'search', text, options: {}, task } });
    return { id, result };
  }

  cancel(id: number): void {
    this.handle({ cancel: id });
  }
}

async function reply(text: string, task: SearchTask): Promise<SearchReply> {
  const result = await new Line().start(text, task).result;
  if (!('body' in result) || result.body.kind === 'answer') throw new Error(JSON.stringify(result));
  return result.body;
}

const START = { line: 1, character: 0 };

describe('a search in the worker', () => {
  test('finds a short way, which solves the stickers', async () => {
    const found = await reply(`scramble: ${SCRAMBLE}\n`, {
      kind: 'way',
      way: 'short',
      position: START,
    });
    if (found.kind !== 'way') throw new Error(found.kind);
    const cube = replay(SOLVED_CUBE, `${SCRAMBLE} ${found.turns}`.split(' '));
    expect(holds(layersOf('white')[6], cube)).toBe(true);
    expect(found.title).toMatch(/^\d+ turns; proven that at least 11 are needed$/u);
  });

  test('reaches a goal and says that it is the shortest way', async () => {
    const text = `scramble: ${SCRAMBLE}\nbase: white\nmethod: layers\n`;
    const found = await reply(text, { kind: 'way', way: 'short', position: START, goal: 'cross' });
    expect(found).toMatchObject({ kind: 'way', title: '6 turns, proven shortest' });
  });

  test('writes the person’s way as a text without findings', async () => {
    const found = await reply(`scramble: ${SCRAMBLE}\n`, {
      kind: 'way',
      way: 'person',
      position: START,
    });
    if (found.kind !== 'way' || found.text === undefined) throw new Error(found.kind);
    const shown = analyse(found.text).findings.filter(({ severity }) => severity !== 'off');
    expect(shown).toEqual([]);
  });

  test('finds the slip, by place or as a late finding of the block', async () => {
    const wrong = RIGHT.replace("y L' U L    ", 'y L U L    ');
    const slips = await reply(wrong, { kind: 'slips', position: { line: 12, character: 0 } });
    if (slips.kind !== 'fixes') throw new Error(slips.kind);
    expect(editLines(wrong.split('\n'), slips.fixes[0].edits)).toBe(RIGHT);
    const late = await reply(wrong.replace('B2 F2', 'B2 F'), { kind: 'late', line: 0 });
    if (late.kind !== 'late') throw new Error(late.kind);
    expect(late.findings.flatMap(({ fixes }) => fixes).length).toBeGreaterThan(0);
  });

  test('fills a gap with the turns that the author had left out, or shorter ones', async () => {
    const gap = RIGHT.replace("  R U R' U R U2 R'            // one", '  …            // one');
    expect(gap).not.toBe(RIGHT);
    const filled = await reply(gap, { kind: 'fills', position: { line: 30, character: 3 } });
    if (filled.kind !== 'fixes') throw new Error(JSON.stringify(filled));
    for (const { edits } of filled.fixes) {
      expect(analyse(editLines(gap.split('\n'), edits)).blocks[0].solved).toBe(true);
    }
    expect(filled.fixes.map(({ title }) => title).join('\n')).toContain(
      "R U R' U R U2 R': the shortest turns that fit",
    );
  });

  test('finds a shorter way for the turns between two places', async () => {
    const text = "scramble: F\n(R U R' U')5 F";
    const found = await reply(text, {
      kind: 'shorter',
      from: { line: 1, character: 0 },
      to: { line: 1, character: 13 },
    });
    if (found.kind !== 'ways') throw new Error(JSON.stringify(found));
    expect(found.ways[0].turns).toBe("U R U' R'");
  });

  test('makes a text to practise with, which is right as it stands', async () => {
    const found = await reply('', {
      kind: 'practice',
      goal: 'OLL',
      method: 'CFOP',
      base: 0,
      seed: 5,
      count: 3,
    });
    if (found.kind !== 'text') throw new Error(found.kind);
    const { findings, blocks } = analyse(found.text);
    expect(findings.filter(({ severity }) => severity !== 'off')).toEqual([]);
    expect(blocks.filter(({ kind }) => kind === 'solve')).toHaveLength(3);
  });

  test('says in a sentence what it cannot do', async () => {
    const text = 'start:\n  w\nR U';
    const found = await reply(text, {
      kind: 'way',
      way: 'short',
      position: { line: 2, character: 3 },
    });
    expect(found).toEqual({ kind: 'nothing', reason: 'The cube at this place is not known.' });
    const right = await reply(RIGHT, { kind: 'slips', position: START });
    expect(right).toMatchObject({ kind: 'nothing' });
  });
});

describe('calling a search off', () => {
  test('comes through while the tables are built, and leaves others alone', async () => {
    dropTwoPhaseTables();
    const line = new Line();
    const text = `scramble: ${SCRAMBLE}\n`;
    const first = line.start(text, { kind: 'way', way: 'short', position: START });
    const second = line.start(text, { kind: 'way', way: 'short', position: START, goal: 'cross' });
    await new Promise((resolve) => setTimeout(resolve, 30));
    const sent = performance.now();
    line.cancel(first.id);
    const result = await first.result;
    const took = performance.now() - sent;
    expect(result).toEqual({ id: first.id, cancelled: true });
    // The bound is 20 ms; a busy machine and a second search are given more.
    expect(took).toBeLessThan(150);
    expect(await second.result).toHaveProperty('body.kind', 'way');
  });

  test('of a search that has ended does nothing', async () => {
    const line = new Line();
    const { id, result } = line.start(RIGHT, { kind: 'late', line: 0 });
    await result;
    line.cancel(id);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(line.sent).toHaveLength(1);
  });
});

test('a long search tells how far it is', async () => {
  dropTwoPhaseTables();
  const line = new Line();
  const started = line.start(`scramble: ${SCRAMBLE}\n`, {
    kind: 'way',
    way: 'short',
    position: START,
  });
  await started.result;
  expect(line.sent.some((result) => 'progress' in result)).toBe(true);
});
