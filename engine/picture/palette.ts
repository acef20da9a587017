/**
 * Colours of the pictures. `standard` is a set of inks on paper; `safe` keeps all six apart for
 * people with any of the three kinds of colour blindness, mostly by lightness (a test measures both).
 */
import type { Colour } from '../cube/vocabulary.ts';

export const PALETTES = ['standard', 'safe'] as const;
export type Palette = (typeof PALETTES)[number];

export interface Ink {
  /** Of the sticker. */
  readonly fill: string;
  /** Of the line engraved around it. */
  readonly line: string;
  /** Of a letter on it: at least 4.5 to 1 against the fill. */
  readonly letter: string;
}

const DARK = '#1d1a26';
const PALE = '#ffffff';

export const INKS: Readonly<Record<Palette, Readonly<Record<Colour, Ink>>>> = {
  standard: {
    white: { fill: '#f7f2e6', line: '#b9b09a', letter: DARK },
    orange: { fill: '#ee7b30', line: '#a94d10', letter: DARK },
    green: { fill: '#3fa66b', line: '#1d6b3f', letter: DARK },
    red: { fill: '#b9274a', line: '#74102a', letter: PALE },
    blue: { fill: '#2f63b8', line: '#163a78', letter: PALE },
    yellow: { fill: '#f3c93a', line: '#a98510', letter: DARK },
  },
  safe: {
    white: { fill: '#ffffff', line: '#a8a8b0', letter: DARK },
    orange: { fill: '#cb7226', line: '#7d4210', letter: DARK },
    green: { fill: '#489b95', line: '#22605b', letter: DARK },
    red: { fill: '#640a38', line: '#3b0420', letter: PALE },
    blue: { fill: '#2b2ba4', line: '#15155f', letter: PALE },
    yellow: { fill: '#f5cb0a', line: '#a08404', letter: DARK },
  },
};

/** The cube's body, the line around it and arrows; the same in every theme, so that a picture can be pasted anywhere. */
export const BODY = {
  fill: '#2d2836',
  line: '#55506a',
  arrow: '#fdfbff',
  arrowLine: '#1d1a26',
} as const;
