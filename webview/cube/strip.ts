/** The goal strip in the view: a scene drawn to the width, every turn to be clicked, a slider for the keyboard. */
import { stripScene, type StripSource } from '../../engine/picture/strip-scene.ts';
import { byId, drawScene, element } from '../dom.ts';
import type { BlockView, PlaceView } from '../messages.ts';
import { sayPlace } from './draw.ts';

/** Height of the names above a system, in pixels. */
const STAGE_NAMES = 18;

export function drawStrip(block: BlockView, place: PlaceView, go: (place: number) => void): void {
  const strip = byId('strip');
  const source: StripSource = {
    length: block.texts.length,
    tracks: block.tracks,
    stages: block.stages,
    turnAt: (index) => ({ text: block.texts[index], number: block.numbers[index] || undefined }),
  };
  const scene = stripScene(source, { width: strip.clientWidth, place: place.place });
  const svg = drawScene(scene);
  svg.setAttribute('aria-hidden', 'true');
  svg.addEventListener('click', (event) => {
    const target = (event.target as Element).closest('[data-place]');
    if (target instanceof SVGElement) go(Number(target.dataset.place));
  });
  const parts: Node[] = [];
  if (scene.first > 0) parts.push(more(`turns up to ${scene.first} are further up`));
  parts.push(svg);
  if (scene.end <= block.texts.length)
    parts.push(more(`${block.texts.length + 1 - scene.end} more below`));
  const scrolled = strip.scrollTop;
  strip.replaceChildren(...parts);
  strip.scrollTop = scrolled;
  strip.setAttribute('aria-valuemax', String(block.texts.length));
  strip.setAttribute('aria-valuenow', String(place.place));
  strip.setAttribute('aria-valuetext', sayPlace(block, place));
  byId('strip-words').textContent = scene.label;
}

function more(words: string): HTMLElement {
  return element('p', { class: 'more' }, `… ${words}`);
}

/** Brings the system with the cursor into sight, moving the strip and nothing else, and as little as possible. */
export function scrollToPlace(): void {
  const strip = byId('strip');
  const cursor = strip.querySelector('.cursor')?.getBoundingClientRect();
  if (cursor === undefined) return;
  const frame = strip.getBoundingClientRect();
  const above = cursor.top - STAGE_NAMES - frame.top;
  const below = cursor.bottom - frame.bottom;
  if (above < 0) strip.scrollTop += above;
  else if (below > 0) strip.scrollTop += Math.min(below + 6, above);
}
