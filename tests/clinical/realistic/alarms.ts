import { analyseNote } from '../../../server/clinical/analyse-note.ts';
import { realisticNotes } from './notes.ts';

/** An alarm as it is judged: the note, what it says of which words. */
export interface Alarm {
  readonly note: string;
  /** `2025-05-16 wrong-side | L4 NT`: the visit's day, the code, the line as typed. */
  readonly key: string;
  readonly message: string;
}
export interface Alarms {
  readonly visits: number;
  readonly kinds: ReadonlySet<string>;
  readonly alarms: readonly Alarm[];
}

/** Every warning and error of the realistic notes, of the rules and of the reader alike, once for each line and code. */
export function realisticAlarms(): Alarms {
  const kinds = new Set<string>();
  let visits = 0;
  const alarms = new Map<string, Alarm>();
  for (const { id, text } of realisticNotes()) {
    const lines = text.split('\n');
    for (const { firstLine, analysis } of analyseNote(text, '2027-06-01').visits) {
      visits += 1;
      kinds.add(analysis.facts.kind ?? 'none');
      const day = (lines[firstLine] ?? '').split(' ')[1];
      for (const { code, severity, place, message } of analysis.reports) {
        if (severity !== 'danger' && severity !== 'contradiction') continue;
        const key = `${day} ${code} | ${(lines[firstLine + place.line] ?? '').replace(/ +/g, ' ')}`;
        alarms.set(`${id} ${key}`, { note: id, key, message });
      }
    }
  }
  return { visits, kinds, alarms: [...alarms.values()] };
}
