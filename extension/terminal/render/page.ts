/**
 * The page that a text is written on: its width and its inks. Colours are an addition only: with
 * `depth` none, every text still says everything.
 */
import { INKS, type Ink } from '../../../engine/picture/palette.ts';
import type { Colour } from '../../../engine/cube/vocabulary.ts';

export const DEPTHS = ['none', '256', 'true'] as const;
export type Depth = (typeof DEPTHS)[number];

/** Inks by what a stretch of text is, as [red, green, blue]; chosen to be legible on dark and on light. */
const TONES = {
  title: [150, 118, 196],
  error: [208, 74, 92],
  warning: [190, 132, 32],
  information: [78, 140, 186],
  good: [66, 150, 98],
  quiet: [132, 130, 140],
} as const;
export type Tone = keyof typeof TONES;

export interface Page {
  readonly width: number;
  readonly depth: Depth;
  tone(tone: Tone, text: string): string;
  strong(text: string): string;
  /** A sticker: its letter on its colour. */
  sticker(colour: Colour, text: string): string;
}

const RESET = '\u001b[0m';

export function makePage(depth: Depth, width: number): Page {
  const wrap = (codes: string, text: string): string =>
    depth === 'none' || text === '' ? text : `\u001b[${codes}m${text}${RESET}`;
  const ink = (ground: '38' | '48', rgb: readonly [number, number, number]): string =>
    depth === 'true' ? `${ground};2;${rgb.join(';')}` : `${ground};5;${nearest256(rgb)}`;
  return {
    width,
    depth,
    tone: (tone, text) => wrap(ink('38', TONES[tone]), text),
    strong: (text) => wrap('1', text),
    sticker: (colour, text) => {
      const { fill, letter }: Ink = INKS.standard[colour];
      return wrap(`1;${ink('38', rgbOf(letter))};${ink('48', rgbOf(fill))}`, text);
    },
  };
}

function rgbOf(hex: string): [number, number, number] {
  const value = Number.parseInt(hex.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}

/** The nearest entry of the 6×6×6 block of the common 256 colours. */
function nearest256([red, green, blue]: readonly [number, number, number]): number {
  const steps = [0, 95, 135, 175, 215, 255];
  const [r, g, b] = [red, green, blue].map((value) => {
    const distances = steps.map((step) => Math.abs(step - value));
    return distances.indexOf(Math.min(...distances));
  });
  return 16 + 36 * r + 6 * g + b;
}

/**
 * How many colours to use. `FORCE_COLOR` (0 none, 3 all, else 256) comes first, as it does in Node;
 * then `NO_COLOR` (if not empty) and output that is no terminal turn colours off.
 */
export function depthFor(
  env: Readonly<Record<string, string | undefined>>,
  terminal: boolean,
): Depth {
  const rich = /^(?:truecolor|24bit)$/iu.test(env.COLORTERM ?? '') ? 'true' : '256';
  const forced = env.FORCE_COLOR;
  if (forced !== undefined) {
    if (forced === '0' || forced === 'false') return 'none';
    return forced === '3' ? 'true' : rich;
  }
  if ((env.NO_COLOR ?? '') !== '' || !terminal || env.TERM === 'dumb') return 'none';
  return rich;
}
