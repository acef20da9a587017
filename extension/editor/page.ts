/** The HTML around a view: strict content security policy, one script, one style sheet, and the inks of the cube. */
import * as vscode from 'vscode';
import { BODY, INKS, PALETTES } from '../../engine/picture/palette.ts';

export type ViewName = 'cube' | 'tutor';

export function viewOptions(extension: vscode.Uri): vscode.WebviewOptions {
  return {
    enableScripts: true,
    localResourceRoots: [vscode.Uri.joinPath(extension, 'dist', 'webview')],
  };
}

export function makePage(view: ViewName, webview: vscode.Webview, extension: vscode.Uri): string {
  const file = (name: string): string =>
    webview.asWebviewUri(vscode.Uri.joinPath(extension, 'dist', 'webview', name)).toString();
  const nonce = makeNonce();
  const policy = [
    `default-src 'none'`,
    `img-src ${webview.cspSource} data:`,
    `style-src ${webview.cspSource} 'nonce-${nonce}'`,
    `font-src ${webview.cspSource}`,
    `script-src 'nonce-${nonce}'`,
  ].join('; ');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${file(`${view}.css`)}">
<style nonce="${nonce}">${printInks()}</style>
<title>${view === 'cube' ? 'Cube' : 'Tutor'}</title>
</head>
<body data-view="${view}" class="${view === 'cube' ? 'empty' : 'silent'}">
${view === 'cube' ? CUBE : TUTOR}
<script nonce="${nonce}" src="${file(`${view}.js`)}"></script>
</body>
</html>`;
}

function makeNonce(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
}

function printInks(): string {
  const body = `--cube-body:${BODY.fill};--cube-body-line:${BODY.line};--cube-arrow:${BODY.arrow};--cube-arrow-line:${BODY.arrowLine};`;
  return PALETTES.map((palette) => {
    const inks = Object.entries(INKS[palette])
      .map(
        ([colour, ink]) =>
          `--cube-${colour}:${ink.fill};--cube-${colour}-line:${ink.line};--cube-${colour}-letter:${ink.letter};`,
      )
      .join('');
    return `body${palette === 'standard' ? '' : `[data-palette="${palette}"]`}{${body}${inks}}`;
  }).join('\n');
}

const icon = (path: string): string =>
  `<svg viewBox="0 0 16 16" aria-hidden="true"><path d="${path}"/></svg>`;
const stepButton = (by: string, label: string, path: string): string =>
  `<vscode-button appearance="icon" data-step="${by}" aria-label="${label}" title="${label}">${icon(path)}</vscode-button>`;

const CUBE = `
<p id="reason" role="status">Reading the text …</p>
<main>
<header>
<div><h1 id="title"></h1><p><span id="updating">updating … </span><span id="facts"></span></p></div>
<vscode-button id="letters" appearance="icon" aria-pressed="false" aria-label="Letters on the stickers" title="Letters on the stickers">${icon('M3 12.5L6.5 3.500h.5l3.500 9M4.300 9.500h4.900M12.500 6v6.500')}</vscode-button>
<vscode-button id="safe" appearance="icon" aria-pressed="false" aria-label="Colour-blind-safe colours" title="Colour-blind-safe colours">${icon('M1.500 8S4 3.500 8 3.500 14.500 8 14.500 8 12 12.500 8 12.500 1.500 8 1.500 8zM8 6a2 2 0 100 4 2 2 0 000-4z')}</vscode-button>
</header>
<div id="look">
<div id="picture" class="cube-picture"></div>
<ul id="goals" aria-label="Goals at this place"></ul>
</div>
<div id="side">
<div id="controls">
${stepButton('start', 'To the start', 'M4 3v10M12 3l-6 5 6 5')}
${stepButton('back', 'One turn back', 'M10.5 3l-6 5 6 5')}
<span id="where"></span>
${stepButton('forward', 'One turn forward', 'M5.5 3l6 5-6 5')}
<span id="next" title="The turn that comes next"></span>
${stepButton('end', 'To the end', 'M12 3v10M4 3l6 5-6 5')}
</div>
<div id="strip" tabindex="0" role="slider" aria-label="Turns and goals" aria-valuemin="0" aria-describedby="strip-words"></div>
<p id="strip-words" class="unseen"></p>
<div id="notes"></div>
</div>
</main>
<div id="live" class="unseen" role="status" aria-live="polite"></div>`;

const askButton = (question: string): string =>
  `<li><button type="button" data-question="${question}">${question}</button></li>`;

const TUTOR = `
<main>
<h1 class="unseen">Tutor</h1>
<section id="welcome" aria-label="What you can ask">
<p>Ask about the cube at the cursor. Every answer is worked out on the cube of your text, turn by turn.</p>
<ul>${['What next?', 'Where is the white-red edge?', 'Where did a goal break, and why?', 'Is the cross done?', "Is this right: R U R' U'"].map(askButton).join('')}</ul>
</section>
<div id="transcript" role="log" aria-live="polite" aria-label="Conversation" tabindex="0"></div>
<div id="asking">
<p id="where" aria-live="off"></p>
<div id="ladder" role="group" aria-label="Hints">
<vscode-button appearance="secondary" data-question="Give me a hint">Hint</vscode-button>
<vscode-button appearance="secondary" data-question="More help">More</vscode-button>
<vscode-button appearance="secondary" data-question="Just show me">Show me</vscode-button>
<vscode-button id="clear" appearance="icon" aria-label="Start anew" title="Start anew">${icon('M3 4h10M6.500 4V2.500h3V4M4.500 4l.6 9.500h5.800L11.500 4M7 6.500v5M9 6.500v5')}</vscode-button>
</div>
<div id="row">
<vscode-text-area id="question" rows="1" resize="none" placeholder="Ask about this place" aria-label="Question"></vscode-text-area>
<vscode-button id="ask">Ask</vscode-button>
</div>
</div>
</main>`;
