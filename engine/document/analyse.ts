/**
 * From a text to its analysis: read once, cut into blocks, each executed and judged.
 *
 * A block whose text and environment did not change is taken over from the analysis before, so that
 * typing in a long file costs what the block at hand costs.
 *
 * ```ts
 * const analysis = analyse(text);
 * analysis.blocks[0].timeline.breaks;
 * const next = analyse(changedText, {}, analysis);
 * ```
 */
import type { Position } from '../cube/place.ts';
import type { Analysis, AnalysisOptions, Block } from './analysis.ts';
import { DEFAULT_SEVERITY, type Finding, type Fix, type Severity } from './finding.ts';
import { readImports } from './imports.ts';
import { judgeBlock } from './judge-block.ts';
import type { JudgedBlock } from './judged.ts';
import { makeNames, namedSequences, nameFindings, namesIn } from './names.ts';
import { placeBlock, shift } from './place-block.ts';
import type { RawFinding } from './raw-finding.ts';
import { cutBlocks, readDocument, type BlockTree, type DocumentTree } from './read/index.ts';
import { sayFinding, sayRelated } from './sentences.ts';
import { readSettings } from './settings.ts';

export { usedFiles } from './imports.ts';

/** Turns that a whole text may execute before blocks are done by powers. */
const TEXT_LIMIT = 400_000;

/** In a text of more blocks no changes are tried. */
const CROWD = 1_000;

/** Findings that are said; a text with more is told how many. */
export const MOST_FINDINGS = 300;

/** What an analysis hands on to the next one; kept apart from its public face. */
interface Kept {
  readonly environment: string;
  readonly names: string;
  readonly blocks: ReadonlyMap<string, KeptBlock>;
}

interface KeptBlock {
  readonly result: JudgedBlock;
  readonly usesNames: boolean;
  /** Turns of the budget when it came to this block, how many it used, and whether that was too few. */
  readonly left: number;
  readonly used: number;
  readonly bound: boolean;
}

const KEPT = new WeakMap<Analysis, Kept>();

export function analyse(
  text: string,
  options: AnalysisOptions = {},
  previous?: Analysis,
): Analysis {
  const imports = readImports(text, options);
  const tree = readDocument(text, imports.stageNames);
  const cut = cutBlocks(tree);
  const { header, blocks } = cut;
  const fileWide = readSettings(tree, header, imports.settings, Infinity, 0);
  const names = makeNames(namedSequences(tree, blocks, false), imports.sequences);
  const trying = blocks.length > CROWD ? 'crowd' : 'try';
  const environment = [
    trying,
    String(options.holding),
    imports.text,
    ...header.map((line) => tree.lines[line].text),
  ].join('\n');

  const before = previous && KEPT.get(previous);
  const isSame = before?.environment === environment;
  const sameNames = before?.names === names.text;
  const budget = { left: TEXT_LIMIT, bound: false };
  const kept = new Map<string, KeptBlock>();
  const done = blocks.map((block) => {
    const key = blockKey(tree, block);
    const found = isSame ? before.blocks.get(key) : undefined;
    const old = found && fitsBudget(found, budget.left) ? found : undefined;
    const usesNames = found?.usesNames ?? namesUsed(tree, block);
    const { left } = budget;
    let entry: KeptBlock;
    if (old !== undefined && (sameNames || !usesNames)) {
      entry = { ...old, left };
      budget.left -= old.used;
    } else {
      budget.bound = false;
      const result = judgeBlock({
        tree,
        block,
        inherited: fileWide.settings,
        names,
        budget,
        trying,
      });
      entry = { result, usesNames, left, used: left - budget.left, bound: budget.bound };
    }
    kept.set(key, entry);
    return { result: entry.result, line: block.first };
  });

  const firstBlock = blocks.length > 0 ? blocks[0].first : Infinity;
  const raw = [
    ...imports.findings.map((finding) => ({ finding, line: 0 })),
    ...fileWide.findings
      .filter(({ range }) => range.start.line < firstBlock)
      .map((finding) => ({ finding, line: 0 })),
    ...nameFindings(tree, names).map((finding) => ({ finding, line: 0 })),
    ...done.flatMap(({ result, line }) =>
      allFindings(result).map((finding) => ({ finding, line })),
    ),
  ];
  const { findings, more } = sayFindings(raw, options);
  const placed = done.map(({ result, line }) => placeBlock(result, line));
  const analysis: Analysis = {
    lines: tree.lines.map((line) => line.text),
    tree,
    cut,
    names,
    blocks: placed,
    findings,
    more,
    blockAt: (position) => blockAt(placed, position),
  };
  KEPT.set(analysis, { environment, names: names.text, blocks: kept });
  return analysis;
}

