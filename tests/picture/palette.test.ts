/**
 * The colours of the stickers, measured: apart for everybody in the safe set, letters readable.
 * Colour blindness by the matrices of Machado, Oliveira, Fernandes 2009 (severity 1.0), on linear
 * RGB; differences as CIE 1976 ΔE in Lab (recalled; both are general-purpose colour science).
 */
import { describe, expect, it } from 'vitest';
import { INKS, PALETTES } from '../../engine/picture/palette.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';

type Rgb = readonly [number, number, number];

const VISIONS: Readonly<Record<string, readonly Rgb[]>> = {
  ordinary: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'without red cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'without green cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'without blue cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

function linear(hex: string): Rgb {
  return [1, 3, 5].map((at) => {
    const value = parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  }) as unknown as Rgb;
}

function seen(colour: Rgb, vision: readonly Rgb[]): Rgb {
  return vision.map((row) =>
    Math.min(1, Math.max(0, row[0] * colour[0] + row[1] * colour[1] + row[2] * colour[2])),
  ) as unknown as Rgb;
}

function luminance([r, g, b]: Rgb): number {
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function lab([r, g, b]: Rgb): Rgb {
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(luminance([r, g, b]));
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function closest(
  palette: (typeof PALETTES)[number],
  vision: readonly Rgb[],
): { difference: number; pair: string } {
  let found = { difference: Infinity, pair: '' };
  for (const a of COLOURS) {
    for (const b of COLOURS) {
      if (a >= b) continue;
      const [one, other] = [a, b].map((name) =>
        lab(seen(linear(INKS[palette][name].fill), vision)),
      );
      const difference = Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
      if (difference < found.difference) found = { difference, pair: `${a}, ${b}` };
    }
  }
  return found;
}

describe('sticker colours', () => {
  it.each(Object.keys(VISIONS))(
    'of the safe set are at least 30 apart in Lab for eyes %s',
    (name) => {
      const { difference, pair } = closest('safe', VISIONS[name]);
      expect(difference, pair).toBeGreaterThan(30);
    },
  );

  it('of the standard set are at least 30 apart for ordinary eyes', () => {
    const { difference, pair } = closest('standard', VISIONS.ordinary);
    expect(difference, pair).toBeGreaterThan(30);
  });

  it.each(PALETTES)('carry letters with a contrast of 4.5 to 1 in the %s set', (palette) => {
    for (const name of COLOURS) {
      const { fill, letter } = INKS[palette][name];
      const [low, high] = [luminance(linear(fill)), luminance(linear(letter))].sort(
        (a, b) => a - b,
      );
      expect((high + 0.05) / (low + 0.05), name).toBeGreaterThan(4.5);
    }
  });
});
