import { readSettings } from '../clinical/read-settings.ts';
import { NO_SETTINGS, type Settings } from '../clinical/settings.ts';

export const SETTINGS_FILE = '.forefoot.json';

/** What a settings file says, or why it says nothing; where it is broken, the built-in settings hold. */
export interface LoadedSettings {
  readonly settings: Settings;
  /** The file that was read; missing where there is none. */
  readonly file?: string;
  /** Each a line that names the file, the place in it and what is expected there. */
  readonly problems: readonly string[];
}

export const NOTHING_SET: LoadedSettings = { settings: NO_SETTINGS, problems: [] };

/** Gives the text of a file; `undefined` where there is none. Throws where there is one that cannot be read. */
export type ReadText = (file: string) => string | undefined;

/** The settings that hold in a folder: those of the nearest file, from the folder upward. `folders` start with the nearest. */
export function settingsIn(folders: readonly string[], read: ReadText): LoadedSettings {
  for (const folder of folders) {
    const file = `${folder.replace(/\/$/, '')}/${SETTINGS_FILE}`;
    const loaded = loadSettings(file, read);
    if (loaded) return loaded;
  }
  return NOTHING_SET;
}

/** One settings file, used whole or not at all; `undefined` where there is none. */
export function loadSettings(file: string, read: ReadText): LoadedSettings | undefined {
  let text: string | undefined;
  try {
    text = read(file);
  } catch (error) {
    const why = error instanceof Error && !('code' in error) ? ` (${error.message})` : '';
    return { settings: NO_SETTINGS, file, problems: [`${file}: cannot be read${why}; expected a file of JSON text`] };
  }
  if (text === undefined) return undefined;
  const result = readSettings(text);
  if ('settings' in result) return { settings: result.settings, file, problems: [] };
  return { settings: NO_SETTINGS, file, problems: result.problems.map((problem) => `${file}: ${problem}`) };
}

/** A folder and those above it, nearest first, up to the top, or to `root` where it is one of them. */
export function foldersUp(folder: string, root?: string): string[] {
  const folders = [folder];
  for (let at = folder; at !== root; ) {
    const cut = Math.max(at.lastIndexOf('/'), at.lastIndexOf('\\'));
    const above = cut > 0 ? at.slice(0, cut) : at.length > 1 && cut === 0 ? '/' : '';
    if (above === '' || above === at) break;
    folders.push(above);
    at = above;
  }
  return folders;
}
