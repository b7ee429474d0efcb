import { cpus, loadavg, totalmem } from 'node:os';

/** A figure of the report. Without a goal it stands for comparison; `undefined` is not measured, and says why. */
const row = (name, unit, value, goal, note = '') => ({ name, unit, value, goal, note });
const verdict = ({ value, goal }) => {
  if (value === undefined) return 'not measured';
  return goal === undefined ? '' : value <= goal ? 'pass' : 'MISS';
};

export const machine = () => {
  const [cpu] = cpus();
  const load = loadavg()[0].toFixed(1);
  const memory = Math.round(totalmem() / 1024 ** 3);
  return `Node ${process.version}, ${cpus().length} cores (${cpu?.model.trim() || 'model not told'}), ${memory} GB, load ${load} at the start`;
};

/** Why the worst of many edits may be far above the work that one can cause. */
const WAITED = 'beyond it an edit waited for the machine';

/** Every figure of a run, in the order in which it is read. */
export function rows({ small, large, heap, cold, core, bundle, command, folders, dictation, service, peers, scanner }) {
  const [at1, at10] = [`${small.visits} visits`, `${large.visits} visits`];
  const ratio = large.edits.p50 / small.edits.p50;
  const kept = small.memory.after.resident - small.memory.before.resident;
  return [
    row(
      `one-character edit to diagnostics, ${at1}, median`,
      'ms',
      small.edits.p50,
      undefined,
      `${small.edits.count} edits`,
    ),
    row(`  the same, p99`, 'ms', small.edits.p99, 4),
    row(`  the same, worst`, 'ms', small.edits.max, undefined),
    row(`  most processor time of one`, 'ms', small.busiest, undefined, WAITED),
    ...Object.entries(small.places).map(([place, { p50, p99 }]) =>
      row(`  in the ${place} visit, median`, 'ms', p50, undefined, `p99 ${p99.toFixed(2)}`),
    ),
    row(
      `one-character edit to diagnostics, ${at10}, median`,
      'ms',
      large.edits.p50,
      undefined,
      `${large.edits.count} edits`,
    ),
    row(`  the same, p99`, 'ms', large.edits.p99, undefined),
    row(`  the same, worst`, 'ms', large.edits.max, undefined),
    row(`  most processor time of one`, 'ms', large.busiest, undefined, WAITED),
    row(`  median against ${at1}`, 'times', ratio, 1.5),
    row(
      `newline at the top, in and out, ${at1}, median`,
      'ms',
      small.newline.p50,
      undefined,
      `p99 ${small.newline.p99.toFixed(2)}`,
    ),
    row(`  at ${at10}`, 'ms', large.newline.p50, undefined, `p99 ${large.newline.p99.toFixed(2)}`),
    row(`edit of the header that reaches every visit, ${at1}`, 'ms', small.everyVisit.median, undefined),
    row(
      `note opened to diagnostics, ${at1}`,
      'ms',
      small.opened,
      undefined,
      `${(small.bytes / 1e6).toFixed(2)} MB, ${small.reports} reports`,
    ),
    row(
      `  at ${at10}`,
      'ms',
      large.opened,
      undefined,
      `${(large.bytes / 1e6).toFixed(2)} MB, ${large.reports} reports`,
    ),
    row(
      'start of the process to `initialize` answered, median',
      'ms',
      cold.p50,
      200,
      `${cold.count} starts, worst ${cold.max.toFixed(0)}`,
    ),
    row(
      `heap kept by ${heap.edits} edits, after collection`,
      'MB',
      heap.after - heap.before,
      10,
      `${heap.before.toFixed(0)} before`,
    ),
    row(
      `resident memory grown by the same, nothing forced`,
      'MB',
      kept,
      10,
      `${small.memory.before.resident.toFixed(0)} before; moves with the collector's timing`,
    ),
    row('server bundle', 'KB', bundle / 1_000, 450),
    row('reading a line, no cache', 'µs', core.line, 25),
    row('analysing a visit of 20 lines, median', 'µs', core.visit.p50, 300, `p99 ${core.visit.p99.toFixed(0)}`),
    row(
      'weighing the differential of a visit, lazy, median',
      'µs',
      core.differential.p50,
      5_000,
      `p99 ${core.differential.p99.toFixed(0)}`,
    ),
    row('`forefoot check` of one note of 1,000 visits, cold', 'ms', command?.one, 600, command ? '' : 'no dist/cli.js'),
    row(
      '  each further note, per MB',
      'ms',
      command && 1_000 / command.warm,
      333,
      command && `${command.warm.toFixed(1)} MB/s`,
    ),
    ...folderRows(folders),
    ...dictationRows(dictation),
    ...serviceRows(service),
    ...peerRows(peers, service),
    row('hand-written scanner that understands nothing', 'MB/s', scanner, undefined, 'the limit'),
  ];
}

