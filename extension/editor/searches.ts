/**
 * The searches as commands: each runs in the worker under a notice that shows progress and can be
 * called off, and its answer is dropped if the text has changed meanwhile.
 */
import * as vscode from 'vscode';
import { goalHolds } from '../../engine/goals/judge.ts';
import { findMethod, goalsFor, LAYERS } from '../../engine/goals/methods.ts';
import type { TextEdit } from '../../engine/document/finding.ts';
import type { SearchReply, SearchTask } from '../worker/messages.ts';
import { LANGUAGE, type Analyses } from './analyses.ts';
import { toEdits } from './convert.ts';
import type { Focus, Focused } from './focus.ts';
import { insertTurns } from './insert.ts';
import type { WorkerClient } from './worker.ts';

interface Parts {
  readonly analyses: Analyses;
  readonly focus: Focus;
  readonly worker: WorkerClient;
}

/** Arguments that a lens gives: the place it stands at. */
type Command = (parts: Parts, at?: unknown) => Promise<void>;

const COMMANDS: Readonly<Record<string, Command>> = {
  solveShort: (parts) => solve(parts, 'short', undefined),
  solvePerson: (parts) => solve(parts, 'person', undefined),
  reachGoal,
  findSlip: (parts, at) => pickFix(parts, 'slips', 'Looking for the slip', at),
  fillGap: (parts, at) => pickFix(parts, 'fills', 'Looking for turns that fit', at),
  shorterWay,
  practise,
};

export function registerSearches(parts: Parts): vscode.Disposable {
  return vscode.Disposable.from(
    ...Object.entries(COMMANDS).map(([name, run]) =>
      vscode.commands.registerCommand(`turnlore.${name}`, (at?: unknown) => run(parts, at)),
    ),
  );
}

/** The place of the cursor, or a sentence that there is none. */
function here({ focus }: Parts): Focused | undefined {
  const now = focus.current;
  if (now === undefined) say('Open a .moves file first.');
  return now;
}

function say(sentence: string): void {
  void vscode.window.showInformationMessage(sentence);
}

/** Runs a search on the document as it is now; undefined if it was called off, failed or became out of date. */
async function search(
  { analyses, worker }: Parts,
  document: vscode.TextDocument | undefined,
  task: SearchTask,
  title: string,
): Promise<SearchReply | undefined> {
  const version = document?.version;
  const text = document?.getText() ?? '';
  const options = document === undefined ? {} : analyses.options(document);
  const reply = await vscode.window.withProgress(
    { location: vscode.ProgressLocation.Notification, title: `${title} …`, cancellable: true },
    async (progress, token) => {
      try {
        return await worker.search({ kind: 'search', text, options, task }, token, (told) => {
          const best = told.best === undefined ? '' : `; ${told.best} turns so far`;
          progress.report({ message: `${told.nodes.toLocaleString('en')} positions${best}` });
        });
      } catch (error) {
        if (error instanceof vscode.CancellationError) return undefined;
        void vscode.window.showErrorMessage('The search has failed; the log tells more.');
        return undefined;
      }
    },
  );
  if (reply?.kind === 'nothing') {
    say(reply.reason);
    return undefined;
  }
  if (document !== undefined && document.version !== version) {
    say('The text has changed meanwhile, so the answer is not shown.');
    return undefined;
  }
  return reply;
}

async function solve(
  parts: Parts,
  way: 'person' | 'short',
  goal: string | undefined,
): Promise<void> {
  const now = here(parts);
  if (now === undefined) return;
  const { document, position } = now;
  const { line, character } = position;
  const found = await search(
    parts,
    document,
    { kind: 'way', way, position: { line, character }, ...(goal === undefined ? {} : { goal }) },
    goal === undefined ? 'Solving from here' : `Looking for the way to ${goal}`,
  );
  if (found?.kind !== 'way') return;
  const { turns, title, text } = found;
  const insert = {
    label: '$(insert) Write the turns here',
    detail: turns,
    run: () => {
      const asked = { uri: document.uri.toString(), version: document.version, line, character };
      return insertTurns(turns, asked, parts.focus);
    },
  };
  const open = (what: string) => ({
    label: '$(open-preview) Open as a text of its own, explained',
    detail: what.split('\n').slice(-3).join(' ').trim(),
    run: () => show(what),
  });
  const copy = {
    label: '$(copy) Copy the turns',
    detail: turns,
    run: () => vscode.env.clipboard.writeText(turns),
  };
  const items = text === undefined ? [insert, copy] : [open(text), insert, copy];
  const chosen = await vscode.window.showQuickPick(items, { title, placeHolder: turns });
  await chosen?.run();
}

