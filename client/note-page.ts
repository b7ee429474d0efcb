/** Addresses and secrets that the page of the clinic note is made with. */
export interface PageParts {
  /** The webview's own source for files. */
  readonly source: string;
  readonly style: string;
  readonly script: string;
  readonly nonce: string;
}

/** The frame of the clinic note's page; what the server writes comes later, by message. */
export function notePage({ source, style, script, nonce }: PageParts): string {
  const policy = `default-src 'none'; style-src ${source}; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${style}">
<title>Clinic note</title>
</head>
<body>
<header>
<h1 id="title">Clinic note</h1>
<div class="controls">
<label><input type="checkbox" id="computed"><span>Show computed stage and next step</span></label>
<button type="button" id="copy">Copy</button>
</div>
</header>
<main id="note" aria-labelledby="title"></main>
<p id="status" role="status" aria-live="polite"></p>
<p id="trace" hidden>Enter selects the statement in the editor.</p>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

/** A secret for one page, so that only its own script runs. */
export function newNonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