function folderRows(folders) {
  if (!folders) return [row('`forefoot check` of a folder', 's', undefined, undefined, 'no dist/cli.js')];
  const [small, large] = folders;
  return [
    row(
      `\`forefoot check\` of a folder of ${large.notes} notes of 10 visits`,
      's',
      large.took / 1_000,
      undefined,
      `${(large.bytes / 1e6).toFixed(1)} MB, ${(large.bytes / 1e3 / large.took).toFixed(1)} MB/s`,
    ),
    row(
      `  most memory, against a folder of ${small.notes}`,
      'times',
      large.resident / small.resident,
      2,
      `${large.resident.toFixed(0)} MB against ${small.resident.toFixed(0)} MB`,
    ),
  ];
}

const dictationRows = ({ typed, words, index, suggested, converted }) => [
  row(
    `one-character edit of a dictated line of ${typed.words} words, median`,
    'ms',
    typed.edits.p50,
    undefined,
    `${typed.edits.count} edits`,
  ),
  row('  the same, p99', 'ms', typed.edits.p99, 5),
  row('  converting it, on request, median', 'ms', converted.p50, undefined),
  row(
    `words alike of ${words} unknown words`,
    's',
    suggested / 1_000,
    10,
    `index built once in ${index.toFixed(0)} ms`,
  ),
];

const serviceRows = ({ full, warm, half, edit, bytes, reports, resident }) => [
  row('our service, full pass', 'ms', full, undefined, `${(bytes / 1e6).toFixed(2)} MB, ${reports} reports`),
  row('  the same, once compiled', 'ms', warm, undefined),
  row('  with every second line broken, against whole ones', 'times', half / warm, 4),
  row('  after one character', 'ms', edit, undefined, `${resident.toFixed(0)} MB resident`),
];

/** How our full pass and our edit must compare with each peer's, as a share of theirs. */
const SHARES = {
  'vscode-json-languageservice': { full: 1, edit: 0.01 },
  'yaml-language-server': { full: 0.1, edit: 0.01 },
};

const peerRows = (peers, own) =>
  Object.entries(peers).flatMap(([name, peer]) => {
    if (peer.failed) return [row(name, 'ms', undefined, undefined, peer.failed)];
    const goal = SHARES[name];
    const size = `${(peer.bytes / 1e6).toFixed(2)} MB${peer.checks ? '' : '; its schema was NOT applied'}`;
    return [
      row(`${name}, same notes, full pass`, 'ms', peer.full, undefined, size),
      row('  after one character', 'ms', peer.edit, undefined, `${peer.resident.toFixed(0)} MB resident`),
      row('  our full pass against it', 'times', own.full / peer.full, goal?.full),
      row('  our edit against it', 'times', own.edit / peer.edit, goal?.edit),
    ];
  });

const figure = ({ value, unit }) => {
  if (value === undefined) return '-';
  if (value > 0 && value < 0.01) return `${value.toPrecision(2)} ${unit}`;
  const digits = value >= 100 || unit === 'KB' ? 0 : value >= 10 ? 1 : 2;
  return `${value.toFixed(digits)} ${unit}`;
};

/** The rows as a table for people. */
export function table(list) {
  const cells = [
    ['', 'goal', 'measured', '', ''],
    ...list.map((each) => [
      each.name,
      each.goal === undefined ? '' : `<= ${each.goal} ${each.unit}`,
      figure(each),
      verdict(each),
      each.note,
    ]),
  ];
  const widths = cells[0].map((_, column) => Math.max(...cells.map((line) => line[column].length)));
  return cells
    .map((line) =>
      line
        .map((cell, column) =>
          column === 1 || column === 2 ? cell.padStart(widths[column]) : cell.padEnd(widths[column]),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
export const missed = (list) => list.filter((each) => verdict(each) === 'MISS');
