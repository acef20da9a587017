/** Questions that work at a place: offered where one was not understood, and as follow-ups. */
import { pieceName, piecesIn, isCorner } from '../cube/piece.ts';
import { goalMissing } from '../goals/judge.ts';
import type { Fact } from './facts.ts';
import type { Intent } from './intents.ts';
import { dueGoal } from './referents.ts';
import { sayGoal, sayPiece } from './say.ts';
import { nameGoal, type Scene } from './scene.ts';
import { all, one } from './select.ts';

export function offersAt(scene: Scene): string[] {
  const due = dueGoal(scene);
  if (due === undefined)
    return ['Which goals hold?', 'Where did it go wrong?', "Is this right: R U R' U'"];
  const goal = nameGoal(scene.block.method, scene.goals[due], scene.base);
  const [missing] = piecesIn(goalMissing(scene.goals[due], scene.state));
  const where =
    missing === undefined
      ? 'Which goals hold?'
      : `Where is the ${pieceName(missing, scene.base)} ${isCorner(missing) ? 'corner' : 'edge'}?`;
  return ['What is next?', where, isDoneQuestion(goal.goal, sayGoal(goal))];
}

function isDoneQuestion(goal: string, title: string): string {
  const askable = /^(?:cross|corners|middle|top cross|top face|\d\w\w pair|.* block)$/.test(goal);
  return askable ? `Is ${title} done?` : 'Which goals hold?';
}

/** For a place without a cube: what works anywhere. */
export const OFFERS_ANYWHERE: readonly string[] = [
  'What is next?',
  'Which goals hold?',
  "Is this right: R U R' U'",
];

/** Each question once. */
export function followUpsOf(intent: Intent, facts: readonly Fact[], level: number): string[] {
  return [...new Set(fitting(intent, facts, level))].slice(0, 3);
}

function fitting(intent: Intent, facts: readonly Fact[], level: number): string[] {
  switch (intent) {
    case 'next-step': {
      if (one(facts, 'next') === undefined) return ['Which goals hold?', 'Where did it go wrong?'];
      const [piece] = all(facts, 'piece');
      const where = piece ? [`Where is ${sayPiece(piece.piece)}?`] : ['Which goals hold?'];
      if (level < 3) return ['More help', 'Just show me the turns', ...where];
      return [...(one(facts, 'turns') ? ['And then?'] : []), 'Which goals hold?', ...where].slice(
        0,
        3,
      );
    }
    case 'where-piece':
      return ['What is next?', 'Which goals hold?'];
    case 'is-done':
    case 'which-hold':
      return [
        'What is next?',
        ...all(facts, 'piece')
          .slice(0, 1)
          .map(({ piece }) => `Where is ${sayPiece(piece)}?`),
        'Where did it go wrong?',
      ];
    case 'why-broke': {
      const loss = one(facts, 'loss');
      const pieces =
        loss?.pieces.slice(0, 1).map(({ piece }) => `Where is ${sayPiece(piece)}?`) ?? [];
      return [...pieces, 'Which goals hold?', 'What is next?'];
    }
    case 'what-does':
    case 'shorter':
    case 'compare':
    case 'which-way':
    case 'how-often':
      return ['Is it right?', 'How often do I repeat it?', 'What is next?'];
    case 'which-case':
      return ['What is next?', 'Just show me the turns', 'Which goals hold?'];
    case 'journey':
    case 'stage-span':
    case 'which-order':
    case 'where-wrong':
    case 'is-possible':
    case 'explain-term':
      return ['Which goals hold?', 'What is next?', 'Where did it go wrong?'];
    case 'judge-turns':
      return ['And then?', 'What is next?', 'Which goals hold?'];
    case 'not-understood':
      return [...(one(facts, 'offer')?.questions ?? [])];
  }
}
