/**
 * Refactorings of the turns under the selection, and what is worked out only when it is chosen: stages
 * for bare turns, notes, numbers before headings.
 */
import * as vscode from 'vscode';
import type { Analysis, AnalysisOptions, Block } from '../../../engine/document/analysis.ts';
import type { TextEdit } from '../../../engine/document/finding.ts';
import {
  hasBareTurns,
  noteEdits,
  numberStages,
  proposeStages,
  refactorings,
  type Refactoring,
} from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';
import { toEdits } from '../convert.ts';

const WORK_OUT = 'turnlore.language.workOut';
const NAME_NEW = 'turnlore.language.nameNew';

const KINDS: Readonly<Record<Refactoring['kind'], vscode.CodeActionKind>> = {
  rewrite: vscode.CodeActionKind.RefactorRewrite,
  change: vscode.CodeActionKind.Refactor.append('change'),
  extract: vscode.CodeActionKind.RefactorExtract,
};

interface Work {
  readonly title: string;
  readonly none: string;
  fits(block: Block): boolean;
  edits(
    analysis: Analysis,
    block: Block,
    options: AnalysisOptions,
  ): readonly TextEdit[] | undefined;
}

const NO_STAGES = 'No line of this solve reaches the goals of a method one after the other.';

const WORKS: Readonly<Record<string, Work>> = {
  stages: {
    title: 'Propose stages for these turns',
    none: NO_STAGES,
    fits: hasBareTurns,
    edits: (analysis, block, options) =>
      proposeStages(analysis, block, { notes: false, analysis: options })?.edits,
  },
  stagesAndNotes: {
    title: 'Propose stages and notes for these turns',
    none: NO_STAGES,
    fits: hasBareTurns,
    edits: (analysis, block, options) =>
      proposeStages(analysis, block, { notes: true, analysis: options })?.edits,
  },
  notes: {
    title: 'Note what each line of turns does',
    none: 'Every line has a comment, or nothing is known of it.',
    fits: ({ kind, stages }) => kind === 'solve' && stages.length > 0,
    edits: noteEdits,
  },
  numbers: {
    title: 'Number the stages',
    none: 'The stages are numbered, or no heading can bear a number.',
    fits: ({ kind, stages }) => kind === 'solve' && stages.some(({ how }) => how === 'heading'),
    edits: numberStages,
  },
};

export const ACTION_KINDS = [vscode.CodeActionKind.Refactor];

export function actions(analyses: Analyses): vscode.CodeActionProvider {
  return {
    provideCodeActions(document, range, { only, triggerKind }) {
      // By itself the light bulb is for findings; refactorings are offered when asked for or for a selection.
      if (triggerKind === vscode.CodeActionTriggerKind.Automatic && range.isEmpty) return [];
      const analysis = analyses.of(document);
      const found = refactorings(analysis, range).map((one) => toAction(document, one));
      const block = analysis.blockAt(range.start);
      if (block !== undefined)
        for (const [name, work] of Object.entries(WORKS))
          if (work.fits(block)) found.push(laterAction(document, name, work.title, block.line));
      return found.filter(({ kind }) => only === undefined || (kind && only.contains(kind)));
    },
  };
}

function toAction(document: vscode.TextDocument, one: Refactoring): vscode.CodeAction {
  const action = new vscode.CodeAction(one.title, KINDS[one.kind]);
  action.edit = new vscode.WorkspaceEdit();
  action.edit.set(document.uri, toEdits(one.edits));
  if (one.named !== undefined)
    action.command = {
      title: 'Name it',
      command: NAME_NEW,
      arguments: [document.uri, one.named],
    };
  return action;
}

function laterAction(
  document: vscode.TextDocument,
  work: string,
  title: string,
  line: number,
): vscode.CodeAction {
  const action = new vscode.CodeAction(title, vscode.CodeActionKind.RefactorRewrite);
  action.command = {
    title,
    command: WORK_OUT,
    arguments: [document.uri, document.version, work, line],
  };
  return action;
}

export function registerActionCommands(analyses: Analyses): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.commands.registerCommand(
      WORK_OUT,
      (uri: unknown, version: unknown, name: unknown, line: unknown) =>
        workOut(analyses, uri, version, name, line),
    ),
    vscode.commands.registerCommand(NAME_NEW, nameNew),
  );
}

async function workOut(
  analyses: Analyses,
  uri: unknown,
  version: unknown,
  name: unknown,
  line: unknown,
): Promise<void> {
  const document = vscode.workspace.textDocuments.find(
    (one) => uri instanceof vscode.Uri && one.uri.toString() === uri.toString(),
  );
  const work = typeof name === 'string' ? WORKS[name] : undefined;
  if (document === undefined || work === undefined || document.version !== version) return;
  const analysis = analyses.of(document);
  const block = analysis.blocks.find((one) => one.line === line);
  const edits = block && work.edits(analysis, block, analyses.options(document));
  if (edits === undefined || edits.length === 0) {
    void vscode.window.showInformationMessage(work.none);
    return;
  }
  const edit = new vscode.WorkspaceEdit();
  edit.set(uri as vscode.Uri, toEdits(edits));
  await vscode.workspace.applyEdit(edit);
}

/** Opens the box for a better name where the new one is called. */
async function nameNew(uri: unknown, name: unknown): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  if (!(uri instanceof vscode.Uri) || typeof name !== 'string') return;
  if (editor?.document.uri.toString() !== uri.toString()) return;
  const at = editor.document.getText().indexOf(`@${name}`);
  if (at < 0) return;
  const position = editor.document.positionAt(at + 1);
  editor.selection = new vscode.Selection(position, position);
  await vscode.commands.executeCommand('editor.action.rename', [uri, position]);
}
