/** Refactorings: those that keep the effect keep it; invert and mirror do what their names say. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyTurns, sameState, SOLVED, type State } from '../../../engine/cube/state.ts';
import { printTurn, type Turn } from '../../../engine/cube/turn.ts';
import { describeEffect } from '../../../engine/cube/effect.ts';
import { analyse } from '../../../engine/document/analyse.ts';
import { refactorings, type Refactoring } from '../../../engine/document/features/index.ts';
import { findForm } from '../../../engine/document/features/commutator.ts';
import { printSequence } from '../../../engine/notation/print.ts';
import { readSequence } from '../../../engine/notation/read.ts';
import { invertTurns } from '../../../engine/notation/transform.ts';
import { stateOf, turns } from '../../notation/sequences.ts';
import { applied } from '../analyse-support.ts';
import { withCursor } from './support.ts';

function offered(marked: string): { text: string; actions: Refactoring[] } {
  const { text, selection } = withCursor(marked);
  return { text, actions: refactorings(analyse(text), selection) };
}

/** The text after the refactoring whose title begins so. */
function after(marked: string, title: string): string {
  const { text, actions } = offered(marked);
  const action = actions.find((one) => one.title.startsWith(title));
  if (action === undefined)
    throw new Error(`no “${title}” among ${actions.map((one) => one.title).join('; ')}`);
  return applied(text, action.edits);
}

const whole = (text: string): string => `|${text}|`;
const written = (sequence: readonly Turn[]): string => sequence.map(printTurn).join(' ');
const some = turns.filter((list) => list.length > 0);

/** `(UFR UBL …)` with left and right exchanged, as the stickers of a mirror see it. */
function mirroredCycles(state: State): Set<string> {
  const side = (name: string): string =>
    name.replace(/[LR]/g, (face) => (face === 'L' ? 'R' : 'L'));
  return cyclesOf(state, side);
}

function cyclesOf(state: State, change = (name: string): string => name): Set<string> {
  const sorted = (name: string): string => name[0] + [...name.slice(1)].sort().join('');
  const { corners, edges, centres, twists, flips } = describeEffect(state);
  const result = new Set<string>();
  for (const { stickers } of [...corners, ...edges, ...centres]) {
    const places = stickers.map((sticker) => [...change(sticker)].sort().join(''));
    places.forEach((place, i) => result.add(`${place}>${places[(i + 1) % places.length]}`));
  }
  for (const { slot, turn } of twists) {
    const other = turn === 'clockwise' ? 'counter-clockwise' : 'clockwise';
    result.add(`${[...change(slot)].sort().join('')} ${change('L') === 'R' ? other : turn}`);
  }
  for (const slot of flips) result.add(sorted(change(slot)).split('').sort().join(''));
  return result;
}

describe('invert', () => {
  test('brackets and counts stay: [R U, D] becomes [D, R U]', () => {
    expect(after('[|R U, D] (F U)3', 'Invert')).toBe('[D, R U] (F U)3');
    expect(after("|R U R'| U'", 'Invert')).toBe("R U' R' U'");
  });

  test('twice is the sequence, and once undoes it', () => {
    fc.assert(
      fc.property(some, (list) => {
        const text = written(list);
        // Half turns there and back are their own inverse: there is nothing to offer.
        if (written(invertTurns(list)) === text) return;
        const once = after(whole(text), 'Invert');
        expect(sameState(stateOf(`${text} ${once}`), SOLVED)).toBe(true);
        expect(after(whole(once), 'Invert')).toBe(text);
      }),
    );
  });
});

describe('mirror', () => {
  test('the right hand becomes the left', () => {
    expect(after("|R U R' U'|", 'Mirror left')).toBe("L' U' L U");
    expect(after("|R U M' x|", 'Mirror left')).toBe("L' U' M' x");
    expect(after('|F R|', 'Mirror front')).toBe("B' R'");
    expect(after('|U R|', 'Mirror up')).toBe("D' R'");
  });

  test('it acts as the mirrored permutation', () => {
    fc.assert(
      fc.property(some, (list) => {
        const text = written(list);
        const { actions } = offered(whole(text));
        const action = actions.find(({ title }) => title.startsWith('Mirror left'));
        const mirrored = action ? applied(text, action.edits) : text;
        expect(cyclesOf(stateOf(mirrored))).toEqual(mirroredCycles(stateOf(text)));
      }),
    );
  });
});

