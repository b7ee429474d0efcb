import { spawn } from 'node:child_process';
import { setTimeout as pause } from 'node:timers/promises';

/** Groups of the children that still run, so that an interrupted run can end them. */
const groups = new Set();

/** Starts a child in a process group of its own. */
export function start(command, args, options) {
  const child = spawn(command, args, { ...options, detached: true });
  if (child.pid !== undefined) groups.add(child.pid);
  return child;
}

/**
 * Runs a command to its end and returns what it printed, both streams in order.
 * Throws one line: how it ended and the command's own first line of error; all that it printed is the error's `text`.
 */
export function output(command, args, { timeout, ...options }) {
  return new Promise((resolve, reject) => {
    const child = start(command, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'] });
    let text = '';
    const keep = (chunk) => {
      text += chunk;
    };
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    const clock = setTimeout(() => end(child, 0), timeout);
    child.on('error', reject);
    child.on('close', (code, signal) => {
      clearTimeout(clock);
      groups.delete(child.pid);
      if (code === 0) return resolve(text);
      const lines = text.split('\n').filter((line) => line.trim() !== '');
      const said = lines.find((line) => /\berr(or)?\b/i.test(line)) ?? lines.at(-1) ?? '';
      const how = signal ? `ended by ${signal}, limit ${timeout / 1000} s` : `exit code ${code}`;
      reject(Object.assign(new Error(`${how}: ${said.trim()}`), { text }));
    });
  });
}

function signalGroup(pid, signal) {
  try {
    process.kill(-pid, signal);
    return true;
  } catch (error) {
    if (error.code === 'ESRCH') return false;
    throw error;
  }
}

/** Ends a child with all of its descendants: politely, and after `grace` milliseconds by force. Throws if one stays. */
export async function end(child, grace) {
  if (child.pid === undefined) return;
  const until = Date.now() + grace;
  signalGroup(child.pid, 'SIGTERM');
  while (signalGroup(child.pid, 0) && Date.now() < until) await pause(50);
  signalGroup(child.pid, 'SIGKILL');
  for (let waited = 0; signalGroup(child.pid, 0); waited += 50) {
    if (waited > 5_000) throw new Error(`process group ${child.pid} is still there after SIGKILL`);
    await pause(50);
  }
  groups.delete(child.pid);
}

/** Ends every child at once. Synchronous, for the process's own exit. */
export function endAll() {
  for (const pid of groups) signalGroup(pid, 'SIGKILL');
}
