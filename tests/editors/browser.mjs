import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { output } from './processes.mjs';

const launchArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // Nothing that the page asks for can leave the machine.
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];

const viewport = { width: 1280, height: 800 };
const patience = 20_000;

/** The host itself, and the made-up name under which a service worker answers for the extension's own files. */
const isInside = (hostname) => hostname === '127.0.0.1' || hostname.endsWith('.vscode-resource.vscode-cdn.net');

/** A machine without fonts of its own still gets text. */
function withFonts({ fonts }, folder) {
  const file = join(folder, 'fonts.conf');
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    file,
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>
<include ignore_missing="yes">/etc/fonts/fonts.conf</include><dir>${fonts}</dir>
<cachedir>${join(folder, 'font-cache')}</cachedir></fontconfig>`,
  );
  return { ...process.env, FONTCONFIG_FILE: file };
}

/** The browser's package carries the libraries that a bare system may lack. */
async function withLibraries({ chromium, libraries }, env) {
  const starts = (environment) => output(chromium, ['--version'], { env: environment, timeout: 30_000 });
  const lent = { ...env, LD_LIBRARY_PATH: [libraries, env.LD_LIBRARY_PATH].filter(Boolean).join(':') };
  try {
    await starts(env);
    return env;
  } catch {
    await starts(lent).catch((error) => {
      throw new Error(`the browser does not start: ${error.message}`);
    });
    return lent;
  }
}

/**
 * Starts the browser. Returns `stop()` and `openPage()`, which gives a page with a fresh profile and the set of origins
 * outside the machine that it has asked for.
 */
export async function startBrowser(parts, folder) {
  const env = await withLibraries(parts, withFonts(parts, folder));
  const { chromium } = parts.require('playwright-core');
  const browser = await chromium.launch({ executablePath: parts.chromium, args: launchArguments, env });
  const openPage = async () => {
    const context = await browser.newContext({ viewport, colorScheme: 'light' });
    context.setDefaultTimeout(patience);
    const outside = new Set();
    context.on('request', (request) => {
      const { protocol, hostname, origin } = new URL(request.url());
      if (/^https?:|^wss?:/.test(protocol) && !isInside(hostname)) outside.add(origin);
    });
    return { page: await context.newPage(), outside };
  };
  return { openPage, stop: () => browser.close() };
}
