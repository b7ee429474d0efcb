import { describe, expect, test } from 'vitest';
import type { Entry, Slot } from '../../grammar/lexicon/entry.ts';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { isForm } from '../../grammar/reader/forms.ts';
import { readingOf } from '../grammar/reading/findings.ts';

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = '_ _ twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
/** A number below ten thousand as it is said; written for the test alone. */
function said(value: number): string {
  const [whole = 0, decimals] = String(value).split('.').map(Number);
  const digits = String(value).split('.')[1] ?? '';
  if (decimals !== undefined)
    return `${said(whole)} point ${[...digits].map((digit) => ONES[Number(digit)]).join(' ')}`;
  if (whole < 20) return ONES[whole] as string;
  if (whole < 100)
    return whole % 10 === 0 ? (TENS[whole / 10] as string) : `${TENS[Math.floor(whole / 10)]} ${ONES[whole % 10]}`;
  const [unit, name] = whole < 1000 ? [100, 'hundred'] : [1000, 'thousand'];
  const rest = whole % unit;
  return `${said(Math.floor(whole / unit))} ${name}${rest ? ` and ${said(rest)}` : ''}`;
}
const UNITS: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  '°': 'degrees',
  '%': 'percent',
  '°C': 'celsius',
  s: 'seconds',
};

/** A value of a slot as it is typed and as it is said; none for a slot that is not said with a number. */
function valuesOf(slot: Slot): [typed: string, said: string][] {
  const label = slot.labelled ? `${slot.labels?.[0]} ` : '';
  switch (slot.kind) {
    case 'number': {
      if (slot.unit.startsWith('/')) {
        const whole = Number(slot.unit.slice(1));
        return Number.isNaN(whole) ? [] : [[`${label}3${slot.unit}`, `${label}three out of ${said(whole)}`]];
      }
      const unit = UNITS[slot.unit] ?? slot.unit;
      if (slot.unit !== '' && !(slot.unit in UNITS)) return [];
      return [slot.min, slot.max, slot.min + 1, (slot.min + slot.max) / 2]
        .filter((value) => value >= 0 && value < 10_000 && Number.isInteger(value * 10))
        .map((value) => [
          `${label}${value}${slot.unit === '' ? '' : ` ${slot.unit}`}`,
          `${label}${said(value)} ${unit}`.trim(),
        ]);
    }
    case 'grade':
      return Array.from({ length: slot.max - slot.min + 1 }, (_, i) => [
        `${label}${slot.min + i}`,
        `${label}${said(slot.min + i)}`,
      ]);
    case 'duration':
      return [
        ['8 weeks', 'eight weeks'],
        ['10-12 weeks', 'ten to twelve weeks'],
        ['~3 months', 'about three months'],
      ];
    case 'fraction':
      return [[`${label}9/10`, `${label}nine out of ten`]];
    case 'date':
      return slot.labelled ? [] : [['2026-06-03', 'third of june twenty twenty six']];
    default:
      return [];
  }
}
const spelled = (word: string): string => (/^[a-z]{2,4}$/.test(word) && isForm(word) ? [...word].join(' ') : word);

function linesOf(entry: Entry): [typed: string, said: string][] {
  const [section = 'exam'] = entry.sections;
  const start = section === 'exam' ? '' : `${section} `;
  const [ray, spokenRay] = entry.subjects.includes('ray')
    ? ['2nd ray ', 'second ray ']
    : entry.subjects.includes('web')
      ? ['web 2 ', 'web two ']
      : ['', ''];
  const values = Object.values<Slot>(entry.slots).flatMap(valuesOf);
  return [
    ...values.map(([typed, spoken]): [string, string] => [
      `${start}${ray}${entry.word} ${typed}`,
      `${start}${spokenRay}${entry.word} ${spoken}`,
    ]),
    ...[entry.word, ...entry.forms].map((word): [string, string] => [
      `${start}${ray}${word}`,
      `${start}${spokenRay}${spelled(word)}`,
    ]),
  ];
}

const entries = LEXICON as readonly Entry[];
describe('typed and said, a finding says the same', () => {
  test('there are lines to compare for every finding', () => {
    const lines = entries.flatMap(linesOf);
    expect(lines.length).toBeGreaterThan(600);
    expect(lines.filter(([typed, spoken]) => typed !== spoken).length).toBeGreaterThan(400);
    expect(new Set(entries.flatMap((each) => (linesOf(each).length > 0 ? [each.id] : []))).size).toBe(entries.length);
  });

  test.each(entries.map((each): [string, Entry] => [each.id, each]))('%s', (_, entry) => {
    for (const [typed, spoken] of linesOf(entry))
      expect(readingOf(spoken).findings, spoken).toBe(readingOf(typed).findings);
  });
});

test('the breaks that are said are the breaks that are typed', () => {
  const typed = '2nd drawer 2, tender plantar; 3rd drawer 1. 4th straight';
  const spoken = 'second drawer two comma tender plantar semicolon third drawer one full stop fourth straight';
  expect(readingOf(spoken)).toEqual(readingOf(typed));
});
