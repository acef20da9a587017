/** Everything that the README shows is tried: commands, the example of the language, one of each finding. */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { DEFAULT_SEVERITY, FINDING_CODES } from '../../engine/document/finding.ts';
import { COMMANDS } from '../../extension/terminal/commands.ts';
import { SAMPLES, turnlore } from './turnlore.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const README = readFileSync(path.join(ROOT, 'README.md'), 'utf8');

function blocksOf(text: string, language: string): string[] {
  const found = text.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\``, 'gmu'));
  return Array.from(found, (match) => match[1]);
}

/** The words of a command line, double quotes taken off. */
function wordsOf(line: string): string[] {
  return Array.from(line.matchAll(/"([^"]*)"|(\S+)/gu), (match) => match[1] ?? match[2]);
}

function sectionOf(code: string): string {
  const [, after] = README.split(`\n### ${code}\n`);
  return after.split(/\n##/u)[0];
}

describe('commands', () => {
  const shown = blocksOf(README, 'console').map((block) => {
    const [first, ...output] = block.split('\n');
    return {
      line: first.replace('$ npm run --silent turnlore -- ', ''),
      output: output.join('\n'),
    };
  });

  test('several are shown', () => {
    expect(shown.length).toBeGreaterThanOrEqual(3);
  });

  test.each(shown)('$line prints what the README shows', ({ line, output }) => {
    expect(turnlore(wordsOf(line), { cwd: ROOT }).out).toBe(output);
  });

  test.each([...COMMANDS.keys()])('%s is in the table', (name) => {
    expect(README).toContain(`| \`${name} `);
  });
});

describe('the language', () => {
  test('its example is right throughout', () => {
    const [example] = blocksOf(README.split('## Findings')[0], 'moves');
    const { findings, blocks } = analyse(example, {});
    expect(findings.filter(({ severity }) => severity !== 'off')).toEqual([]);
    expect(blocks[0].solved).toBe(true);
  });
});

describe('findings', () => {
  test('every code has its heading, and no other', () => {
    const headings = Array.from(README.matchAll(/^### (.+)$/gmu), (match) => match[1]);
    expect(headings.sort()).toEqual([...FINDING_CODES].sort());
  });

  test.each(FINDING_CODES)('%s: the example brings it up, and the severity is told', (code) => {
    const section = sectionOf(code);
    const [example] = blocksOf(section, 'moves');
    const found = analyse(example, {}).findings.filter((finding) => finding.code === code);
    expect(found).not.toEqual([]);
    expect(section.trim().toLowerCase().startsWith(DEFAULT_SEVERITY[code])).toBe(true);
  });
});

describe('what it points at', () => {
  test('is there', () => {
    const targets = Array.from(README.matchAll(/\]\(([^)#]+)\)/gu), (match) => match[1]);
    expect(targets.filter((target) => !existsSync(path.join(ROOT, target)))).toEqual([]);
  });

  test('all samples are in the table', () => {
    for (const file of readdirSync(SAMPLES)) {
      expect(README).toContain(`| \`${path.basename(file, '.moves')}\` |`);
    }
  });
});
