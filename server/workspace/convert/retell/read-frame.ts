import { entryOf } from '../../../../grammar/lexicon/index.ts';
import type { Context } from './context.ts';
import { type Frame, framesOf } from './frame.ts';
import { type Reading, readClause } from './read-clause.ts';
import type { SaidWord } from './said-words.ts';
import { ORDINALS } from './turn-context.ts';

/** The words in the order of the language, where that has one reading. */
export function inFrame(words: readonly SaidWord[], context: Context, alone: boolean): Reading | undefined {
  const said = words.map(({ text }) => text);
  const ordinals = said.filter((each) => ORDINALS[each] !== undefined).length;
  const readings = framesOf(said).flatMap((frame) => {
    if (frame.leans && (!alone || context.ordinals > ordinals)) return [];
    const tried = asFramed(frame.text, frame, context) ?? asTried(frame, context);
    return tried ? [tried] : [];
  });
  const [one, ...others] = readings;
  if (!one || others.some((each) => each.findings[0]?.id !== one.findings[0]?.id)) return undefined;
  return { ...one, opens: one.opens && OPENS_CLAUSE.test(said.find((each) => each !== 'the') ?? '') };
}
/** The frame as the reader reads it, where that is just its findings. */
function asFramed(text: string, { findings }: Frame, context: Context): Reading | undefined {
  const tried = readClause(text.replaceAll('\u200b', ' '), context);
  if (!('text' in tried) || tried.findings.length !== findings.length) return undefined;
  const same = findings.every(({ id, absent }, i) => {
    const read = tried.findings[i];
    return read?.id === id && (read.status === 'absent') === absent;
  });
  return same ? tried : undefined;
}
/** A treatment with what it did, or with a day that has gone, was tried, unless the plan is being told. */
function asTried(frame: Frame, context: Context): Reading | undefined {
  const [only, more] = frame.findings;
  if (
    !only ||
    more ||
    !frame.plain ||
    frame.section !== '' ||
    (context.section !== 'exam' && context.section !== 'tried')
  )
    return undefined;
  if (context.base === 'operation' || entryOf(only.id).kind !== 'treatment') return undefined;
  const tried = asFramed(`tried ${frame.text}`, frame, context);
  const slots = Object.entries(tried?.findings[0]?.slots ?? {});
  return slots.some(([slot, { value }]) => slot === 'response' || value.is === 'ago') ? tried : undefined;
}
const OPENS_CLAUSE =
  /^(?:right|left|[1-5](?:st|nd|rd|th)|second|third|fourth|fifth|webs?$|plan$|xray$|mri$|ultrasound$|tried$|history$)/;
