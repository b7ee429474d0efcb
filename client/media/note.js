// The page of the clinic note: shows what the extension sends and sends back what is asked of it.
const editor = acquireVsCodeApi();
const byId = (id) => document.getElementById(id);
const [computed, copy, status, note] = ['computed', 'copy', 'status', 'note'].map(byId);

let html = '';
let version = 0;

/** The runs of the note that came from a place in the text. */
const traced = () => [...note.querySelectorAll('[data-line]')];
/** The lines that a run came from, counted from 0. */
const linesOf = ({ dataset }) => [...new Set(dataset.places.split(' ').map((place) => Number.parseInt(place, 10)))];

function makeReachable(run) {
  run.tabIndex = 0;
  run.setAttribute('role', 'link');
  run.setAttribute('aria-describedby', 'trace');
  run.title = `Line ${linesOf(run)
    .map((line) => line + 1)
    .join(', ')}`;
}

/** Shows another text without losing where the reader is. */
function replaceNote(text) {
  if (text === html) return;
  html = text;
  const focused = traced().indexOf(document.activeElement);
  note.innerHTML = text;
  traced().forEach(makeReachable);
  if (focused >= 0) traced()[focused]?.focus({ preventScroll: true });
}

function markCursor(line) {
  const here = traced().filter((run) => linesOf(run).includes(line));
  for (const run of note.querySelectorAll('[aria-current]')) run.removeAttribute('aria-current');
  for (const run of here) run.setAttribute('aria-current', 'true');
  if (!document.hasFocus()) here[0]?.scrollIntoView({ block: 'nearest' });
}

function select(run) {
  const { line, start, end } = run.dataset;
  editor.postMessage({ is: 'select', line: Number(line), start: Number(start), end: Number(end), version });
}

const show = {
  note(message) {
    version = message.version;
    computed.checked = message.computed;
    status.textContent = '';
    replaceNote(message.html);
    editor.setState({ uri: message.uri, line: message.line, computed: message.computed });
  },
  cursor: ({ line }) => markCursor(line),
  status({ text }) {
    status.textContent = text;
  },
};

window.addEventListener('message', ({ data }) => show[data.is]?.(data));
note.addEventListener('click', ({ target }) => {
  const run = target.closest('[data-line]');
  // Marking text with the mouse ends in a click too.
  if (run && document.getSelection()?.isCollapsed !== false) select(run);
});
note.addEventListener('keydown', (event) => {
  const run = event.target.closest('[data-line]');
  if (run && event.key === 'Enter') {
    event.preventDefault();
    select(run);
  }
});
computed.addEventListener('change', () => editor.postMessage({ is: 'computed', wanted: computed.checked }));
copy.addEventListener('click', () => editor.postMessage({ is: 'copy' }));
editor.postMessage({ is: 'ready' });
