// Where things stand in JSON text: the line of every value, and where text that is not JSON stops being so.
// The values themselves come from the platform; its messages differ from one browser to the next and often name no
// place, so the places are found here. Grammar: RFC 8259.

import { type Outcome, fail, ok } from '../num/outcome.ts';

/** Steps from the outermost value to one inside it. */
export type JsonPath = readonly (string | number)[];

export interface JsonBreak {
  readonly line: number;
  readonly column: number;
  readonly expected: string;
  readonly found: string;
}

/** Deeper nesting than this is no plan; it would only exhaust the stack. */
export const DEEPEST = 100;

/**
 * Where each value starts, as an offset into the text, keyed by `placeKey` of its path; or where the text breaks the
 * grammar or is nested deeper than `DEEPEST`.
 */
export function jsonPlaces(text: string): Outcome<ReadonlyMap<string, number>, JsonBreak> {
  const places = new Map<string, number>();
  const broke = scan(text, places);
  return broke ? fail(broke) : ok(places);
}

/** The key of a path in the map of places. */
export function placeKey(path: JsonPath): string {
  return JSON.stringify(path);
}

/** Line and column, both counted from 1, of an offset into the text. */
export function lineAndColumn(text: string, offset: number): { readonly line: number; readonly column: number } {
  let line = 1;
  let start = 0;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) {
    line++;
    start = at + 1;
  }
  return { line, column: offset - start + 1 };
}

const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
const WORD = /true|false|null/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const FIRST_PRINTABLE = 0x20;

interface Reader {
  readonly text: string;
  readonly places: Map<string, number>;
  at: number;
}

function scan(text: string, places: Map<string, number>): JsonBreak | undefined {
  const reader: Reader = { text, places, at: 0 };
  const broke = value(reader, []);
  if (broke) return broke;
  skipSpace(reader);
  return reader.at < text.length ? breakAt(reader, 'nothing more') : undefined;
}

function value(reader: Reader, path: (string | number)[]): JsonBreak | undefined {
  skipSpace(reader);
  if (path.length > DEEPEST) return breakAt(reader, `nothing nested more than ${DEEPEST} deep`);
  reader.places.set(placeKey(path), reader.at);
  const first = reader.text[reader.at];
  if (first === '{') return object(reader, path);
  if (first === '[') return array(reader, path);
  if (first === '"') return takeString(reader) === undefined ? breakAt(reader, 'the rest of the text and a closing double quote') : undefined;
  return (take(reader, NUMBER) ?? take(reader, WORD)) === undefined ? breakAt(reader, 'a value') : undefined;
}

function object(reader: Reader, path: (string | number)[]): JsonBreak | undefined {
  reader.at++;
  skipSpace(reader);
  if (takeSign(reader, '}')) return undefined;
  for (;;) {
    skipSpace(reader);
    const start = reader.at;
    const key = takeString(reader);
    if (key === undefined) return breakAt(reader, 'a field name in double quotes');
    const name = JSON.parse(key) as string;
    if (name === '__proto__') {
      // Objects of the language cannot hold it as a field like any other, so it would be lost.
      reader.at = start;
      return breakAt(reader, 'any other field name');
    }
    skipSpace(reader);
    if (!takeSign(reader, ':')) return breakAt(reader, '":"');
    path.push(name);
    if (reader.places.has(placeKey(path))) {
      // JSON lets the last one win without a word, and what the others held would be lost.
      reader.at = start;
      return breakAt(reader, 'each field name once');
    }
    const broke = value(reader, path);
    path.pop();
    if (broke) return broke;
    skipSpace(reader);
    if (takeSign(reader, '}')) return undefined;
    if (!takeSign(reader, ',')) return breakAt(reader, '"," or "}"');
  }
}

function array(reader: Reader, path: (string | number)[]): JsonBreak | undefined {
  reader.at++;
  skipSpace(reader);
  if (takeSign(reader, ']')) return undefined;
  for (let index = 0; ; index++) {
    path.push(index);
    const broke = value(reader, path);
    path.pop();
    if (broke) return broke;
    skipSpace(reader);
    if (takeSign(reader, ']')) return undefined;
    if (!takeSign(reader, ',')) return breakAt(reader, '"," or "]"');
  }
}

function skipSpace(reader: Reader): void {
  take(reader, SPACE);
}

function take(reader: Reader, token: RegExp): string | undefined {
  token.lastIndex = reader.at;
  const found = token.exec(reader.text)?.[0];
  if (found !== undefined) reader.at += found.length;
  return found;
}

/** Character by character: a pattern with a choice in a loop would exhaust the stack on a very long string. */
function takeString(reader: Reader): string | undefined {
  const start = reader.at;
  if (!takeSign(reader, '"')) return undefined;
  for (;;) {
    const code = reader.text.charCodeAt(reader.at);
    if (code === QUOTE) {
      reader.at++;
      return reader.text.slice(start, reader.at);
    }
    if (code === BACKSLASH ? take(reader, ESCAPE) === undefined : !(code >= FIRST_PRINTABLE)) return undefined;
    if (code !== BACKSLASH) reader.at++;
  }
}

function takeSign(reader: Reader, sign: string): boolean {
  if (reader.text[reader.at] !== sign) return false;
  reader.at++;
  return true;
}

function breakAt(reader: Reader, expected: string): JsonBreak {
  const rest = reader.text.slice(reader.at, reader.at + 13).split(/[\r\n]/)[0] ?? '';
  const found = reader.at >= reader.text.length ? 'the end of the file' : rest === '' ? 'the end of the line' : JSON.stringify(rest.length > 12 ? `${rest.slice(0, 12)}…` : rest);
  return { ...lineAndColumn(reader.text, reader.at), expected, found };
}
