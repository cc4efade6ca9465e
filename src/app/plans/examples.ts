// The examples that come with the app: plan files in its own bundle, the first of them there at once.

import first from '../../../examples/tidewater.needlefall.json?raw';

const OTHERS = import.meta.glob<string>(['../../../examples/*.needlefall.json', '!../../../examples/tidewater.needlefall.json'], { query: '?raw', import: 'default' });

export interface Example {
  readonly id: string;
  /** The file's name in words: "King size". */
  readonly name: string;
  readonly text: () => Promise<string>;
}

/** First the one that lies on the table when nothing else does. */
export const EXAMPLES: readonly [Example, ...Example[]] = [
  { id: 'tidewater', name: inWords('tidewater'), text: () => Promise.resolve(first) },
  ...Object.entries(OTHERS)
    .map(([path, text]): Example => {
      const id = path.replace(/^.*\//, '').replace('.needlefall.json', '');
      return { id, name: inWords(id), text };
    })
    // Not by the rules of a language, which a browser takes long to look up the first time.
    .sort((a, b) => (a.name < b.name ? -1 : 1)),
];

function inWords(id: string): string {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
