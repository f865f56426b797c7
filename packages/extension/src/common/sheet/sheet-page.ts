import * as vscode from 'vscode';

/** The page of the panel: it loads its own script and style and nothing else, and asks nobody. */
export function sheetPage(webview: vscode.Webview, extensionUri: vscode.Uri): string {
  const address = (name: string) => webview.asWebviewUri(vscode.Uri.joinPath(extensionUri, 'dist', name)).toString();
  const once = nonce();
  const policy = [
    "default-src 'none'",
    `style-src 'nonce-${once}'`,
    `script-src 'nonce-${once}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Live sheet</title>
<link rel="stylesheet" nonce="${once}" href="${address('sheet.css')}">
</head>
<body>
<header id="head"></header>
<main id="folds"></main>
<p id="told" role="status" aria-live="polite"></p>
<script nonce="${once}" src="${address('sheet.js')}"></script>
</body>
</html>`;
}

/** A word that nobody can guess; the extension also runs where there is no Node. */
function nonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(24));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
