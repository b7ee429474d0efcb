import type { Chance } from './chance.ts';
import { inHurry } from './hurry.ts';

export type Side = 'right' | 'left';
export const other = (side: Side): Side => (side === 'right' ? 'left' : 'right');
export const ordinal = (ray: number): string => ['', '1st', '2nd', '3rd', '4th', '5th'][ray] ?? '';

/** Non-empty parts, as one segment list or statement list. */
export const listed = (parts: readonly string[], between = ', '): string => parts.filter(Boolean).join(between);

/** Writes one note: a header, then visits of lines. */
export class Pen {
  private readonly lines: string[] = [];
  private day: number;
  readonly chance: Chance;
  readonly side: Side;
  readonly born: number;
  constructor(chance: Chance, name: string, born: number, sex: 'female' | 'male') {
    this.chance = chance;
    this.born = born;
    this.side = chance.pick(['right', 'left'] as const);
    this.day = Date.UTC(2025, chance.whole(0, 5), chance.whole(1, 28));
    this.lines.push('forefoot 1', `patient ${name}  born ${born}  ${sex}`);
    if (chance.likely(0.85)) this.lines.push('scales drawer 0-4');
  }
  /** The visit's day, so many days later than it would be, as ISO. */
  date(later = 0): string {
    return new Date(this.day + later * 86_400_000).toISOString().slice(0, 10);
  }
  month(later = 0): string {
    return this.date(later).slice(0, 7);
  }
  /** A visit so many weeks, a few days more or less, after the last one. Empty lines are left out. */
  visit(weeks: number, kind: string, lines: readonly string[], side: string = this.side): void {
    this.day += (weeks * 7 + (weeks > 1 ? this.chance.whole(-2, 3) : 0)) * 86_400_000;
    const typed = side === 'both' ? lines : inHurry(this.chance, this.side === 'right' ? 'R' : 'L', lines);
    this.lines.push('', `visit ${this.date()} ${kind} ${side}`, ...typed.filter((line) => line.trim() !== ''));
  }
  text(): string {
    return `${this.lines.join('\n')}\n`;
  }
}

/** What is true of one ray on one day. */
export interface RayTruth {
  readonly drawer?: 0 | 1 | 2 | 3;
  readonly tender?: 'plate' | 'plantar' | 'head' | 'shaft' | 'none';
  readonly swollen?: 'none' | 'mild' | 'moderate';
  readonly drift?: 'straight' | 'medial' | 'dorsomedial' | 'lateral';
  readonly degrees?: number;
  readonly paper?: 'holds' | 'weak' | 'pulls out';
  readonly pip?: 'flexible' | 'semi-rigid' | 'fixed';
  readonly extended?: boolean;
}
const TENDER = {
  plate: ['tender plate', 'TTP plate', 'tender at plantar plate'],
  plantar: ['tender plantar', 'TTP plantar', 'plantar tenderness'],
  head: ['tender head', 'tender met head'],
  shaft: ['tender shaft', 'TTP shaft'],
  none: ['NT', 'not tender', 'tender none'],
} as const;
const SWOLLEN = {
  none: ['no swelling', 'swelling none', 'not swollen'],
  mild: ['swelling mild', 'mild swelling', 'slight swelling'],
  moderate: ['swelling moderate', 'moderate swelling'],
} as const;

/** One exam line of a ray, as somebody in a hurry writes it: order and words vary, steps are left out. */
export function rayLine(chance: Chance, ray: number, truth: RayTruth, leaveOut = 0.1): string {
  const keep = (text: string) => (chance.likely(leaveOut) ? '' : text);
  const { drawer, tender, swollen, drift, degrees, paper, pip, extended } = truth;
  const parts = [
    swollen ? keep(chance.pick(SWOLLEN[swollen])) : '',
    tender ? keep(chance.pick(TENDER[tender])) : '',
    drawer === undefined
      ? ''
      : keep(
          `${chance.pick(['drawer', 'drawer', 'Lachman'])} ${drawer}${drawer > 0 ? chance.maybe(0.3, ' painful') : ''}`,
        ),
    drift
      ? keep(
          drift === 'straight'
            ? 'straight'
            : `${drift}${degrees ? ` ${degrees}°` : chance.pick(['', ' mild', ' slight'])}`,
        )
      : '',
    extended ? keep('extended') : '',
    paper ? keep(`${chance.pick(['paper', 'paper', 'purchase'])} ${paper}`) : '',
    pip ? keep(`pip ${pip}`) : '',
  ];
  const line = listed(parts);
  return line ? `${ordinal(ray)} ${line}` : '';
}

/** The foot around the painful ray: webs, joints, feeling, vessels, each left out now and then. */
export function footLines(chance: Chance, leaveOut = 0.15): string[] {
  const keep = (text: string) => (chance.likely(leaveOut) ? '' : text);
  return [
    keep(
      chance.pick([
        'webs 2-3 click none, squeeze none',
        'webs 1-4 no click, squeeze or numbness',
        'webs 2-3 Mulder neg',
      ]),
    ),
    keep(chance.pick(['compression painless', 'compression no pain'])),
    keep(chance.pick(['sense monofilament 10/10', 'sens normal', 'sense mf 10/10'])),
    keep(chance.pick(['pulses palpable', 'dp 2, pt 2', 'pulses dp 2, pt 1', 'pulses 2'])),
  ];
}
