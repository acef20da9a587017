/** What the files that a text uses bring in: their goals, methods and named sequences. */
import type { Range } from '../cube/place.ts';
import type { AnalysisOptions } from './analysis.ts';
import { namedSequences, type NamedSequence } from './names.ts';
import type { RawFinding } from './raw-finding.ts';
import { cutBlocks, keyLines, readDocument, readUse, type DocumentTree } from './read/index.ts';
import { DEFAULT_SETTINGS, readSettings, type Settings } from './settings.ts';

export interface Imports {
  readonly settings: Settings;
  readonly stageNames: readonly string[];
  readonly sequences: readonly NamedSequence[];
  readonly findings: readonly RawFinding[];
  readonly text: string;
}

/** The files that a text names with `use:`, as written. */
export function usedFiles(text: string): string[] {
  const tree = readDocument(text);
  return usesIn(tree).map((use) => use.file);
}

function usesIn(tree: DocumentTree): { file: string; range: Range }[] {
  const all = tree.lines.map((_, line) => line);
  return keyLines(tree, all, 'use').flatMap(({ line, content }) => {
    const value = readUse(content.value);
    if (value.kind === 'bad') return [];
    const { start, end } = value.file.span;
    return [
      {
        file: value.file.text,
        range: { start: { line, character: start }, end: { line, character: end } },
      },
    ];
  });
}

export function readImports(text: string, options: AnalysisOptions): Imports {
  let settings: Settings =
    options.holding === undefined
      ? DEFAULT_SETTINGS
      : { ...DEFAULT_SETTINGS, holding: options.holding };
  const sequences: NamedSequence[] = [];
  const findings: RawFinding[] = [];
  const texts: string[] = [];
  // Most texts use no other file: they need not be read twice.
  const uses = /use\s*[:：]/i.test(text) ? usesIn(readDocument(text)) : [];
  for (const { file, range } of uses) {
    const other = options.imports?.[file];
    if (other === undefined) {
      findings.push({ args: { code: 'use-not-found', file }, range });
      continue;
    }
    texts.push(other);
    const tree = readDocument(other);
    const { header, blocks } = cutBlocks(tree);
    const read = readSettings(tree, header, settings, Infinity, 0).settings;
    settings = { ...settings, methods: read.methods, goals: read.goals };
    for (const sequence of namedSequences(tree, blocks, true)) sequences.push(sequence);
  }
  const stageNames = [
    ...settings.goals.map((goal) => goal.name),
    ...settings.methods.flatMap((method) => method.stages.map((stage) => stage.name)),
  ];
  return {
    settings,
    sequences,
    findings,
    text: texts.join('\n'),
    stageNames: uses.length > 0 ? stageNames : [],
  };
}
