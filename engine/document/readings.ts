/**
 * Findings that depend on what another reading of the text would bring: fixes of broken and missed
 * goals are kept only if nothing else gets worse by them, and letters or numbers that may mean
 * something else are told so where only that satisfies the claims.
 */
import { checkWide } from './check-wide.ts';
import type { JudgedBlock } from './judged.ts';
import type { FindingCode } from './finding.ts';
import type { RawFinding, RawFix } from './raw-finding.ts';
import { canTry, faultsOf, findingsOf, type Faults, type Trial } from './trial.ts';

export function withReadings(block: JudgedBlock, trial: Trial): JudgedBlock {
  if (!canTry(block)) return withoutUntried(block);
  const reader = new Reader(block, trial);
  const result = reader.settle(block);
  const wide = checkWide(result.judged, reader.before.all, hasClaims(block), trial);
  return wide.length === 0 ? result : { ...result, findings: [...result.findings, ...wide] };
}

/** Fixes that are guesses until they have been tried; the finding itself is sure. */
const GUESSED: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'goal-broken',
  'goal-not-reached',
  'cross-not-aligned',
  'last-turn-missing',
  'holding-differs',
]);

/** Where changes cannot be tried, only what needs no trying is told. */
export function withoutUntried(block: JudgedBlock): JudgedBlock {
  return {
    ...block,
    findings: block.findings.map((finding) =>
      finding.args.code === 'goal-not-reached' ? withoutChange(finding) : finding,
    ),
    asides: block.asides.map(withoutUntried),
  };
}

function withoutChange(finding: RawFinding): RawFinding {
  const { fixes: _fixes, ...rest } = finding;
  if (rest.args.code !== 'goal-not-reached') return rest;
  return { ...rest, args: { ...rest.args, change: undefined } };
}

class Reader {
  readonly block: JudgedBlock;
  readonly trial: Trial;
  readonly before: Faults;
  /** Fixes that write every `(A) x2` of the block as a repeat. */
  readonly repeats: readonly RawFix[];

  constructor(block: JudgedBlock, trial: Trial) {
    this.block = block;
    this.trial = trial;
    this.before = faultsOf(block);
    this.repeats = findingsOf(block).flatMap(({ args, fixes }) =>
      args.code === 'repeat-or-rotation' ? (fixes ?? []) : [],
    );
  }

  /** The findings of a block and its asides, settled by trying. */
  settle(block: JudgedBlock): JudgedBlock {
    return {
      ...block,
      findings: block.findings.map((finding) => {
        if (finding.args.code === 'repeat-or-rotation') return this.repeat(finding);
        if (!GUESSED.has(finding.args.code) || finding.fixes === undefined) return finding;
        return this.tried(finding, finding.fixes);
      }),
      asides: block.asides.map((aside) => this.settle(aside)),
    };
  }

  tried(finding: RawFinding, fixes: readonly RawFix[]): RawFinding {
    const good = fixes.filter((fix) => this.mends(finding, fix));
    if (good.length > 0) return { ...finding, fixes: good };
    return withoutChange(finding);
  }

  /** Whether with the fix the finding is gone and nothing else is worse. */
  mends(finding: RawFinding, fix: RawFix): boolean {
    const after = this.trial(fix.edits);
    if (after === undefined) return false;
    const moved = linesAdded(fix, finding.range.start.line);
    const key = keyOf(finding, moved);
    if (findingsOf(after).some((other) => keyOf(other, 0) === key)) return false;
    const { errors, what } = faultsOf(after);
    if (errors > this.before.errors) return false;
    // Behind a goal that was lost for good others may come to light; else nothing new may be at
    // fault, nor the same goal elsewhere.
    const { args } = finding;
    if (args.code === 'goal-broken') return true;
    if ('goal' in args && what.has(args.goal)) return false;
    return [...what].every((one) => this.before.what.has(one));
  }

  /** `(A) x2`: whether only the repeat fits what the text claims. */
  repeat(finding: RawFinding): RawFinding {
    const { args, fixes } = finding;
    if (args.code !== 'repeat-or-rotation' || fixes === undefined || !hasClaims(this.block))
      return finding;
    const alone = this.trial(fixes.flatMap((fix) => fix.edits));
    if (alone === undefined) return finding;
    const { all } = faultsOf(alone);
    if (this.before.all === 0 && all > 0) {
      const { fixes: _fixes, ...rest } = finding;
      return rest;
    }
    if (this.before.all === 0) return finding;
    if (all === 0) return { ...finding, args: { ...args, repeatFits: true } };
    if (this.repeats.length < 2) return finding;
    const edits = this.repeats.flatMap((fix) => fix.edits);
    const together = this.trial(edits);
    if (together === undefined || faultsOf(together).all > 0) return finding;
    const title = `Write all ${String(this.repeats.length)} as repeats`;
    return { ...finding, args: { ...args, repeatFits: true }, fixes: [{ title, edits }] };
  }
}

function linesAdded({ edits }: RawFix, line: number): number {
  return edits
    .filter(({ range }) => range.start.line <= line)
    .reduce((sum, { newText }) => sum + newText.split('\n').length - 1, 0);
}

/** What a finding is about and where, as far as a change leaves that alone. */
function keyOf({ args, range }: RawFinding, moved: number): string {
  const goal = 'goal' in args ? args.goal : '';
  const turn = args.code === 'goal-broken' ? args.turn.number : '';
  return [args.code, goal, turn, range.start.line + moved].join('|');
}

/** Whether the text says anything that another reading could make false. */
function hasClaims({ judged, asides }: JudgedBlock): boolean {
  const { stages, script, start } = judged;
  if (start.from === 'scramble' || start.from === 'net') return true;
  if (stages.stages.length > 0 || stages.checks.length > 0 || start.claims.length > 0) return true;
  const keys = new Set(['keeps', 'does', 'order', 'check']);
  return (
    script.events.some((event) => event.kind === 'key' && keys.has(event.content.key)) ||
    asides.some(hasClaims)
  );
}