async function show(text: string): Promise<void> {
  const document = await vscode.workspace.openTextDocument({ language: LANGUAGE, content: text });
  await vscode.window.showTextDocument(document, vscode.ViewColumn.Beside);
}

async function reachGoal(parts: Parts): Promise<void> {
  const now = here(parts);
  const state = now?.block?.course.stateAt(now.place);
  if (now?.block === undefined || state === undefined) {
    if (now !== undefined) say('The cube at this place is not known.');
    return;
  }
  const { goals } = now.block.timeline;
  const open = goals.filter((goal) => !goalHolds(goal, state)).map(({ name }) => name);
  if (open.length === 0) {
    say('Every goal holds here.');
    return;
  }
  const goal = await vscode.window.showQuickPick(open, {
    title: 'Which goal?',
    placeHolder: 'Goals that hold already are kept',
  });
  if (goal !== undefined) await solve(parts, 'short', goal);
}

/** Where a lens or the cursor stands. */
function placeOf(now: Focused, at: unknown): { line: number; character: number } {
  if (typeof at === 'object' && at !== null && 'line' in at && typeof at.line === 'number') {
    const character = 'character' in at && typeof at.character === 'number' ? at.character : 0;
    return { line: at.line, character };
  }
  return { line: now.position.line, character: now.position.character };
}

async function pickFix(
  parts: Parts,
  kind: 'slips' | 'fills',
  title: string,
  at: unknown,
): Promise<void> {
  const now = here(parts);
  if (now === undefined) return;
  const task = { kind, position: placeOf(now, at) };
  const found = await search(parts, now.document, task, title);
  if (found?.kind !== 'fixes') return;
  const items = found.fixes.map((fix) => ({ label: fix.title, edits: fix.edits }));
  const version = now.document.version;
  const chosen = await vscode.window.showQuickPick(items, {
    title: kind === 'slips' ? 'What was meant?' : 'Turns that fit',
    placeHolder: 'The text is changed accordingly; it can be undone',
  });
  if (chosen) await apply(now.document, version, chosen.edits);
}

async function shorterWay(parts: Parts): Promise<void> {
  const now = here(parts);
  if (now === undefined) return;
  const editor = vscode.window.visibleTextEditors.find((one) => one.document === now.document);
  const selection = editor?.selection;
  // Without a selection the line is meant.
  const range =
    selection === undefined || selection.isEmpty
      ? now.document.lineAt(now.position.line).range
      : selection;
  const { start: from, end: to } = range;
  const found = await search(
    parts,
    now.document,
    {
      kind: 'shorter',
      from: { line: from.line, character: from.character },
      to: { line: to.line, character: to.character },
    },
    'Looking for a shorter way',
  );
  if (found?.kind !== 'ways') return;
  const version = now.document.version;
  const items = found.ways.map(({ turns, title, edits }) => ({
    label: turns === '' ? 'no turn at all' : turns,
    description: edits === undefined ? `${title}; copies the turns` : title,
    turns,
    edits,
  }));
  const chosen = await vscode.window.showQuickPick(items, {
    title: 'Other turns that do the same',
    placeHolder: `instead of ${found.title}`,
  });
  if (chosen?.edits) await apply(now.document, version, chosen.edits);
  else if (chosen) await vscode.env.clipboard.writeText(chosen.turns);
}

async function apply(
  document: vscode.TextDocument,
  version: number,
  edits: readonly TextEdit[],
): Promise<void> {
  if (document.version !== version) {
    say('The text has changed meanwhile, so nothing is written.');
    return;
  }
  const edit = new vscode.WorkspaceEdit();
  edit.set(document.uri, toEdits(edits));
  await vscode.workspace.applyEdit(edit);
}

async function practise(parts: Parts): Promise<void> {
  const block = parts.focus.current?.block;
  const method = findMethod(block?.method ?? LAYERS.name) ?? LAYERS;
  const base = block?.base ?? 0;
  const goals = goalsFor(method, base).map(({ name }) => name);
  const goal = await vscode.window.showQuickPick(goals, {
    title: `Practise which goal of ${method.name}?`,
    placeHolder: 'All goals before it hold; the rest is random',
  });
  if (goal === undefined) return;
  const count = await vscode.window.showInputBox({
    title: 'How many scrambles?',
    value: '5',
    validateInput: (text) => (/^[1-9]\d{0,2}$/u.test(text.trim()) ? undefined : 'From 1 to 999.'),
  });
  if (count === undefined) return;
  const task: SearchTask = {
    kind: 'practice',
    goal,
    method: method.name,
    base,
    seed: Math.floor(Math.random() * 2 ** 32),
    count: Number(count),
  };
  const found = await search(parts, undefined, task, 'Drawing states');
  if (found?.kind === 'text') await show(found.text);
}
