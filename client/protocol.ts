/** What the server answers beyond the Language Server Protocol. Lines and columns count from 0, in UTF-16. */
export interface ClinicNoteParams {
  readonly uri: string;
  /** Any line of the visit. */
  readonly line: number;
  /** Whether the computed stage and next step are wanted too. */
  readonly computed: boolean;
}

export interface ClinicNote {
  /**
   * Escaped; a run carries `data-line`, `data-start` and `data-end` of the statement that it came from, and all such
   * places in `data-places`, as `line:start-end`. Lines are the file's.
   */
  readonly html: string;
  readonly text: string;
  readonly visit: { readonly date: string | null; readonly firstLine: number; readonly lastLine: number };
  /** Of the document that was read. */
  readonly version: number;
}

export interface StageAtCursorParams {
  readonly uri: string;
  readonly line: number;
}

export interface StageAtCursor {
  /** Such as `2nd right: stage 2`, computed; empty when the visit has nothing to stage. */
  readonly text: string;
  readonly rays: readonly {
    readonly side: string;
    readonly ray: number;
    /** As computed, such as `stage 2`, or why there is none. */
    readonly stage: string;
    /** The clinician's own number, if the visit states one. */
    readonly stated?: string;
  }[];
}

/** Lines of the file, both included. */
export interface ConvertDictationParams {
  readonly uri: string;
  readonly firstLine: number;
  readonly lastLine: number;
}
/** What replaces a stretch of the document. */
export interface Replacement {
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: { readonly line: number; readonly character: number };
  };
  readonly newText: string;
}

/** The extension's own requests by method. */
export interface Requests {
  'forefoot/clinicNote': { params: ClinicNoteParams; result: ClinicNote | null };
  'forefoot/convertDictation': { params: ConvertDictationParams; result: readonly Replacement[] };
  'forefoot/stageAtCursor': { params: StageAtCursorParams; result: StageAtCursor | null };
}

/** Asks the server; undefined when it doesn't answer, which has been logged then. */
export type Ask = <M extends keyof Requests>(
  method: M,
  params: Requests[M]['params'],
) => Promise<Requests[M]['result'] | undefined>;
