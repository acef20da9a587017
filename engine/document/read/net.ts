/**
 * Rows of an unfolded net after `start:`. Whether they make a cube is judged elsewhere; here a row
 * is a line of colour initials, perhaps with a mistake among them.
 */
import { COLOUR_INITIALS, FACES } from '../../cube/vocabulary.ts';

export const NET_STICKERS = FACES.length * 9;
const LONGEST_ROW = 200;
const SEPARATORS = /[\s|.,;/_+*-]/g;

/** The stickers of a row as written, separators taken out; undefined if it does not look like a row. */
export function netStickers(text: string): string | undefined {
  if (text.length > LONGEST_ROW) return undefined;
  const stickers = text.replace(SEPARATORS, '');
  if (stickers.length < 3 || stickers.length > NET_STICKERS || !/^[a-z?\d]+$/i.test(stickers)) {
    return undefined;
  }
  const colours = [...stickers.toLowerCase()].filter((sticker) =>
    COLOUR_INITIALS.includes(sticker as (typeof COLOUR_INITIALS)[number]),
  ).length;
  if (colours === stickers.length) return stickers;
  return stickers.length % 3 === 0 && colours * 3 >= stickers.length * 2 ? stickers : undefined;
}
