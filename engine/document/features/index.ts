/**
 * Language features of `.moves` texts behind one face: each takes an analysis (or texts by path,
 * where names reach across files) and gives plain data with our own ranges and edits. An editor's
 * adapter converts these and nothing else.
 */
export { hasBareTurns, proposeStages, type Proposal } from './bare-turns.ts';
export { completionsAt, type Completion, type CompletionOptions } from './completion.ts';
export { foldingRanges, type Fold } from './folding.ts';
export { format } from './format.ts';
export { inlayHints, type HintOptions, type InlayHint } from './hints.ts';
export { hoverAt, type Hover } from './hover.ts';
export { lenses, type Lens } from './lenses.ts';
export { liveClaims, type LiveClaim } from './live.ts';
export { noteEdits } from './notes.ts';
export { numberStages } from './number-stages.ts';
export { resolvePath, type Files } from './occurrences.ts';
export { type Refactoring } from './refactor.ts';
export { refactorings } from './refactorings.ts';
export {
  definitionAt,
  referencesAt,
  rename,
  renameRange,
  type FilePlace,
  type Rename,
} from './rename.ts';
export { selectionRanges } from './selection.ts';
export { documentSymbols, type OutlineSymbol } from './symbols.ts';
export {
  semanticTokens,
  TOKEN_MODIFIERS,
  TOKEN_TYPES,
  type Token,
  type TokenModifier,
  type TokenType,
} from './tokens.ts';
