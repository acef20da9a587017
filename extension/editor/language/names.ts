/** Definition, references and rename of names, across the files of the workspace. */
import * as vscode from 'vscode';
import {
  definitionAt,
  referencesAt,
  rename,
  renameRange,
} from '../../../engine/document/features/index.ts';
import { toEdits, toRange } from '../convert.ts';
import { readFiles, uriOf } from './files.ts';

export function definition(): vscode.DefinitionProvider {
  return {
    async provideDefinition(document, position) {
      const found = definitionAt(await readFiles(document), document.uri.path, position);
      return found && new vscode.Location(uriOf(document, found.file), toRange(found.range));
    },
  };
}

export function references(): vscode.ReferenceProvider {
  return {
    async provideReferences(document, position, { includeDeclaration }) {
      const files = await readFiles(document);
      return referencesAt(files, document.uri.path, position, includeDeclaration).map(
        ({ file, range }) => new vscode.Location(uriOf(document, file), toRange(range)),
      );
    },
  };
}

export function renaming(): vscode.RenameProvider {
  return {
    async prepareRename(document, position) {
      const found = renameRange(await readFiles(document), document.uri.path, position);
      if (found === undefined)
        throw new Error('Only names of your own can be renamed: sequences, goals and methods.');
      return { range: toRange(found.range), placeholder: found.name };
    },
    async provideRenameEdits(document, position, newName) {
      const result = rename(await readFiles(document), document.uri.path, position, newName);
      if (result.kind === 'refused') throw new Error(result.reason);
      const edit = new vscode.WorkspaceEdit();
      for (const [file, edits] of Object.entries(result.edits))
        edit.set(uriOf(document, file), toEdits(edits));
      return edit;
    },
  };
}
