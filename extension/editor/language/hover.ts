/** Hovers of groups, stages, pieces, names and keys, with a picture where there is a state to show. */
import * as vscode from 'vscode';
import { hoverAt, type Hover } from '../../../engine/document/features/index.ts';
import { cubeHeight, cubeScene } from '../../../engine/picture/cube-scene.ts';
import { printSvg } from '../../../engine/picture/svg.ts';
import type { Analyses } from '../analyses.ts';
import { toRange } from '../convert.ts';
import { readLooks } from '../settings.ts';

const WIDTH = 140;
const LABEL = 'The cube at this place';

export function hovers(analyses: Analyses): vscode.HoverProvider {
  return {
    provideHover(document, position) {
      const found = hoverAt(analyses.of(document), position);
      if (found === undefined) return undefined;
      const text = new vscode.MarkdownString(found.markdown);
      const picture = pictureOf(found);
      if (picture !== undefined) text.appendMarkdown(`\n\n${picture}`);
      return new vscode.Hover(text, toRange(found.range));
    },
  };
}

function pictureOf({ picture }: Hover): string | undefined {
  const state = picture?.block.course.stateAt(picture.place);
  if (picture === undefined || state === undefined) return undefined;
  const { letters, palette } = readLooks();
  const scene = cubeScene(state, { width: WIDTH, bends: 1, letters, marked: picture.marked });
  const svg = btoa(printSvg({ ...scene, label: LABEL }, { palette }));
  const size = `width=${WIDTH},height=${Math.round(cubeHeight(WIDTH))}`;
  return `![${LABEL}](data:image/svg+xml;base64,${svg}|${size})`;
}