/** Whether judging the block anew, with so many turns left, would come to the same. */
function fitsBudget({ left, used, bound }: KeptBlock, now: number): boolean {
  return left === now || (!bound && used <= now);
}

interface PlacedFinding {
  readonly finding: RawFinding;
  /** First line of the block that it counts from. */
  readonly line: number;
}

/** Puts findings in order and says as many as are shown. */
function sayFindings(
  raw: readonly PlacedFinding[],
  options: AnalysisOptions,
): Pick<Analysis, 'findings' | 'more'> {
  const ordered = raw.toSorted(
    (a, b) =>
      a.line + a.finding.range.start.line - b.line - b.finding.range.start.line ||
      a.finding.range.start.character - b.finding.range.start.character ||
      compare(a.finding.range.end, b.finding.range.end),
  );
  const findings: Finding[] = [];
  const more: Record<Severity, number> = { error: 0, warning: 0, information: 0, off: 0 };
  const room = { shown: MOST_FINDINGS, off: MOST_FINDINGS };
  for (const { finding, line } of ordered) {
    const severity = severityOf(finding, options);
    const sort = severity === 'off' ? 'off' : 'shown';
    if (room[sort] > 0) findings.push(placeFinding(finding, line, severity));
    else more[severity]++;
    room[sort]--;
  }
  return { findings, more };
}

function severityOf({ args, severity }: RawFinding, { severities }: AnalysisOptions): Severity {
  return severities?.[args.code] ?? severity ?? DEFAULT_SEVERITY[args.code];
}

function blockKey(tree: DocumentTree, block: BlockTree): string {
  const texts = [`${block.kind} ${String(block.heading === undefined)}`];
  for (let line = block.first; line < block.end; line++) texts.push(tree.lines[line].text);
  return texts.join('\n');
}

function namesUsed(tree: DocumentTree, block: BlockTree): boolean {
  for (let line = block.first; line < block.end; line++) {
    const { content } = tree.lines[line];
    const body = content.kind === 'turns' ? content : 'body' in content ? content.body : undefined;
    if (body?.kind === 'turns' && namesIn(body.turns.items).length > 0) return true;
  }
  return false;
}

function allFindings(block: JudgedBlock): RawFinding[] {
  return [...block.findings, ...block.asides.flatMap(allFindings)];
}

export function compare(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}

function placeFinding(raw: RawFinding, firstLine: number, severity: Severity): Finding {
  const { args } = raw;
  const fixes: Fix[] = (raw.fixes ?? []).map((fix) => ({
    title: fix.title,
    edits: fix.edits.map((edit) => ({
      range: shift(edit.range, firstLine),
      newText: edit.newText,
    })),
  }));
  return {
    code: args.code,
    severity,
    message: sayFinding(args, firstLine),
    range: shift(raw.range, firstLine),
    ...('goal' in args ? { goal: args.goal } : {}),
    ...('kind' in args ? { kind: args.kind } : {}),
    related: (raw.related ?? []).map((place) => ({
      range: shift(place.range, firstLine),
      message: sayRelated(place.note, firstLine),
    })),
    fixes,
  };
}

function blockAt(blocks: readonly Block[], position: Position): Block | undefined {
  const holds = (block: Block): boolean =>
    position.line >= block.range.start.line && position.line <= block.range.end.line;
  const found = blocks.find(holds);
  return found && (found.asides.find(holds) ?? found);
}
