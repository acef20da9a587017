/** Hover on a turn: the cube right after it, its number, the goals there, and what the turn broke. */
import * as vscode from 'vscode';
import type { Block } from '../../engine/document/analysis.ts';
import { cubeHeight, cubeScene } from '../../engine/picture/cube-scene.ts';
import { printSvg } from '../../engine/picture/svg.ts';
import { setOf } from '../../engine/cube/piece.ts';
import type { Analyses } from './analyses.ts';
import { toRange } from './convert.ts';
import { goalsAt, placeWords } from './block-view.ts';
import { readLooks } from './settings.ts';

const WIDTH = 180;

export class Hovers implements vscode.HoverProvider {
  private readonly analyses: Analyses;

  constructor(analyses: Analyses) {
    this.analyses = analyses;
  }

  provideHover(document: vscode.TextDocument, position: vscode.Position): vscode.Hover | undefined {
    const block = this.analyses.of(document).blockAt(position);
    if (block === undefined) return undefined;
    const turn = turnAt(block, position);
    if (turn === undefined) return undefined;
    return new vscode.Hover(makeHover(block, turn), toRange(block.rangeOf(turn)));
  }
}

/** The turn that is written at a position; in a repeated group, its first pass. */
export function turnAt(block: Block, position: vscode.Position): number | undefined {
  const place = block.placeAt(position);
  for (const turn of [place, place - 1]) {
    if (turn < 0 || turn >= block.course.length) continue;
    if (toRange(block.rangeOf(turn)).contains(position)) return turn;
  }
  return undefined;
}

function makeHover(block: Block, turn: number): vscode.MarkdownString {
  const text = new vscode.MarkdownString();
  text.appendMarkdown(`**${escaped(placeWords(block, turn + 1))}**\n\n`);
  const state = block.course.stateAt(turn + 1);
  const broken = block.timeline.breaks.filter((found) => found.turn === turn);
  if (state !== undefined) {
    const looks = readLooks();
    const marked = setOf(broken.flatMap((found) => found.pieces));
    const scene = cubeScene(state, { width: WIDTH, bends: 1, letters: looks.letters, marked });
    const svg = btoa(
      printSvg({ ...scene, label: 'The cube after this turn' }, { palette: looks.palette }),
    );
    const size = `width=${WIDTH},height=${Math.round(cubeHeight(WIDTH))}`;
    text.appendMarkdown(
      `![The cube after this turn](data:image/svg+xml;base64,${svg}|${size})\n\n`,
    );
  }
  const goals = goalsAt(block, turn + 1).map(
    ({ goal, holds }) => `${holds === true ? '✓' : holds === false ? '○' : '?'} ${goal}`,
  );
  text.appendMarkdown(escaped(goals.join('   ')));
  for (const found of broken) {
    text.appendMarkdown(
      `\n\n${escaped(`${found.part ? 'Takes out a part of' : 'Breaks'} ${block.timeline.goals[found.goal].name} (${describe(block, found.restoredAt, found.kind)}).`)}`,
    );
  }
  return text;
}

function describe(block: Block, restoredAt: number | undefined, kind: string): string {
  if (restoredAt === undefined) return kind === 'open' ? 'open' : 'never restored';
  const number = block.numberOf(restoredAt);
  return `${kind}, restored by ${block.textOf(restoredAt)}, turn ${number}`;
}

function escaped(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+\-.!|<>~]/g, '\\$&');
}
