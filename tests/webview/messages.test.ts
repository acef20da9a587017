/** Messages between the extension and its views: what fits is taken whole, anything else is dropped. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromCube, fromTutor, readMessage, toCube, toTutor } from '../../webview/messages.ts';

describe('a message', () => {
  it('that fits is read as it was sent', () => {
    const go = { kind: 'go', uri: 'file:///a.moves', version: 3, place: 21 } as const;
    expect(readMessage(fromCube, go)).toEqual(go);
    const ask = { kind: 'ask', question: 'Why did the cross break?' } as const;
    expect(readMessage(fromTutor, ask)).toEqual(ask);
  });

  it.each([
    { kind: 'go', uri: 'file:///a.moves', version: 3 },
    { kind: 'go', uri: 'file:///a.moves', version: 3, place: -1 },
    { kind: 'go', uri: 'file:///a.moves', version: 3, place: 1.5 },
    { kind: 'step', by: 'sideways' },
    { kind: 'jump' },
  ])('that lacks something or says something unknown is dropped: %j', (message) => {
    expect(readMessage(fromCube, message)).toBeUndefined();
  });

  it('of any other shape is dropped, at both ends', () => {
    fc.assert(
      fc.property(fc.anything(), (data) => {
        for (const schema of [fromCube, fromTutor, toCube, toTutor]) {
          expect(readMessage(schema, data)).toBeUndefined();
        }
      }),
    );
  });

  it('with a state of seven corners is dropped: a picture is drawn of whole cubes only', () => {
    const state = {
      corners: [0, 3, 6, 9, 12, 15, 18],
      edges: Array.from({ length: 12 }, (_, i) => i * 2),
      holding: 0,
    };
    const place = { place: 0, state, next: null, goals: [], marked: 0, findings: [], comment: '' };
    const message = { kind: 'place', uri: 'a', version: 1, place };
    expect(readMessage(toCube, message)).toBeUndefined();
    const whole = {
      ...message,
      place: { ...place, state: { ...state, corners: [...state.corners, 21] } },
    };
    expect(readMessage(toCube, whole)).toEqual(whole);
  });
});
