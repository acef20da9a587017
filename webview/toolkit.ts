/**
 * The component library of both views. Its upstream is archived, so everything that is used of it
 * is registered here and nowhere else: to replace it, define these elements by other means.
 */
import {
  provideVSCodeDesignSystem,
  vsCodeButton,
  vsCodeProgressRing,
  vsCodeTextArea,
} from '@vscode/webview-ui-toolkit';

/** Defines `vscode-button`, `vscode-progress-ring` and `vscode-text-area`. */
export function registerComponents(): void {
  provideVSCodeDesignSystem().register(vsCodeButton(), vsCodeProgressRing(), vsCodeTextArea());
}
