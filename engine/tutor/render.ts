/**
 * Sentences, made of facts alone: nothing here sees a cube or a text. Each intent says its facts in
 * an order such that the first sentence answers; what does not fit the length is left away from the end.
 */
import type { Fact } from './facts.ts';
import type { Intent } from './intents.ts';
import { renderJourney, renderOrder, sayStage } from './render-journey.ts';
import { renderCase } from './render-last-layer.ts';
import { renderPossible, renderTerm, renderWrong } from './render-possible.ts';
import { renderEffect, sayCompare, sayRepeat, sayShorter, sayWay } from './render-sequence.ts';
import { all } from './select.ts';
import { renderDone, renderHolding } from './render-goals.ts';
import { renderLoss } from './render-losses.ts';
import { renderNext } from './render-next.ts';
import { renderProposal } from './render-proposal.ts';
import { renderRefusal, renderUnsettled } from './render-refusal.ts';
import { renderWhere } from './render-where.ts';
import { within } from './say.ts';

export const FIRST_HINT_WORDS = 60;
export const ANSWER_WORDS = 150;

/** `level`: of a hint; `share`: how many questions share the length. */
export function render(intent: Intent, facts: readonly Fact[], level: number, share = 1): string {
  const first = intent === 'next-step' && level === 1;
  const words = first ? FIRST_HINT_WORDS : Math.floor(ANSWER_WORDS / share);
  const readings = all(facts, 'reading').map(
    ({ asked, read }) => `I read ${asked.trim()} as ${read}.`,
  );
  return within([...sentences(intent, facts, level), ...readings], words);
}

function sentences(intent: Intent, facts: readonly Fact[], level: number): string[] {
  const unsettled = renderUnsettled(facts);
  if (unsettled.length > 0) return unsettled;
  switch (intent) {
    case 'where-piece':
      return renderWhere(facts);
    case 'is-done':
      return renderDone(facts);
    case 'which-hold':
      return renderHolding(facts);
    case 'why-broke':
      return renderLoss(facts);
    case 'judge-turns':
      return renderProposal(facts);
    case 'next-step':
      return renderNext(facts, level);
    case 'which-case':
      return renderCase(facts);
    case 'where-wrong':
      return renderWrong(facts);
    case 'explain-term':
      return renderTerm(facts);
    case 'is-possible':
      return renderPossible(facts);
    case 'what-does':
      return renderEffect(facts);
    case 'shorter':
      return all(facts, 'shorter').flatMap(sayShorter);
    case 'compare':
      return all(facts, 'compare').flatMap(sayCompare);
    case 'how-often':
      return all(facts, 'repeat').flatMap(sayRepeat);
    case 'journey':
      return renderJourney(facts);
    case 'which-order':
      return renderOrder(facts);
    case 'stage-span':
      return all(facts, 'stage').flatMap(sayStage);
    case 'which-way':
      return all(facts, 'way').map(sayWay);
    case 'not-understood':
      return renderRefusal(facts);
  }
}
