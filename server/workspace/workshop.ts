import { rememberingReader } from '../../grammar/remembering-reader.ts';
import { analyseHeader, analyseVisit, unusedAllowances } from '../clinical/analyse.ts';
import type { Workshop } from './note.ts';
import { isolated } from './unchecked.ts';

/** The reader and the analysis as the product uses them; notes opened by one workshop share what is read. */
export const workshop = (): Workshop => ({
  read: rememberingReader(),
  analyser: {
    header: analyseHeader,
    visit: isolated((lines, before, context) => analyseVisit(lines, before, context)),
    unused: unusedAllowances,
  },
});
