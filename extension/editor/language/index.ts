/** The language features of `.moves` texts, each in its own file, registered in one place. */
import * as vscode from 'vscode';
import { LANGUAGE, type Analyses } from '../analyses.ts';
import { ACTION_KINDS, actions, registerActionCommands } from './actions.ts';
import { completion, COMPLETION_TRIGGERS } from './completion.ts';
import { folding } from './folding.ts';
import { formatting } from './formatting.ts';
import { Hints } from './hints.ts';
import { hovers } from './hover.ts';
import { lenses, registerAskAt } from './lenses.ts';
import { definition, references, renaming } from './names.ts';
import { outline } from './outline.ts';
import { selection } from './selection.ts';
import { TOKEN_LEGEND, tokens } from './tokens.ts';

export function registerLanguage(context: vscode.ExtensionContext, analyses: Analyses): void {
  const { languages } = vscode;
  const hints = new Hints(analyses);
  const format = formatting(analyses);
  context.subscriptions.push(
    hints,
    languages.registerDocumentSymbolProvider(LANGUAGE, outline(analyses), { label: 'Turnlore' }),
    languages.registerFoldingRangeProvider(LANGUAGE, folding(analyses)),
    languages.registerSelectionRangeProvider(LANGUAGE, selection(analyses)),
    languages.registerDocumentFormattingEditProvider(LANGUAGE, format),
    languages.registerDocumentRangeFormattingEditProvider(LANGUAGE, format),
    languages.registerCompletionItemProvider(
      LANGUAGE,
      completion(analyses),
      ...COMPLETION_TRIGGERS,
    ),
    languages.registerDefinitionProvider(LANGUAGE, definition()),
    languages.registerReferenceProvider(LANGUAGE, references()),
    languages.registerRenameProvider(LANGUAGE, renaming()),
    languages.registerDocumentSemanticTokensProvider(LANGUAGE, tokens(analyses), TOKEN_LEGEND),
    languages.registerCodeLensProvider(LANGUAGE, lenses(analyses)),
    languages.registerInlayHintsProvider(LANGUAGE, hints),
    languages.registerHoverProvider(LANGUAGE, hovers(analyses)),
    languages.registerCodeActionsProvider(LANGUAGE, actions(analyses), {
      providedCodeActionKinds: ACTION_KINDS,
    }),
    registerAskAt(),
    registerActionCommands(analyses),
  );
}
