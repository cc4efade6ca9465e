// The examples that come with the app: plan files lying beside the page.

const FILES = import.meta.glob<string>('../../../examples/*.needlefall.json', { query: '?url', import: 'default', eager: true });

export interface Example {
  readonly id: string;
  /** The file's name in words: "King size". */
  readonly name: string;
  readonly address: string;
}

/** The one that lies on the table when nothing else does. */
export const FIRST_EXAMPLE = 'tidewater';

export const EXAMPLES: readonly Example[] = Object.entries(FILES)
  .map(([path, address]) => {
    const id = path.replace(/^.*\//, '').replace('.needlefall.json', '');
    return { id, name: inWords(id), address };
  })
  .sort((a, b) => Number(b.id === FIRST_EXAMPLE) - Number(a.id === FIRST_EXAMPLE) || a.name.localeCompare(b.name));

function inWords(id: string): string {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
