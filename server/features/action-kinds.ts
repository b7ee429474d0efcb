export const CONVERT_LINES = 'refactor.rewrite.dictation';
export const CONVERT_VISIT = 'source.convertDictation';
export const ACTION_KINDS = ['quickfix', CONVERT_LINES, 'source.fixAll', 'source.sortVisit', CONVERT_VISIT] as const;
