/** Bare turns get their stages and notes; every one of them is computed, and checked by the analysis. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/document/analyse.ts';
import { noteEdits, numberStages, proposeStages } from '../../../engine/document/features/index.ts';
import { claimLabels } from '../../../engine/goals/stage-names.ts';
import { applied } from '../analyse-support.ts';
import { writtenSolve } from '../analyse-texts.ts';

const sample = (name: string): string =>
  readFileSync(new URL(`../../../media/samples/${name}.moves`, import.meta.url), 'utf8');

/** Headings, methods, labels and comments taken out. */
function bare(text: string): string {
  return text
    .split('\n')
    .filter((line) => !/^(?:\d\. )?[a-z ]+:\s*$|^method|^base|^note/.test(line))
    .map((line) => line.replace(/\s*\/\/.*/, ''))
    .join('\n');
}

function proposed(text: string, notes = false): string {
  const analysis = analyse(text);
  const proposal = proposeStages(analysis, analysis.blocks[0], { notes });
  if (proposal === undefined) throw new Error('no proposal');
  return applied(text, proposal.edits);
}

const stages = (text: string): string[] =>
  analyse(text).blocks[0].timeline.stages.map(({ goal, first, end }) =>
    [analyse(text).blocks[0].timeline.goals[goal].name, first, end].join(' '),
  );

describe('stages for bare turns', () => {
  test('the headings that its author wrote are found again', () => {
    for (const name of ['first-solve', 'tuesday-table'])
      expect(stages(proposed(bare(sample(name))))).toEqual(stages(sample(name)));
  });

  test('a solve by pairs is told from one by layers', () => {
    const text = proposed(bare(sample('pairs')));
    expect(analyse(text).blocks[0].method).toBe('CFOP');
    expect(text).toContain('\n4th pair:\n');
    expect(text).toContain('\nOLL:\n');
  });

  test('turns all on one line are cut between turns, never within a bracket', () => {
    const text = bare(sample('first-solve'));
    const lines = text.split('\n').filter((line) => /^\s*[RULDFBxyz]/.test(line));
    const scramble = text.split('\n').find((line) => line.startsWith('scramble')) ?? '';
    const one = `${scramble}\n${lines.map((line) => line.trim()).join(' ')}`;
    expect(stages(proposed(one))).toEqual(stages(sample('first-solve')));
    const bracketed = one.replace("L' U L U F U' F' y U'", "(L' U L U F U' F') y U'");
    expect(stages(proposed(bracketed))).toEqual(stages(sample('first-solve')));
  });

  test('with notes that say which piece goes where, and which case it was', () => {
    const text = proposed(bare(sample('first-solve')), true);
    expect(text).toContain('L  // white-orange edge home');
    expect(text).toContain(
      "y R U' R'  // white-blue-red corner home; white-red lent and brought back",
    );
    expect(text).toContain('// from an angle');
    expect(text).toContain('// permutation case U');
    expect(stages(text)).toEqual(stages(sample('first-solve')));
  });

  test('what reaches nothing gets no headings, and neither does what has some', () => {
    for (const text of ['scramble: R U F\nR U\nF D\nL', sample('first-solve'), 'sequence: a\n R']) {
      const analysis = analyse(text);
      expect(proposeStages(analysis, analysis.blocks[0], { notes: false })).toBeUndefined();
    }
  });

  test('whatever is proposed keeps the turns, and its goals are reached', () => {
    let offered = 0;
    fc.assert(
      fc.property(writtenSolve, ({ text }) => {
        const plain = bare(text);
        const analysis = analyse(plain);
        const [block] = analysis.blocks;
        const proposal = proposeStages(analysis, block, { notes: true });
        if (proposal === undefined) return;
        offered++;
        const [after] = analyse(applied(plain, proposal.edits)).blocks;
        expect(Array.from(after.course.codes)).toEqual(Array.from(block.course.codes));
        expect(after.base).toBe(proposal.base);
        const outcomes = after.timeline.outcomes.filter(({ reached }) => reached);
        expect(outcomes.length).toBeGreaterThanOrEqual(
          proposal.stages.filter(({ reached }) => reached).length,
        );
      }),
      { numRuns: 60 },
    );
    expect(offered).toBeGreaterThan(3);
  });
});

describe('notes', () => {
  test('stand only where no comment is, and are no claims', () => {
    const text =
      "scramble: R U' R'\nbase: yellow\ncross:\n  U U'\ncorners:\n  R U R'\nmiddle:\n  U // up";
    const edits = noteEdits(analyse(text), analyse(text).blocks[0]);
    expect(applied(text, edits).split('\n')[5]).toBe(
      "  R U R'  // yellow-green-red corner home; yellow-red lent and brought back",
    );
    expect(applied(text, edits)).toContain('U // up');
    for (const { newText } of edits)
      expect(claimLabels(newText.replace(/^\s*\/\/ /, ''))).toBeUndefined();
  });
});

describe('numbers before headings', () => {
  const numbered = (text: string): string | undefined => {
    const analysis = analyse(text);
    const edits = numberStages(analysis, analysis.blocks[0]);
    return edits && applied(text, edits);
  };

  test('the stages stay what they were', () => {
    const text =
      "method: CFOP\nscramble: R\ncross:\n R'\npair (3):\n U\npair:\n D\n2nd pair, 3 s: R";
    const after = numbered(text);
    expect(
      after
        ?.split('\n')
        .filter((line) => line.includes(':'))
        .slice(2),
    ).toEqual(['1. cross:', '2. 1st pair (3):', '3. 2nd pair:', '4. 2nd pair, 3 s: R']);
    expect(after && stages(after)).toEqual(stages(text));
    expect(after && numbered(after)).toBeUndefined();
  });
});
