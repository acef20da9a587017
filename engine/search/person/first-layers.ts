/**
 * The first two layers piece by piece: of all pieces of the stage, positions of the hands and turns of
 * the top, the insert that is least trouble. Where no piece can be put home at once, one is brought
 * up to the top layer first.
 */
import type { Holding } from '../../cube/holding.ts';
import {
  faceShowing,
  faceletsOf,
  isCorner,
  piecesIn,
  placedSet,
  whereIs,
  type Piece,
  type PieceSet,
} from '../../cube/piece.ts';
import type { State } from '../../cube/state.ts';
import { OPPOSITE } from '../../cube/vocabulary.ts';
import { homeOf, placesOf, slotOfPlace } from '../places.ts';
import { holdingsOn, regrip } from './hands.ts';
import { makeStep } from './make-step.ts';
import {
  CORNER_OUT_TEMPLATES,
  CORNER_TEMPLATES,
  EDGE_OUT_TEMPLATES,
  EDGE_TEMPLATES,
  MIDDLE_OUT_TEMPLATES,
  MIDDLE_TEMPLATES,
  motionOf,
  type Template,
} from './sequences.ts';
import type { PersonStep, Reason } from './step.ts';

/** Where a piece is, as far as it decides what to do with it. */
interface Situation {
  readonly layer: 'top' | 'middle' | 'base';
  /** Whether its base sticker (the top's, for middle edges: never) lies along the vertical axis. */
  readonly upright: boolean;
  readonly inOwnSlot: boolean;
}

function situationOf(state: State, piece: Piece, base: number): Situation {
  const { slot } = whereIs(state, piece);
  const faces = faceletsOf(slot);
  const top = OPPOSITE[base];
  const layer = faces.includes(top) ? 'top' : faces.includes(base) ? 'base' : 'middle';
  const shows = faceletsOf(piece).includes(base) ? faceShowing(state, piece, base) : -1;
  return { layer, upright: shows === base || shows === top, inOwnSlot: slot === piece };
}

/** Whether a reason tells of this situation. */
function applies(reason: Reason, { layer, upright, inOwnSlot }: Situation): boolean {
  switch (reason) {
    case 'base-up-above-home':
    case 'base-up':
      return layer === 'top' && upright;
    case 'base-aside-above-home':
    case 'base-to-the-side':
      return layer === 'top' && !upright;
    case 'beside-home':
    case 'edge-stuck-in-middle':
      return layer === 'middle';
    case 'edge-in-wrong-base-slot':
      return layer === 'base' && upright;
    case 'edge-turned-in-base':
      return layer === 'base' && !upright;
    case 'corner-turned-in-slot':
      return inOwnSlot;
    case 'corner-in-wrong-slot':
      return layer === 'base' && !inOwnSlot;
    case 'edge-goes-right':
    case 'edge-goes-left':
      return layer === 'top';
    case 'edge-in-wrong-middle-slot':
      return layer === 'middle' && !inOwnSlot;
    case 'edge-turned-in-middle':
      return inOwnSlot;
    default:
      return false;
  }
}

interface Candidate {
  readonly piece: Piece;
  readonly template: Template;
  readonly holding: Holding;
  readonly quarters: number;
  readonly cost: number;
}

/** A regrip is felt as about two turns. */
const REGRIP_COST = 2;

/** The next step of the cross, the corners or the middle; undefined if all of `pieces` are home. */
export function nextInsert(
  state: State,
  stage: string,
  base: number,
  pieces: PieceSet,
  before: PieceSet,
): PersonStep | undefined {
  const placed = placedSet(state);
  const missing = piecesIn(pieces & ~placed);
  if (missing.length === 0) return undefined;
  const guarded = (before | pieces) & placed;
  const [inserts, outs] = templatesFor(missing[0], base);
  const best =
    cheapest(state, missing, inserts, base, guarded) ??
    cheapest(state, missing, outs, base, guarded);
  if (best === undefined) throw new Error(`no way to go on with ${stage}`);
  const { template, piece, holding, quarters } = best;
  return makeStep(state, {
    stage,
    reason: template.reason,
    piece,
    arrives: template.arrives,
    holding,
    quarters,
    sequence: template.sequence,
    times: template.times,
    guarded,
  });
}

function templatesFor(piece: Piece, base: number): [readonly Template[], readonly Template[]] {
  if (isCorner(piece)) return [CORNER_TEMPLATES, CORNER_OUT_TEMPLATES];
  if (faceletsOf(piece).includes(base)) return [EDGE_TEMPLATES, EDGE_OUT_TEMPLATES];
  return [MIDDLE_TEMPLATES, MIDDLE_OUT_TEMPLATES];
}

function cheapest(
  state: State,
  missing: readonly Piece[],
  templates: readonly Template[],
  base: number,
  guarded: PieceSet,
): Candidate | undefined {
  const places = placesOf(state);
  const holdings = holdingsOn(base, state.holding);
  let best: Candidate | undefined;
  for (const piece of missing) {
    const situation = situationOf(state, piece, base);
    const most = situation.layer === 'top' ? 4 : 1;
    for (const template of templates) {
      if (!applies(template.reason, situation)) continue;
      for (const holding of holdings) {
        for (let quarters = 0; quarters < most; quarters++) {
          const cost =
            regrip(state.holding, holding).length * REGRIP_COST +
            (quarters === 0 ? 0 : 1) +
            template.sequence.length * template.times;
          if (best && cost >= best.cost) continue;
          const motion = motionOf(template, holding, quarters);
          if (motion.moves & guarded) continue;
          const place = motion.goes[places[piece] + (isCorner(piece) ? 24 : 0)];
          if (!fits(template, piece, place, base)) continue;
          best = { piece, template, holding, quarters, cost };
        }
      }
    }
  }
  return best;
}

/** Whether a piece that ends at `place` is home, or at least in the top (a stuck base edge with its base sticker up). */
function fits(template: Template, piece: Piece, place: number, base: number): boolean {
  if (template.arrives) return place === homeOf(piece);
  const slot = slotOfPlace(piece, place);
  const faces = faceletsOf(slot);
  const top = OPPOSITE[base];
  if (!faces.includes(top)) return false;
  if (template.reason !== 'edge-stuck-in-middle') return true;
  const sticker = (faceletsOf(piece).indexOf(base) + (place & 1)) % 2;
  return faces[sticker] === top;
}
