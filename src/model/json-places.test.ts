import { describe, expect, it } from 'vitest';
import { random } from '../num/random.ts';
import { DEEPEST, jsonPlaces, lineAndColumn, placeKey } from './json-places.ts';

describe('places in JSON text', () => {
  it('finds every value where it starts', () => {
    const text = '{\n  "a": [1, {"b": "x, y"}],\n  "c\\u0064": null }';
    const places = jsonPlaces(text);
    if (!places.ok) throw new Error(places.problem.expected);
    const at = (...path: (string | number)[]) => text.slice(places.value.get(placeKey(path)));
    expect(at()).toMatch(/^\{\n/);
    expect(at('a')).toMatch(/^\[1/);
    expect(at('a', 1, 'b')).toMatch(/^"x, y"/);
    expect(at('cd')).toMatch(/^null/);
    expect(lineAndColumn(text, text.indexOf('null'))).toEqual({ line: 3, column: 14 });
  });

  it.each([
    ['{"a": 1,}', 1, 9, 'a field name in double quotes', '"}"'],
    ['{\n"a": 1\n"b": 2}', 3, 1, '"," or "}"', '"\\"b\\": 2}"'],
    ['[1, 2', 1, 6, '"," or "]"', 'the end of the file'],
    ['[01]', 1, 3, '"," or "]"', '"1]"'],
    ['["a\nb"]', 1, 4, 'the rest of the text and a closing double quote', 'the end of the line'],
    ["{'a': 1}", 1, 2, 'a field name in double quotes', `"'a': 1}"`],
    ['{} {}', 1, 4, 'nothing more', '"{}"'],
    ['{"__proto__": 1}', 1, 2, 'any other field name', '"\\"__proto__\\":…"'],
    ['{"a": {"b": 1}, "b": 2,\n "a": 3}', 2, 2, 'each field name once', '"\\"a\\": 3}"'],
    ['[NaN]', 1, 2, 'a value', '"NaN]"'],
  ])('says where %j stops being JSON', (text, line, column, expected, found) => {
    expect(jsonPlaces(text)).toEqual({ ok: false, problem: { line, column, expected, found } });
  });

  it('refuses what is nested too deep, and strings of any length do not exhaust the stack', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
    expect(jsonPlaces(nested(DEEPEST)).ok).toBe(true);
    expect(jsonPlaces(nested(DEEPEST + 2)).ok).toBe(false);
    expect(jsonPlaces(nested(1_000_000)).ok).toBe(false);
    expect(jsonPlaces(`"${'a'.repeat(10_000_000)}"`).ok).toBe(true);
  });

  it('agrees with JSON.parse on 20,000 broken texts (seed 1)', () => {
    // Second opinion: the platform's own reader of RFC 8259.
    const { whole, pick } = random(1);
    // The names are so unlike that the damage does not make two of them the same, which JSON.parse would let pass.
    const start = '{"abcdef": [1, -2.5e3, "q\\n\\u00e9\\"", true], "ghijkl": {"mnopqr": null, "stuvwx": {}}, "123456": [] , "ABCDEF":0.125}';
    let accepted = 0;
    for (let i = 0; i < 20_000; i++) {
      let text = start;
      for (let n = whole(1, 3); n > 0; n--) {
        const at = whole(0, text.length - 1);
        text = text.slice(0, at) + pick(['', '', '"', '0', '-', '.', 'e', '{', '}', '[', ']', ',', ':', '\\', '\t', '\u0001', ' ', 'null']) + text.slice(at + whole(0, 1));
      }
      let parses = true;
      try {
        JSON.parse(text);
      } catch {
        parses = false;
      }
      if (parses) accepted++;
      expect(jsonPlaces(text).ok, text).toBe(parses);
    }
    expect(accepted).toBeGreaterThan(1000);
  });
});
