/** What may follow a header word, and what it is for. The reader decides what of it still fits. */
export interface HeaderWord {
  readonly about: string;
  readonly form: string;
  readonly after: (today: string) => readonly string[];
}

export const HEADER_WORDS: Readonly<Record<string, HeaderWord>> = {
  forefoot: {
    about: '**forefoot** names the version of the language. A file without it is read as version 1.',
    form: 'forefoot 1',
    after: () => ['1'],
  },
  patient: {
    about: '**patient** gives a pseudonym, the year of birth and the sex. Never a name or a full date of birth.',
    form: 'patient',
    after: () => ['born', 'female', 'male', 'other'],
  },
  scales: {
    about:
      '**scales** names the scale on which drawer grades are written. Three scales exist whose numbers differ: `0-4`, `0-3`, `1-3`.',
    form: 'scales drawer',
    after: () => ['drawer', '0-4', '0-3', '1-3'],
  },
  visit: {
    about:
      '**visit** opens a visit: its date, its kind (first, review, preop, operation, postop, phone, emergency), its side.',
    form: 'visit',
    after: (today) => [
      today,
      'first',
      'review',
      'preop',
      'operation',
      'postop',
      'phone',
      'emergency',
      'right',
      'left',
      'both',
    ],
  },
  signed: {
    about:
      '**signed** closes the visit, or an addendum: the date, and initials or a role, never a name. A seal after it, written by *Seal the signed words*, shows whether the words above were changed since.',
    form: 'signed',
    after: (today) => [today],
  },
  addendum: {
    about: '**addendum** opens what is added to a signed visit: its date, and initials or a role.',
    form: 'addendum',
    after: (today) => [today],
  },
  event: {
    about:
      '**event** divides a visit: what stands below, down to the next event, was found after it. `reduction`, `pin-out` or `block`, with a time and a ray where they matter.',
    form: 'event',
    after: () => ['reduction', 'pin-out', 'block'],
  },
  carried: {
    about:
      '**carried** marks words copied from the visit of that date. They count for nothing until they are confirmed, one by one.',
    form: 'carried',
    after: () => [],
  },
  proposed: {
    about:
      '**proposed** marks words that a conversion of dictation proposes. They count for nothing until you confirm them; what was said stands behind `//`.',
    form: 'proposed',
    after: () => [],
  },
  examiner: {
    about: '**examiner** says who examined, by initials or role; two examiners may differ without contradiction.',
    form: 'examiner',
    after: () => [],
  },
  allow: {
    about: '**allow** hides a report by its code, with a reason. A danger is never hidden.',
    form: 'allow',
    after: () => [],
  },
};