describe('with the same effect', () => {
  test('for another holding', () => {
    expect(after("|R U R'|", 'Write it for the cube after y,')).toBe("y F U F' y'");
    expect(after("|R U R'|", 'Write it for the cube after x2,')).toBe("x2 R D R' x2");
  });

  test('every rewriting of every sequence, brackets among them', () => {
    const seen = new Map<string, number>();
    const text = fc
      .tuple(some, some, fc.constantFrom('($) # ', '[$, #]', '[$: #]', "($)2 #'", '($ #)', '$ #'))
      .map(([a, b, shape]) =>
        shape
          .replace('$', written(a))
          .replace("#'", `(${written(b)})'`)
          .replace('#', written(b)),
      );
    fc.assert(
      fc.property(text, (sequence) => {
        const { actions } = offered(whole(sequence));
        for (const { kind, title, edits } of actions) {
          if (kind !== 'rewrite') continue;
          const [name] = title.split(/ a | it /);
          seen.set(name, (seen.get(name) ?? 0) + 1);
          const other = applied(sequence, edits);
          expect(sameState(stateOf(other), stateOf(sequence)), `${sequence} → ${other}`).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
    expect(Math.min(...seen.values())).toBeGreaterThan(0);
    expect(seen.size).toBeGreaterThanOrEqual(3);
  });

  test('slices as faces and rotations, also in tight text', () => {
    expect(after('|M2 U|', 'Write slices')).toBe('x2 R2 L2 U');
    expect(after("U|M'|U", 'Write slices')).toBe("U x R' L U");
    expect(after("[|M', U|2]", 'Write slices')).toMatch(/^\[x /);
  });

  test('brackets written out', () => {
    expect(after("|[R U R', D]", 'Write out')).toBe("R U R' D R U' R' D'");
    expect(after("F [R|, U] F'", 'Write out')).toBe("F R U R' U' F'");
    expect(after("|[F: R U]'", 'Write out')).toBe("F U' R' F'");
    expect(after('(R| U)3', 'Write out')).toBe('R U R U R U');
  });
});

describe('commutators and conjugates', () => {
  const form = (text: string): string | undefined => {
    const items = readSequence(text).items;
    const found = findForm(items.flatMap((node) => (node.kind === 'turn' ? [node.turn] : [])));
    return found && `${printSequence([found.node])}${found.disguised ? ' in disguise' : ''}`;
  };

  test('as they stand', () => {
    expect(form("R U R' U'")).toBe('[R, U]');
    expect(form("R U R' D R U' R' D'")).toBe("[R U R', D]");
    expect(form("F R U R' U' F'")).toBe('[F: [R, U]]');
    expect(form("F R F'")).toBe('[F: R]');
  });

  test('in disguise: merged ends, begun elsewhere', () => {
    // R R D R' U2 …, its first two turns merged.
    expect(form("R2 D R' U2 R D' R' U2 R'")).toBe("[R2: [D, R' U2 R]] in disguise");
    // A turn of three corners right: the conjugate of a commutator, as is well known.
    expect(form("R U R' U R U2 R'")).toMatch(/\[.*\[.*,.*\].*\] in disguise$/);
  });

  test('nothing is made up', () => {
    expect(form('R U F')).toBeUndefined();
    expect(form("R U2 F' L")).toBeUndefined();
  });

  test('whatever is a commutator is found, and means the same', () => {
    fc.assert(
      fc.property(some, some, some, (a, b, c) => {
        const list = [...c, ...a, ...b, ...invertTurns(a), ...invertTurns(b), ...invertTurns(c)];
        const found = findForm(list);
        if (list.length > 28) return;
        expect(found).toBeDefined();
        if (found)
          expect(sameState(stateOf(printSequence([found.node])), applyTurns(SOLVED, list))).toBe(
            true,
          );
      }),
    );
  });
});

describe('extracting to a named sequence', () => {
  const SOLVE = "scramble: R U' R'\nbase: yellow\ncross:\n  U U'\ncorners:\n  |R U R'| // in\n";

  test('the turns move below, and a name stands for them', () => {
    expect(after(SOLVE, 'Extract')).toBe(
      "scramble: R U' R'\nbase: yellow\ncross:\n  U U'\ncorners:\n  @new-sequence // in\n\nsequence: new sequence\n  R U R'\n",
    );
  });

  test('the solve comes to the same', () => {
    const { text } = withCursor(SOLVE);
    const [before] = analyse(text).blocks;
    const [now] = analyse(after(SOLVE, 'Extract')).blocks;
    expect(Array.from(now.course.codes)).toEqual(Array.from(before.course.codes));
    expect(now.timeline.outcomes).toEqual(before.timeline.outcomes);
  });

  test('a name that is taken gets a number; scrambles and mere names are left alone', () => {
    expect(after('sequence: new sequence\n|R U|', 'Extract')).toContain('@new-sequence-2');
    const { actions } = offered('scramble: |R U|\nR');
    expect(actions.some(({ kind }) => kind === 'extract')).toBe(false);
    expect(
      offered('sequence: a\n R\nsolve:\n|@a|').actions.some(({ kind }) => kind === 'extract'),
    ).toBe(false);
  });
});

describe('several lines', () => {
  const LINES = "sequence: a\n  |R U // one\n  // between\n  F' M // two|\n";

  test('inverted from the last to the first, each with its comment', () => {
    expect(after(LINES, 'Invert')).toBe(
      "sequence: a\n  M' F // two\n  // between\n  U' R' // one\n",
    );
  });

  test('mirrored, held otherwise, without slices', () => {
    expect(after(LINES, 'Mirror left')).toBe(
      "sequence: a\n  L' U' // one\n  // between\n  F M // two\n",
    );
    expect(after(LINES, 'Write slices')).toContain("F' x' R L'");
    const held = after(LINES, 'Write it for the cube after y,');
    const effect = (text: string): string => JSON.stringify(analyse(text).blocks[0].sequence);
    expect(held).toContain('y F U // one');
    expect(effect(held)).toBe(effect(withCursor(LINES).text));
  });

  test('extracted with the comments within', () => {
    expect(after(LINES, 'Extract')).toBe(
      "sequence: a\n  @new-sequence // two\n\nsequence: new sequence\n  R U // one\n  F' M\n",
    );
  });

  test('a heading among them is no line of turns', () => {
    expect(offered('cross:\n |R\ncorners:\n U|').actions).toEqual([]);
  });
});

test('where something would be lost, nothing is offered', () => {
  expect(offered('R U (8) |R U (8) R|').actions).toEqual([]);
  expect(offered('|R Q7 U|').actions).toEqual([]);
  expect(offered('|title: x|').actions).toEqual([]);
  const gap = offered('|R … U|').actions.map(({ title }) => title);
  expect(gap.some((title) => title.startsWith('Invert'))).toBe(false);
});
