/** What the person has set, read with care: settings are text that anybody may have written. */
import * as vscode from 'vscode';
import * as v from 'valibot';
import {
  FINDING_CODES,
  SEVERITIES,
  type FindingCode,
  type Severity,
} from '../../engine/document/finding.ts';
import { PALETTES } from '../../engine/picture/palette.ts';
import type { Looks } from '../../webview/messages.ts';

const severity = v.picklist(SEVERITIES);
const palette = v.picklist(PALETTES);

/** `turnlore.severities`, without what is no code or no severity. */
export function readSeverities(): Partial<Record<FindingCode, Severity>> {
  const set = vscode.workspace.getConfiguration('turnlore').get<unknown>('severities');
  const result: Partial<Record<FindingCode, Severity>> = {};
  if (typeof set !== 'object' || set === null) return result;
  for (const code of FINDING_CODES) {
    const value: unknown = Reflect.get(set, code);
    if (v.is(severity, value)) result[code] = value;
  }
  return result;
}

export function readLooks(): Looks {
  const set = vscode.workspace.getConfiguration('turnlore.cube');
  const chosen = set.get<unknown>('palette');
  return {
    palette: v.is(palette, chosen) ? chosen : 'standard',
    letters: set.get<unknown>('letters') === true,
  };
}

export async function writeLooks(looks: Looks): Promise<void> {
  const set = vscode.workspace.getConfiguration('turnlore.cube');
  const target = vscode.ConfigurationTarget.Global;
  const now = readLooks();
  if (looks.palette !== now.palette) await set.update('palette', looks.palette, target);
  if (looks.letters !== now.letters) await set.update('letters', looks.letters, target);
}

/** Whether the cube and the tutor open by themselves with the first `.moves` file. */
export function opensViews(): boolean {
  return vscode.workspace.getConfiguration('turnlore').get<unknown>('openViews') !== false;
}
