/**
 * What checking a text brought up. A finding is a code with its arguments; the sentences are made of
 * them in one catalogue, so that every reader (editor, terminal, tutor) says the same.
 */
import type { Range } from '../cube/place.ts';

export const SEVERITIES = ['error', 'warning', 'information', 'off'] as const;
export type Severity = (typeof SEVERITIES)[number];

export const FINDING_CODES = [
  'goal-broken',
  'goal-not-reached',
  'cross-not-aligned',
  'not-solved',
  'claim-false',
  'state-impossible',
  'unclosed',
  'unknown-turn',
  'name-unknown',
  'name-twice',
  'name-cycle',
  'use-not-found',
  'bad-value',
  'goal-carried',
  'last-turn-missing',
  'holding-differs',
  'wide-or-face',
  'repeat-or-rotation',
  'turns-cancel',
  'unknown-key',
  'too-long',
  'start-assumed',
  'base-assumed',
  'count-differs',
  'prose',
  'spelling',
  'spoken-notation',
  'goal-passing',
] as const;
export type FindingCode = (typeof FINDING_CODES)[number];

export const DEFAULT_SEVERITY: Readonly<Record<FindingCode, Severity>> = {
  'goal-broken': 'error',
  'goal-not-reached': 'error',
  'cross-not-aligned': 'error',
  'not-solved': 'error',
  'claim-false': 'error',
  'state-impossible': 'error',
  unclosed: 'error',
  'unknown-turn': 'error',
  'name-unknown': 'error',
  'name-twice': 'error',
  'name-cycle': 'error',
  'use-not-found': 'error',
  'bad-value': 'error',
  'goal-carried': 'warning',
  'last-turn-missing': 'warning',
  'holding-differs': 'warning',
  'wide-or-face': 'warning',
  'repeat-or-rotation': 'warning',
  'turns-cancel': 'warning',
  'unknown-key': 'warning',
  'too-long': 'warning',
  'start-assumed': 'information',
  'base-assumed': 'information',
  'count-differs': 'information',
  prose: 'information',
  spelling: 'information',
  'spoken-notation': 'information',
  'goal-passing': 'off',
};

export interface TextEdit {
  readonly range: Range;
  readonly newText: string;
}

/** An edit whose result has been checked before it is offered. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly TextEdit[];
}

export interface RelatedPlace {
  readonly range: Range;
  readonly message: string;
}

/** A finding with ranges in the whole text, ready to be shown. */
export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  readonly message: string;
  readonly range: Range;
  /** The goal it speaks of, by name. */
  readonly goal?: string;
  /** A finer distinction within the code: `offset` or `order` for a cross that is not aligned. */
  readonly kind?: string;
  readonly related: readonly RelatedPlace[];
  readonly fixes: readonly Fix[];
}
