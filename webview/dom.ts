/** Small helpers for building a page without a framework. */
import type { Scene } from '../engine/picture/scene.ts';

type Child = Node | string;

/** `element('p', { class: 'note' }, 'words')`; an attribute that is undefined is left out. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes?: Readonly<Record<string, string | undefined>>,
  ...children: Child[]
): HTMLElementTagNameMap[Name];
export function element(
  name: string,
  attributes?: Readonly<Record<string, string | undefined>>,
  ...children: Child[]
): HTMLElement;
export function element(
  name: string,
  attributes: Readonly<Record<string, string | undefined>> = {},
  ...children: Child[]
): HTMLElement {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

/** The element of the page with this id, which the page must have. */
export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no element "${id}" in the page`);
  return found;
}

const SVG = 'http://www.w3.org/2000/svg';

/** The scene as an SVG element, styled by the page through the classes of its shapes. */
export function drawScene(scene: Scene): SVGSVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', `0 0 ${scene.width} ${scene.height}`);
  svg.setAttribute('width', String(scene.width));
  svg.setAttribute('height', String(scene.height));
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', scene.label);
  for (const shape of scene.shapes) {
    const name = { area: 'polygon', line: 'polyline', text: 'text' }[shape.kind];
    const drawn = document.createElementNS(SVG, name);
    drawn.setAttribute('class', shape.className);
    if (shape.kind === 'text') {
      drawn.setAttribute('x', shape.points[0].toFixed(1));
      drawn.setAttribute('y', shape.points[1].toFixed(1));
      drawn.textContent = shape.text ?? '';
    } else {
      drawn.setAttribute('points', shape.points.map((value) => value.toFixed(1)).join(' '));
    }
    if (shape.facelet !== undefined) drawn.setAttribute('data-facelet', String(shape.facelet));
    if (shape.place !== undefined) drawn.setAttribute('data-place', String(shape.place));
    if (shape.title !== undefined && shape.kind !== 'text') {
      const title = document.createElementNS(SVG, 'title');
      title.textContent = shape.title;
      drawn.append(title);
    }
    svg.append(drawn);
  }
  return svg;
}
