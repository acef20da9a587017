/** How many stickers of a net a line after `start:` holds; whether they make a cube is judged elsewhere. */
import { FACELETS } from '../../cube/facelets.ts';
import { looksLikeNetRow } from '../../cube/net.ts';

export const NET_STICKERS = FACELETS;
const LONGEST_ROW = 200;
const SEPARATORS = /[\s|.,;/_+*-]/g;
const COMPACT = /^[wogrby]{54}$/i;

/** Stickers in a row of a net, 0 if the line does not look like one; a whole net may stand in one line. */
export function netStickers(text: string): number {
  if (text === '' || text.length > LONGEST_ROW) return 0;
  const stickers = text.replace(SEPARATORS, '');
  return looksLikeNetRow(text) || COMPACT.test(stickers)
    ? Math.min(NET_STICKERS, [...stickers].length)
    : 0;
}
