import { describe, expect, it } from 'vitest';
import { COLOURS, colourIndex } from '../../engine/cube/vocabulary.ts';
import { chooseBase } from '../../engine/goals/base.ts';
import { findMethod, LAYERS } from '../../engine/goals/methods.ts';
import { after } from '../support/turns.ts';

/** The base chosen for what the first stage led to; white is up and green in front before it. */
function base(text: string, named?: string, method = 'layers'): string {
  const state = after(text);
  const answer = chooseBase({
    method: findMethod(method) ?? LAYERS,
    state,
    holding: state.holding,
    named: named === undefined ? undefined : colourIndex(named),
  });
  return COLOURS[answer.base] + (answer.assumed ? ' (assumed)' : '');
}

describe('the base colour', () => {
  it('is the colour whose cross is made, wherever it lies: a cross may be made on top', () => {
    expect(base("R D R' F D F' D2")).toBe('white');
    expect(base("R D R' F D F' D2", 'yellow')).toBe('white');
  });

  it('of several crosses, the one facing down', () => {
    expect(base('')).toBe('yellow');
    expect(base('x2')).toBe('white');
    expect(base('z')).toBe('red');
    expect(base('z', 'blue')).toBe('red');
  });

  it('without a cross, the colour that the first stage names', () => {
    expect(base("F R U' L B D R F", 'blue')).toBe('blue');
  });

  it('with none named, the one with three edges placed, counted up to one turn of its layer', () => {
    expect(base("D' U2 F U' B D2 B U2 R' F'")).toMatch(/assumed/);
    // Three white edges stay together while the fourth is out and the layer is turned.
    expect(base("x2 R U R' L' U2 L B U B' F U2 F' D F2 x2")).toBe('white');
  });

  it('else the one facing down, which is an assumption', () => {
    expect(base("D' U2 F U' B D2 B U2 R' F' x2")).toBe('white (assumed)');
    expect(chooseBase({ method: LAYERS, state: undefined, holding: 0 })).toEqual({
      base: 5,
      assumed: true,
    });
    expect(chooseBase({ method: LAYERS, state: undefined, holding: 0, named: 2 })).toEqual({
      base: 2,
      assumed: false,
    });
  });

  it('of a block: the colour under it, whatever the slice M does', () => {
    expect(base("M U R U2 Rw' U", undefined, 'Roux')).toBe('yellow');
  });
});
